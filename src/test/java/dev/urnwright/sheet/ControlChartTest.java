package dev.urnwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.GuestGroup.CoffeeShare;
import dev.urnwright.event.Paper;
import dev.urnwright.event.Provision;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.sheet.ControlChart.Dilution;
import dev.urnwright.sheet.ControlChart.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ControlChartTest {
  /** 60 g and 960 g of water that keep so much, read at so much. */
  private static BrewProfile keeping(double gramsPerGram, double percent) {
    return Events.profile(
        Method.PERCOLATION,
        new ReferenceBrew(
            Mass.ofGrams(60),
            Mass.ofGrams(960),
            Optional.of(Mass.ofGrams(960 - 60 * gramsPerGram)),
            Strength.ofPercent(percent)));
  }

  private static Plan plan(BrewProfile profile, double ratio, double... strengths) {
    Coffee coffee = Events.coffee("house", Events.ratio(ratio), profile);
    List<dev.urnwright.event.GuestGroup> groups = new ArrayList<>();
    for (double strength : strengths) {
      groups.add(Events.group("At " + strength + "-" + groups.size(), 20, 200, strength));
    }
    return SheetPlans.planned(
        Events.event(
            Events.serving(new Provision.Mean(), 0),
            List.of(coffee),
            groups,
            Events.equipment(1, List.of(), List.of())));
  }

  private static ControlChart only(Plan plan) {
    List<ControlChart> charts = ControlChart.of(plan);
    assertEquals(1, charts.size());
    return charts.get(0);
  }

  @Test
  void axesAreThePublishedOnes() {
    // Coffee Brewing Control Chart, Specialty Coffee Association, version 3, 2019.
    ControlChart chart = only(SheetPlans.usual(UnitSystem.METRIC, Paper.A4));
    assertEquals(14, chart.extraction().least(), 1e-9);
    assertEquals(26, chart.extraction().greatest(), 1e-9);
    assertEquals(0.9, chart.strength().least(), 1e-9);
    assertEquals(1.8, chart.strength().greatest(), 1e-9);
    assertEquals(13, chart.extraction().ticks().size());
    assertEquals(10, chart.strength().ticks().size());
  }

  /**
   * Where the lines leave the right edge, at 26 % extraction, of the same published chart; read off
   * the order of its text, so to 0.03 only. Its lines fit an absorption of 1.5 to 1.75 g/g; 1.5 is
   * what trade pages state for it.
   */
  @ParameterizedTest
  @CsvSource({
    "16, 1.80",
    "17, 1.675",
    "18, 1.575",
    "19, 1.475",
    "20, 1.40",
    "21, 1.325",
    "22, 1.25"
  })
  void ratioLinesLeaveThePublishedChartWhereItsOwnDo(int ratio, double strength) {
    ControlChart chart = only(plan(keeping(1.5, 1.30), 14, 1.3));
    assertEquals(strength, line(chart, ratio).strengthAt(26), 0.03);
  }

  /** 26/(R − 2.0) %: arithmetic on that chart's axis. */
  @ParameterizedTest
  @CsvSource({"17, 1.733", "18, 1.625", "19, 1.529", "20, 1.444", "21, 1.368", "22, 1.300"})
  void ratioLinesFollowTheAbsorption(int ratio, double strength) {
    ControlChart chart = only(plan(keeping(2.0, 1.30), 14, 1.3));
    // Printed to three decimals.
    assertEquals(strength, line(chart, ratio).strengthAt(26), 0.0005);
  }

  private static RatioLine line(ControlChart chart, int ratio) {
    return chart.ratioLines().stream()
        .filter(line -> line.ratio() == ratio)
        .findFirst()
        .orElseThrow(() -> new AssertionError("no line of ratio " + ratio));
  }

  @Test
  void bypassMovesAPointStraightDown() {
    ControlChart chart = only(plan(keeping(2.15, 1.40), 13, 1.45, 1.2, 1.3));
    Dilution dilution = chart.dilutions().get(0);
    assertEquals(3, dilution.cups().size());
    double above = dilution.concentrate().strength();
    for (Point cup : dilution.cups()) {
      assertEquals(dilution.concentrate().extraction(), cup.extraction(), 1e-9);
      assertTrue(cup.strength() < above, "strongest first: " + cup);
      above = cup.strength();
    }
  }

  @Test
  void aCupLiesOnTheLineOfItsTotalWaterToCoffee() {
    // E = 1.40 % × 831/60 = 19.39 %; a = (960 − 831)/60 = 2.15. At T = 1.2 % the line of ratio R
    // passes where R = E/T + a = 19.39/1.2 + 2.15 = 18.308.
    ControlChart chart = only(plan(keeping(2.15, 1.40), 13, 1.2));
    Point cup = chart.dilutions().get(0).cups().get(0);
    assertEquals(18.308, cup.waterToCoffee(), 0.001);
    assertTrue(line(chart, 18).strengthAt(cup.extraction()) > cup.strength());
    assertTrue(line(chart, 19).strengthAt(cup.extraction()) < cup.strength());
  }

  @Test
  void theConcentrateLiesOnTheLineOfItsBrewRatio() {
    ControlChart chart = only(plan(keeping(2.15, 1.40), 13, 1.2));
    Point concentrate = chart.dilutions().get(0).concentrate();
    // 19.39/(13 − 2.15) = 1.787 %
    assertEquals(1.787, concentrate.strength(), 0.0005);
    assertEquals(
        concentrate.strength(), line(chart, 13).strengthAt(concentrate.extraction()), 1e-9);
  }

  @Test
  void anAxisReachesAPointOutsideIt() {
    // 19.39/(9 − 2.15) = 2.83 %: the axis ends at the next mark, 2.9 %, and stays readable.
    ControlChart chart = only(plan(keeping(2.15, 1.40), 9, 1.3));
    assertTrue(chart.strength().greatest() >= 2.83, chart.strength().toString());
    assertTrue(chart.strength().greatest() < 3.05, chart.strength().toString());
    assertTrue(chart.strength().ticks().size() <= 17, chart.strength().toString());
    assertEquals(14, chart.extraction().least(), 1e-9);
  }

  @Test
  void everyRatioLineCrossesTheChartAndNoneIsMissing() {
    ControlChart chart = only(plan(keeping(2.15, 1.40), 13, 1.2));
    // 14/1.8 + 2.15 = 9.93 and 26/0.9 + 2.15 = 31.04 bound the whole ratios inside.
    assertEquals(10, chart.ratioLines().get(0).ratio());
    assertEquals(31, chart.ratioLines().get(chart.ratioLines().size() - 1).ratio());
    assertEquals(22, chart.ratioLines().size());
  }

  @Test
  void groupsOfOneStrengthShareAPoint() {
    ControlChart chart = only(plan(keeping(2.15, 1.40), 13, 1.3, 1.2, 1.3));
    List<Point> cups = chart.dilutions().get(0).cups();
    assertEquals(2, cups.size());
    assertEquals(2, cups.get(0).groups().size());
    assertEquals(List.of("1", "2"), cups.stream().map(Point::label).toList());
  }

  @Test
  void coffeesThatKeepOtherAmountsOfWaterHaveChartsOfTheirOwn() {
    assertEquals(1, ControlChart.of(twoCoffees(2.15)).size());
    assertEquals(2, ControlChart.of(twoCoffees(2.0)).size());
    ControlChart shared = ControlChart.of(twoCoffees(2.15)).get(0);
    assertNotEquals(shared.dilutions().get(0).marker(), shared.dilutions().get(1).marker());
    assertEquals("B", shared.dilutions().get(1).concentrate().label());
    assertEquals("2", shared.dilutions().get(1).cups().get(0).label());
  }

  private static Plan twoCoffees(double otherKeeps) {
    Coffee house = Events.coffee("house", Events.ratio(13), keeping(2.15, 1.40));
    Coffee other = Events.coffee("other", Events.ratio(13), keeping(otherKeeps, 1.40));
    return SheetPlans.planned(
        Events.event(
            Events.serving(new Provision.Mean(), 0),
            List.of(house, other),
            List.of(
                Events.drinking(
                    Events.group("Both", 40, 200, 1.3),
                    new CoffeeShare("house", Share.ofPercent(50)),
                    new CoffeeShare("other", Share.ofPercent(50)))),
            Events.equipment(1, List.of(), List.of())));
  }
}
