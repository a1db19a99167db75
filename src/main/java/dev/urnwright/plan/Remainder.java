package dev.urnwright.plan;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewBalance;
import dev.urnwright.demand.CupDemand;
import dev.urnwright.event.Note;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.plan.Run.BatchTime;
import dev.urnwright.plan.Run.FillTime;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What is left of a plan when some of its batches are brewed and some of its dispensers are out,
 * with the rest as corrected. The times stay, those of brewed batches too: labels tell them.
 */
public final class Remainder {
  private static final Set<ActionKind> OF_BREWING =
      EnumSet.of(ActionKind.GRIND, ActionKind.RINSE, ActionKind.START);

  private static final Blend NOTHING =
      new Blend(Mass.ZERO, Mass.ZERO, Mass.ZERO, Strength.ofFraction(0));

  private final Plan plan;
  private final Map<String, Batch> toBrew;
  private final Map<String, Fill> toFill;

  /**
   * A remainder.
   *
   * @param toBrew batches still to brew, by id
   * @param toFill dispensers still to fill, by id
   */
  public Remainder(Plan plan, Map<String, Batch> toBrew, Map<String, Fill> toFill) {
    this.plan = plan;
    this.toBrew = Map.copyOf(toBrew);
    this.toFill = Map.copyOf(toFill);
  }

  /** The plan of what is left; empty when that is nothing. */
  public Optional<Plan> plan() {
    List<CoffeePlan> coffees =
        plan.coffees().stream().map(this::left).flatMap(Optional::stream).toList();
    if (coffees.isEmpty()) {
      return Optional.empty();
    }
    List<Note> cautions = new ArrayList<>();
    cautions.add(new Note("what-is-left", Saying.of("caution.what-is-left")));
    cautions.addAll(plan.cautions());
    return Optional.of(
        new Plan(
            plan.event(),
            coffees,
            plan.run().map(this::left),
            plan.shopping(),
            cautions,
            plan.notes()));
  }

  private Optional<CoffeePlan> left(CoffeePlan coffee) {
    List<Batch> batches =
        coffee.batches().stream()
            .flatMap(batch -> Optional.ofNullable(toBrew.get(batch.id())).stream())
            .toList();
    List<GroupPlan> groups =
        coffee.groups().stream()
            .filter(group -> group.fills().stream().anyMatch(this::isLeft))
            .map(this::left)
            .toList();
    if (groups.isEmpty()) {
      return Optional.empty();
    }
    Brewed brewed = brewed(coffee, batches);
    return Optional.of(
        new CoffeePlan(
            coffee.coffee(),
            needed(coffee, batches),
            brewed,
            groups,
            batches,
            new DayTables(plan.event(), groups, brewed.brew().strength(), false).tables()));
  }

  /** What the batches to come give; what was planned when none is to come. */
  private static Brewed brewed(CoffeePlan coffee, List<Batch> batches) {
    return sum(batches)
        .map(
            brew -> {
              Mass drawn = coffee.brewed().drawn().min(brew.beverage());
              return new Brewed(brew, drawn, brew.beverage().minus(drawn));
            })
        .orElse(coffee.brewed());
  }

  /** What the fills left take, as if all of it came out of batches like those to come. */
  private Needed needed(CoffeePlan coffee, List<Batch> batches) {
    double[] sums = new double[3];
    for (Fill fill : coffee.fills()) {
      Blend blend = Optional.ofNullable(toFill.get(fill.id())).map(Fill::blend).orElse(NOTHING);
      sums[0] += blend.concentrate().grams();
      sums[1] += blend.bypass().grams();
      sums[2] += blend.ice().grams();
    }
    BrewBalance like = sum(batches).orElse(coffee.needed().brew());
    return new Needed(
        sums[0] == 0 ? like : like.times(sums[0] / like.beverage().grams()),
        new Blend(
            Mass.ofGrams(sums[0]), Mass.ofGrams(sums[1]), Mass.ofGrams(sums[2]), like.strength()));
  }

  private static Optional<BrewBalance> sum(List<Batch> batches) {
    return batches.stream().map(Batch::brew).reduce(BrewBalance::plus);
  }

  private boolean isLeft(Fill fill) {
    return toFill.containsKey(fill.id());
  }

  private GroupPlan left(GroupPlan group) {
    List<Fill> fills =
        group.fills().stream()
            .flatMap(fill -> Optional.ofNullable(toFill.get(fill.id())).stream())
            .toList();
    return new GroupPlan(
        group.group(),
        group.coffee(),
        left(group.demand(), fills.size(), group.fills().size()),
        group.cup(),
        group.needed(),
        fills,
        group.taps());
  }

  /** The cups still to serve: fills of a group are alike. */
  private static CupDemand left(CupDemand demand, int fills, int of) {
    double part = (double) fills / of;
    return new CupDemand(
        (int) Math.round(part * demand.cups()), part * demand.mean(), demand.chanceEnough());
  }

  private Run left(Run run) {
    List<BatchTime> batches =
        run.batches().stream()
            .map(
                time ->
                    new BatchTime(
                        toBrew.getOrDefault(time.batch().id(), time.batch()),
                        time.start(),
                        time.ready()))
            .toList();
    List<FillTime> all = run.fills().stream().map(this::corrected).toList();
    Findings findings = new Findings(plan.event());
    List<Action> actions =
        Handwork.atTimesOf(
                run.actions(),
                new RunActions(
                        plan.event(),
                        batches,
                        all,
                        run.heaters(),
                        findings.display(),
                        new Timetable(plan.event()))
                    .actions())
            .stream()
            .filter(this::isLeft)
            .filter(action -> !isOn(action, run))
            .toList();
    List<FillTime> fills = all.stream().filter(time -> isLeft(time.fill())).toList();
    return new Run(
        batches,
        fills,
        run.heaters(),
        new WaterNeeded(plan.event()).of(toBrew.values(), fills),
        actions,
        new Handwork(plan.event(), batches, all, actions, Handwork.Water.NONE)
            .crew(run.crew().enough()),
        run.quality());
  }

  private FillTime corrected(FillTime time) {
    return new FillTime(
        toFill.getOrDefault(time.fill().id(), time.fill()),
        time.unit(),
        time.station(),
        time.tap(),
        time.filled(),
        time.due(),
        time.lastPour(),
        time.useBy(),
        time.heat());
  }

  /**
   * Whether a brewer or a heater is on already: something was brewed on it, or, of a heater, what
   * is brewed or filled by now came after it.
   */
  private boolean isOn(Action action, Run run) {
    if (action.kind() != ActionKind.SWITCH_ON) {
      return false;
    }
    List<BatchTime> brewed =
        run.batches().stream().filter(time -> !toBrew.containsKey(time.batch().id())).toList();
    boolean isHeater = run.heaters().stream().anyMatch(each -> each.name().equals(action.what()));
    return isHeater
        ? Stream.concat(
                brewed.stream().map(BatchTime::ready),
                run.fills().stream().filter(time -> !isLeft(time.fill())).map(FillTime::filled))
            .anyMatch(done -> !done.isBefore(action.at()))
        : brewed.stream()
            .flatMap(time -> time.batch().unit().stream())
            .anyMatch(unit -> unit.label().equals(action.what()));
  }

  /** What is done with a dispenser that is out stays: it comes back, or is poured away. */
  private boolean isLeft(Action action) {
    if (OF_BREWING.contains(action.kind())) {
      return toBrew.containsKey(action.what());
    }
    return switch (action.kind()) {
      case PREHEAT, FILL -> toFill.containsKey(action.what());
      default -> true;
    };
  }
}
