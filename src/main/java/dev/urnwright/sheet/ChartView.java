package dev.urnwright.sheet;

import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Strength;
import java.util.ArrayList;
import java.util.List;

/**
 * A control chart with its legend.
 *
 * @param number counted from 0
 * @param chart what to draw
 * @param legend one row for each point
 */
public record ChartView(int number, ControlChart chart, List<LegendRow> legend) {
  /** Copies the list. */
  public ChartView {
    legend = List.copyOf(legend);
  }

  /** The charts of a plan. */
  public static List<ChartView> of(Plan plan) {
    return of(
        plan, new Display(plan.event().print().units(), plan.event().equipment().scaleStep()));
  }

  static List<ChartView> of(Plan plan, Display display) {
    List<ChartView> views = new ArrayList<>();
    for (ControlChart chart : ControlChart.of(plan)) {
      List<LegendRow> legend = new ArrayList<>();
      for (ControlChart.Dilution dilution : chart.dilutions()) {
        for (ControlChart.Point point : dilution.points()) {
          legend.add(LegendRow.of(point, dilution, display));
        }
      }
      views.add(new ChartView(views.size(), chart, legend));
    }
    return views;
  }

  /**
   * One point in words.
   *
   * @param label at the point
   * @param marker which of the markers, counted from 0
   * @param coffee which
   * @param strength up
   * @param sure how far off that may be, at k = 2, either way
   * @param extraction across
   * @param waterToCoffee brew ratio of a concentrate, total water to coffee of a cup
   * @param groups who drinks it; nobody for a concentrate
   */
  public record LegendRow(
      String label,
      int marker,
      CoffeeTag coffee,
      Figure strength,
      Figure sure,
      Figure extraction,
      String waterToCoffee,
      List<Name> groups) {
    /** Copies the list. */
    public LegendRow {
      groups = List.copyOf(groups);
    }

    static LegendRow of(ControlChart.Point point, ControlChart.Dilution dilution, Display display) {
      return new LegendRow(
          point.label(),
          dilution.marker(),
          dilution.coffee(),
          display.strength(Strength.ofPercent(point.strength())),
          display.strength(Strength.ofPercent(point.plusMinus())),
          display.extraction(Extraction.ofPercent(point.extraction())),
          display.perGram(point.waterToCoffee()),
          point.groups());
    }

    /** Whether this is undiluted. */
    public boolean concentrate() {
      return groups.isEmpty();
    }
  }
}
