package dev.urnwright.sheet;

import dev.urnwright.brew.Estimate;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.wording.Counted;
import dev.urnwright.wording.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The dispensers of one coffee of one group.
 *
 * @param group whom they serve
 * @param coffee which
 * @param serving how much, where and when
 * @param strength wanted and reached
 * @param ice when it is served over ice
 * @param fills one row for each dispenser
 */
record FillTable(
    Name group,
    CoffeeTag coffee,
    Serving serving,
    StrengthPair strength,
    Optional<Iced> ice,
    List<FillRow> fills) {
  private static final int FEW = 6;

  /** How wide its figures are: a class of the style sheet. */
  String width() {
    return Widths.of(
        fills.stream()
            .map(FillRow::weighed)
            .flatMap(fill -> Stream.of(fill.concentrate(), fill.bypass(), fill.together())));
  }

  /** Whether they fit on one page. */
  boolean few() {
    return fills.size() <= FEW;
  }

  static List<FillTable> of(Plan plan, Certainty certainty, Display display, Words words) {
    RunTimes times = RunTimes.of(plan, words);
    return plan.groups().stream()
        .map(group -> of(plan, group, certainty, times, display, words))
        .toList();
  }

  private static FillTable of(
      Plan plan,
      GroupPlan group,
      Certainty certainty,
      RunTimes times,
      Display display,
      Words words) {
    CoffeeTag coffee = CoffeeTag.of(group.coffee());
    Mass step = plan.event().equipment().scaleStep();
    return new FillTable(
        new Name(group.group().name()),
        coffee,
        new Serving(
            ServiceText.of(plan.event(), group.group(), words),
            words.count(group.demand().cups()),
            display.temperature(filledAt(plan, group)),
            Optional.of(group.taps()).filter(taps -> taps > 1)),
        StrengthPair.of(group, certainty, display, words),
        Iced.of(group, display),
        group.fills().stream()
            .map(fill -> FillRow.of(fill, coffee, certainty.of(fill), times, display, step))
            .toList());
  }

  /** What is poured over ice goes in as cold as it is poured. */
  private static Temperature filledAt(Plan plan, GroupPlan group) {
    return group
        .group()
        .ice()
        .map(GuestGroup.OverIce::pouredAt)
        .orElse(plan.event().serving().bypassTemperature());
  }

  /**
   * How a group is served.
   *
   * @param service where and when
   * @param cups how many
   * @param filledAt how warm concentrate and water go in
   * @param sideBySide how many dispensers stand open at the same time, when several do
   */
  record Serving(
      ServiceText service, Counted cups, Figure filledAt, Optional<Integer> sideBySide) {}

  /**
   * Served over ice.
   *
   * @param perCup ice that melts into one cup
   * @param pouredAt how warm the beverage is when it meets the ice
   * @param inDispenser strength before the ice
   */
  record Iced(Figure perCup, Figure pouredAt, Figure inDispenser) {
    static Optional<Iced> of(GroupPlan group, Display display) {
      return group
          .group()
          .ice()
          .map(
              ice ->
                  new Iced(
                      display.mass(group.cup().blend().ice()),
                      display.temperature(ice.pouredAt()),
                      display.strength(group.needed().liquidStrength())));
    }
  }

  /**
   * One dispenser.
   *
   * @param id the fill's name
   * @param coffee which, again on every row
   * @param turn which dispenser and when, as far as that is known
   * @param from which batches the concentrate comes
   * @param weighed what goes in
   * @param level how full that looks
   */
  record FillRow(
      String id, CoffeeTag coffee, Turn turn, List<From> from, Weighed weighed, LevelText level) {
    static FillRow of(
        Fill fill, CoffeeTag coffee, Estimate sure, RunTimes times, Display display, Mass step) {
      return new FillRow(
          fill.id(),
          coffee,
          Turn.of(fill, times),
          fill.drawsByScale(step).stream()
              .map(draw -> new From(draw.batchId(), display.mass(draw.concentrate())))
              .toList(),
          Weighed.of(fill, sure, display),
          LevelText.of(fill.level(), display));
    }
  }

  /**
   * Which dispenser, and when.
   *
   * @param dispenser the very one when the plan has a run, else its kind when the event lists any
   * @param times when the plan has a run
   */
  record Turn(Optional<Name> dispenser, Optional<RunTimes.Pouring> times) {
    static Turn of(Fill fill, RunTimes times) {
      Optional<RunTimes.Pouring> pouring = times.of(fill);
      return new Turn(
          pouring
              .map(RunTimes.Pouring::unit)
              .or(() -> fill.dispenser().map(Dispenser::name).map(Name::new)),
          pouring);
    }
  }

  /**
   * Concentrate out of one batch.
   *
   * @param batch its name
   * @param concentrate how much
   */
  record From(String batch, Figure concentrate) {}

  /**
   * What goes in.
   *
   * @param concentrate first
   * @param bypass then
   * @param together both
   * @param strength in the cup
   * @param likely from where to where a cup lies, at k = 2
   * @param jug the bypass by jug instead
   * @param jugStrength what that gives in the cup
   */
  record Weighed(
      Figure concentrate,
      Figure bypass,
      Figure together,
      Figure strength,
      Figure likely,
      Figure jug,
      Figure jugStrength) {
    static Weighed of(Fill fill, Estimate sure, Display display) {
      return new Weighed(
          display.mass(fill.blend().concentrate()),
          display.mass(fill.blend().bypass()),
          display.mass(fill.blend().liquid()),
          display.strength(fill.blend().strength()),
          display.strengths(sure.low(), sure.high()),
          display.volume(fill.byJug().bypass()),
          display.strength(fill.byJug().strength()));
    }
  }

  /**
   * How full it looks.
   *
   * @param volume of what is in it
   * @param full percent of its capacity, when that is known
   */
  record LevelText(Figure volume, Optional<Integer> full) {
    /** What is left empty of it, in percent. */
    int air() {
      return 100 - full.orElse(100);
    }

    static LevelText of(Fill.Level level, Display display) {
      return new LevelText(
          display.volume(level.volume()),
          level.full().map(share -> (int) Math.round(share.percent())));
    }
  }
}
