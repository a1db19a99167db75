package dev.urnwright.plan;

import dev.urnwright.brew.Blend;
import dev.urnwright.event.Event;
import dev.urnwright.plan.OnTheDay.Correction;
import dev.urnwright.plan.OnTheDay.Pour;
import dev.urnwright.plan.OnTheDay.TasteLadder;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Works out what to do on the day for each likely reading, and rung by rung for each taste. */
final class DayTables {
  /** Readings on the table, this many below the planned one and as many above. */
  private static final int EACH_WAY = 7;

  /** Between two of them, in hundredths of a percent: twice what a refractometer can tell apart. */
  private static final int READING_STEP = 2;

  private final Event event;
  private final List<GroupPlan> groups;
  private final Strength planned;
  private final Mass step;
  private final boolean alike;

  /**
   * Tables for one coffee.
   *
   * @param planned strength of the concentrate that the batches give
   * @param alike whether every fill is made for that strength, but for the rounding of batches; if
   *     not, what stands beside it is worked out for it as beside any other
   */
  DayTables(Event event, List<GroupPlan> groups, Strength planned, boolean alike) {
    this.alike = alike;
    this.event = event;
    this.groups = groups;
    this.planned = planned;
    this.step = event.equipment().scaleStep();
  }

  OnTheDay tables() {
    return new OnTheDay(corrections(), ladder());
  }

  private List<Correction> corrections() {
    long hundredths = Math.round(planned.percent() * 100);
    List<Correction> corrections = new ArrayList<>();
    for (int i = -EACH_WAY; i <= EACH_WAY; i++) {
      long reading = hundredths + (long) i * READING_STEP;
      if (reading > 0) {
        corrections.add(correction(Strength.ofPercent(reading / 100.0), i == 0));
      }
    }
    return corrections;
  }

  private Correction correction(Strength reading, boolean asPlanned) {
    List<Pour> pours =
        IntStream.range(0, groups.size())
            .mapToObj(
                i -> {
                  Fill fill = groups.get(i).fills().get(0);
                  return asPlanned && (alike || isFor(fill, reading))
                      ? new Pour(
                          fill.blend().concentrate(),
                          fill.blend().bypass(),
                          fill.blend().strength(),
                          0)
                      : pour(fill, groups.get(i), reading);
                })
            .toList();
    return new Correction(reading, asPlanned, pours);
  }

  /** Whether a fill is made for a reading, as far as a refractometer tells. */
  private static boolean isFor(Fill fill, Strength reading) {
    return Math.round(fill.blend().concentrateStrength().percent() * 100)
        == Math.round(reading.percent() * 100);
  }

  /**
   * The same total of a stronger concentrate; the same concentrate, less water, of a weaker one.
   */
  private Pour pour(Fill fill, GroupPlan group, Strength reading) {
    double wanted = group.group().strength().fraction();
    double melts = group.iceShare().fraction();
    Mass liquid = fill.blend().liquid();
    double finished = liquid.grams() / (1 - melts);
    Mass forTotal =
        Mass.ofGrams(finished * wanted / reading.fraction()).roundUpTo(step).min(liquid);
    if (forTotal.compareTo(fill.blend().concentrate()) <= 0) {
      return poured(forTotal, liquid.minus(forTotal), reading, melts, 0);
    }
    Mass concentrate = fill.blend().concentrate();
    double makes = concentrate.grams() * reading.fraction() / wanted * (1 - melts);
    Mass bypass =
        Mass.ofGrams(Math.max(0, makes - concentrate.grams()))
            .roundTo(step)
            .min(fill.blend().bypass());
    return poured(
        concentrate,
        bypass,
        reading,
        melts,
        group.cupsOut(fill, liquid, event.serving())
            - group.cupsOut(fill, concentrate.plus(bypass), event.serving()));
  }

  private static Pour poured(
      Mass concentrate, Mass bypass, Strength reading, double melts, int cupsShort) {
    Mass ice = concentrate.plus(bypass).times(melts / (1 - melts));
    return new Pour(
        concentrate,
        bypass,
        new Blend(concentrate, bypass, ice, reading).strength(),
        Math.max(0, cupsShort));
  }

  private TasteLadder ladder() {
    LadderMaking making = new LadderMaking(groups, step);
    UnitSystem units = event.print().units();
    Mass sample = LadderMaking.usualSample(units);
    Mass rung = LadderMaking.usualStep(units);
    return making.ladder(sample, rung, planned, making.enough(sample, rung, planned));
  }
}
