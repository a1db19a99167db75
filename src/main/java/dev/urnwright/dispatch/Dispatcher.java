package dev.urnwright.dispatch;

import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import dev.urnwright.round.Carafe;
import dev.urnwright.round.CarafeLedger;
import dev.urnwright.round.DayOfRound;
import dev.urnwright.round.ParTuner;
import dev.urnwright.round.Return;
import dev.urnwright.round.Round;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Works out a day of the round. */
public final class Dispatcher {
  /** More carafes a day than this are planned by nobody on one sheet of paper. */
  private static final int MOST_CARAFES = 50_000;

  /** So many sites are named that have carafes to give back. */
  private static final int NAMES = 4;

  private final Round round;
  private final List<Return> returns;
  private final boolean followMoves;

  /**
   * A dispatcher.
   *
   * @param returns what came back so far; may be empty
   * @param followMoves whether the day follows what leftovers teach, instead of only saying it
   */
  public Dispatcher(Round round, List<Return> returns, boolean followMoves) {
    this.round = round;
    this.returns = List.copyOf(returns);
    this.followMoves = followMoves;
  }

  /**
   * Works out one day.
   *
   * @return what to brew and to deliver, or every reason why it can't be done
   */
  public Checked<Dispatch> dispatch(LocalDate date) {
    DayOfRound listed = DayOfRound.of(round, date);
    List<ParTuner.Move> moves = new ParTuner(round, returns).moves(listed);
    DayOfRound day = followMoves ? ParTuner.tuned(listed, moves) : listed;
    if (day.deliveries().isEmpty()) {
      return Checked.refused(
          List.of(
              new Problem(
                  round.location(),
                  "nothing is delivered on " + date + ", " + Words.day(date),
                  day.missed().isEmpty()
                      ? "expected a day that is among the weekdays of a row"
                      : "expected another day: " + day.missed().get(0).change().what().inWords())));
    }
    CarafeLedger ledger = CarafeLedger.before(date, round, returns);
    List<Dispatch.Stock> stock = stock(day, ledger);
    List<Problem> problems = new ArrayList<>(shortage(date, stock, ledger));
    if (day.deliveries().stream().mapToLong(DayOfRound.Delivery::carafes).sum() > MOST_CARAFES) {
      problems.add(
          new Problem(
              round.location(),
              "more than " + MOST_CARAFES + " carafes are asked for on " + date,
              "expected fewer, in rounds of their own"));
      return Checked.refused(problems);
    }
    NightClock clock = clock(day);
    Map<String, FillingTimes.Slot> slots =
        FillingTimes.of(round.legs(), day, round.room().filling(), clock);
    DayEvent asEvent = new DayEvent(round, day, clock, slots);
    Checked<Plan> planned = plan(asEvent, date, clock, slots);
    problems.addAll(asEvent.problems());
    problems.addAll(planned.problems());
    if (!problems.isEmpty()) {
      return Checked.refused(problems.stream().distinct().toList());
    }
    Plan plan = planned.value().orElseThrow();
    Assembly.Parts parts =
        new Assembly(round, day, plan, clock, slots).parts(asEvent.lots().keySet());
    Remarks remarks = new Remarks(round, day, plan, parts, clock);
    return Checked.of(
        new Dispatch(
            round,
            day,
            plan,
            parts.brewing(),
            parts.legs(),
            stock,
            ledger,
            moves,
            followMoves,
            remarks.cautions(),
            remarks.notes(returns, ledger)));
  }

  private Checked<Plan> plan(
      DayEvent asEvent, LocalDate date, NightClock clock, Map<String, FillingTimes.Slot> slots) {
    List<Problem> late =
        slots.values().stream()
            .filter(slot -> slot.leave().toLocalDate().isAfter(date))
            .map(
                slot ->
                    new Problem(
                        slot.leg().location(),
                        slot.leg().name()
                            + " leaves at "
                            + slot.leg().leave()
                            + ", a day and more after work begins",
                        "expected a leg that leaves sooner, or a round of its own"))
            .toList();
    if (!late.isEmpty()) {
      return Checked.refused(late);
    }
    var event = asEvent.event();
    if (!asEvent.problems().isEmpty()) {
      return Checked.refused(asEvent.problems());
    }
    Checked<Plan> plan = new Planner(MOST_CARAFES).plan(event);
    return plan.value().isPresent()
        ? plan
        : Checked.refused(
            plan.problems().stream().map(problem -> Words.ofRound(problem, clock, date)).toList());
  }

  /** A clock on whose even day everything lies from the opening to the last leg. */
  private NightClock clock(DayOfRound day) {
    NightClock plain =
        NightClock.of(day.date(), round.room().zone(), day.date().atTime(LocalTime.NOON));
    FillingTimes.Slot first =
        FillingTimes.of(round.legs(), day, round.room().filling(), plain)
            .values()
            .iterator()
            .next();
    LocalDateTime filling = plain.wall(first.from());
    LocalDateTime earliest =
        DayEvent.opening(round.room(), day, first.leg().leave())
            .filter(opens -> opens.isBefore(filling))
            .orElse(filling);
    return NightClock.of(day.date(), round.room().zone(), earliest);
  }

  private List<Dispatch.Stock> stock(DayOfRound day, CarafeLedger ledger) {
    Map<String, Integer> needed = new LinkedHashMap<>();
    round.carafes().forEach(carafe -> needed.put(carafe.name(), 0));
    for (DayOfRound.Delivery delivery : day.deliveries()) {
      needed.merge(delivery.drop().content().carafe(), delivery.carafes(), Integer::sum);
    }
    return round.carafes().stream()
        .map(
            carafe ->
                new Dispatch.Stock(
                    carafe.name(),
                    carafe.count(),
                    ledger.out(carafe.name()),
                    needed.getOrDefault(carafe.name(), 0)))
        .toList();
  }

  /** Kinds of carafe of which too few are in. */
  private List<Problem> shortage(LocalDate date, List<Dispatch.Stock> stock, CarafeLedger ledger) {
    List<Problem> problems = new ArrayList<>();
    for (Dispatch.Stock kind : stock) {
      if (kind.left() < 0) {
        Carafe carafe = round.carafe(kind.carafe());
        problems.add(
            new Problem(
                carafe.location(),
                kind.needed()
                    + " of "
                    + kind.carafe()
                    + " are needed on "
                    + date
                    + ", and "
                    + (kind.owned() - kind.out())
                    + " of "
                    + kind.owned()
                    + " are in",
                "expected "
                    + -kind.left()
                    + " more"
                    + (kind.out() == 0 ? "" : ", or back from " + holders(kind.carafe(), ledger))));
      }
    }
    return problems;
  }

  private static String holders(String carafe, CarafeLedger ledger) {
    Map<String, Integer> sites = new LinkedHashMap<>();
    ledger.rows().stream()
        .filter(row -> row.drop().content().carafe().equals(carafe))
        .forEach(row -> sites.merge(row.drop().place().site(), row.carafes(), Integer::sum));
    return sites.entrySet().stream()
        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
        .limit(NAMES)
        .map(site -> site.getKey() + " (" + site.getValue() + ")")
        .collect(Collectors.joining(", "));
  }
}
