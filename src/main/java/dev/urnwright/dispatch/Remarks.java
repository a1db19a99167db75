package dev.urnwright.dispatch;

import dev.urnwright.event.Note;
import dev.urnwright.event.Window;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Run;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Mass;
import dev.urnwright.round.CarafeLedger;
import dev.urnwright.round.DayOfRound;
import dev.urnwright.round.Return;
import dev.urnwright.round.Round;
import dev.urnwright.wording.Saying;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The cautions and notes of a round: those of its plan that concern it, and its own. */
final class Remarks {
  /** What the planner says of brewing and of the brew room; the rest is about guests and cups. */
  private static final Set<String> KEPT =
      Set.of(
          "scald",
          "circuit",
          "electricity",
          "decaf",
          "allergens",
          "water",
          "surplus",
          "heater-early",
          "outside-measured",
          "far-from-reference",
          "extraction-outside-window",
          "density",
          "caffeine-extracted",
          "no-heaters",
          "circuit-limit",
          "cycle-assumed",
          "costs",
          "water-bought");

  private static final Mass TWO_HANDED = Mass.ofGrams(10_000);

  private final Round round;
  private final DayOfRound day;
  private final Plan plan;
  private final Assembly.Parts parts;
  private final NightClock clock;
  private final Display display;

  Remarks(Round round, DayOfRound day, Plan plan, Assembly.Parts parts, NightClock clock) {
    this.round = round;
    this.day = day;
    this.plan = plan;
    this.parts = parts;
    this.clock = clock;
    this.display = new Display(round.room().print().units(), round.room().equipment().scaleStep());
  }

  List<Note> cautions() {
    List<Note> cautions = new ArrayList<>();
    clocks().ifPresent(cautions::add);
    plan.cautions().stream()
        .filter(note -> isKept(note) || isQuestion(note))
        .map(note -> new Note(note.code(), Words.ofRound(note.saying(), clock, day.date())))
        .forEach(cautions::add);
    cautions.add(lifting());
    cautions.add(caffeine());
    cautions.add(new Note("holding", Saying.of("round.holding")));
    return cautions;
  }

  private static boolean isKept(Note note) {
    return KEPT.contains(note.code());
  }

  /** Questions about groups would ask why a carafe is such a large cup. */
  private boolean isQuestion(Note note) {
    return note.code().equals(Note.QUESTION)
        && plan.groups().stream().noneMatch(g -> note.text().startsWith(g.group().name() + ":"));
  }

  private Optional<Note> clocks() {
    LocalDateTime first = parts.brewing().batches().get(0).start();
    LocalDateTime last =
        parts.legs().stream()
            .map(leg -> leg.times().leave())
            .max(Comparator.naturalOrder())
            .orElse(first);
    return clock.isChangedBetween(first, last)
        ? Optional.of(new Note("clocks", Saying.of("round.clocks")))
        : Optional.empty();
  }

  private Note lifting() {
    Mass heaviest =
        parts.legs().stream()
            .map(LegDay::heaviest)
            .max(Comparator.naturalOrder())
            .orElse(Mass.ZERO);
    boolean tared =
        parts.legs().stream().flatMap(leg -> leg.loads().stream()).allMatch(LegDay.Load::tared);
    return new Note(
        "lifting",
        Saying.of("round.lifting")
            .with("heaviest", display.mass(heaviest))
            .with("tared", tared)
            .with("heavy", heaviest.compareTo(TWO_HANDED) > 0));
  }

  private Note caffeine() {
    double most =
        parts.legs().stream()
            .flatMap(leg -> leg.stops().stream())
            .flatMap(stop -> stop.handed().stream())
            .mapToDouble(row -> row.cup().highMilligrams())
            .max()
            .orElse(0);
    return new Note(
        "caffeine",
        Saying.of("caution.caffeine")
            .with("most", String.format(Locale.ROOT, "%.0f\u00a0mg", most)));
  }

  List<Note> notes(List<Return> returns, CarafeLedger ledger) {
    List<Note> notes = new ArrayList<>(round.defaults());
    Set<String> known = notes.stream().map(Note::code).collect(Collectors.toSet());
    plan.notes().stream()
        .filter(note -> isKept(note) || isQuestion(note))
        .filter(note -> !known.contains(note.code()))
        .forEach(notes::add);
    strengths().ifPresent(notes::add);
    notes.add(quality());
    windows().ifPresent(notes::add);
    notes.add(
        new Note(
            "fresh",
            Saying.of("round.fresh").with("fresh", display.duration(round.rules().fresh()))));
    notes.add(
        new Note(
            "filling",
            Saying.of("round.filling")
                .with("hands", round.room().filling().hands())
                .with("each", display.duration(round.room().filling().each()))));
    notes.addAll(returned(returns, ledger));
    return notes;
  }

  private Optional<Note> strengths() {
    Window window = round.room().print().window();
    List<Figure> outside =
        day.deliveries().stream()
            .map(delivery -> delivery.drop().content().strength())
            .filter(
                strength ->
                    strength.compareTo(window.weakest()) < 0
                        || strength.compareTo(window.strongest()) > 0)
            .distinct()
            .map(display::strength)
            .toList();
    return outside.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Note(
                "strength-outside-window",
                Saying.of("round.strength-outside-window")
                    .with("strengths", outside)
                    .with("weakest", display.strength(window.weakest()))
                    .with("strongest", display.strength(window.strongest()))));
  }

  private Note quality() {
    Run.Quality quality = plan.run().orElseThrow().quality();
    return new Note(
        "run-quality",
        Saying.of("round.run-quality")
            .with("mean", quality.meanAge().toMinutes())
            .with("greatest", quality.greatestAge().toMinutes())
            .with("freshest", quality.leastAge())
            .with("bound", quality.meanAgeBound().toMinutes()));
  }

  private Optional<Note> windows() {
    long open =
        day.deliveries().stream()
            .map(DayOfRound.Delivery::drop)
            .filter(drop -> drop.stop().window().isEmpty())
            .map(drop -> drop.place().site())
            .distinct()
            .count();
    return open == 0
        ? Optional.empty()
        : Optional.of(new Note("no-window", Saying.of("round.no-window").with("sites", open)));
  }

  private static List<Note> returned(List<Return> returns, CarafeLedger ledger) {
    if (returns.isEmpty()) {
      return List.of(new Note("no-returns", Saying.of("round.no-returns")));
    }
    LocalDate last =
        returns.stream().map(Return::date).max(Comparator.naturalOrder()).orElseThrow();
    List<Note> notes = new ArrayList<>();
    notes.add(
        new Note(
            "returns",
            Saying.of("round.returns")
                .with("last", last.toString())
                .with("missing", ledger.overdue() > 0)
                .with("overdue", ledger.overdue())));
    if (ledger.surplus() > 0) {
      notes.add(
          new Note(
              "returns-surplus",
              Saying.of("round.returns-surplus").with("carafes", ledger.surplus())));
    }
    return notes;
  }
}
