package dev.urnwright.chart;

import dev.urnwright.chart.Canvas.Anchor;
import dev.urnwright.chart.Canvas.Letters;
import dev.urnwright.plan.Plan;
import dev.urnwright.sheet.ChartView;
import dev.urnwright.sheet.Name;
import dev.urnwright.wording.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A plan's charts one below the other, each with its legend, under the event's name.
 *
 * @param event the event's name
 * @param charts one or more
 */
record ChartPoster(Name event, List<ChartView> charts) {
  static final double WIDTH = 560;

  private static final double MARGIN = 20;
  private static final double TITLE_ROW = 18;
  private static final double CHART = 420;
  private static final double ROW = 14;

  /** As many letters as fit beside the figures of the legend, wide ones too. */
  private static final int NAME_LETTERS = 42;

  private static final int TITLE_LETTERS = 38;

  static ChartPoster of(Plan plan) {
    return new ChartPoster(new Name(plan.event().name()), ChartView.of(plan));
  }

  double height() {
    double height = 2 * MARGIN + title().size() * TITLE_ROW + ROW;
    for (ChartView chart : charts) {
      height += CHART + 2 * ROW;
      for (Row row : rows(chart)) {
        height += row.height();
      }
    }
    return height;
  }

  void draw(Canvas canvas) {
    canvas.fill(Outline.box(0, 0, WIDTH + 1, height() + 1), 1); // beyond half-covered dots
    double top = MARGIN + TITLE_ROW;
    for (String line : title()) {
      canvas.text(line, MARGIN, top, new Letters(14, true, 0, Anchor.START));
      top += TITLE_ROW;
    }
    for (ChartView chart : charts) {
      ChartDrawing.draw(
          chart.chart(),
          new Shifted(canvas, MARGIN, top),
          WIDTH - 2 * MARGIN,
          CHART,
          Words.ENGLISH);
      top += CHART + ROW;
      for (Row row : rows(chart)) {
        row.draw(canvas, top);
        top += row.height();
      }
      top += ROW;
    }
  }

  private List<String> title() {
    return event.wrappedAt(TITLE_LETTERS);
  }

  private static List<Row> rows(ChartView view) {
    List<Row> rows = new ArrayList<>();
    for (ChartView.LegendRow row : view.legend()) {
      String who =
          row.concentrate()
              ? "concentrate: " + row.coffee()
              : row.groups().stream().map(Name::text).collect(Collectors.joining(" · "));
      rows.add(new Row(row, Marker.of(row.marker()), new Name(who).wrappedAt(NAME_LETTERS)));
    }
    return rows;
  }

  /**
   * One point in words.
   *
   * @param legend its figures
   * @param marker its coffee's
   * @param who drinks it
   */
  private record Row(ChartView.LegendRow legend, Marker marker, List<String> who) {
    double height() {
      return who.size() * ROW;
    }

    void draw(Canvas canvas, double baseline) {
      Letters figures = new Letters(9, false, 0, Anchor.END);
      marker.draw(canvas, MARGIN + 8, baseline - 3);
      canvas.text(legend.label(), MARGIN + 36, baseline, new Letters(9, true, 0, Anchor.END));
      canvas.text(legend.strength().toString(), MARGIN + 84, baseline, figures);
      canvas.text(legend.waterToCoffee(), MARGIN + 126, baseline, figures);
      double line = baseline;
      for (String part : who) {
        canvas.text(
            part, MARGIN + 140, line, new Letters(9, legend.concentrate(), 0, Anchor.START));
        line += ROW;
      }
    }
  }
}
