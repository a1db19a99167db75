package dev.urnwright.chart;

import dev.urnwright.chart.Canvas.Anchor;
import dev.urnwright.chart.Canvas.Letters;
import dev.urnwright.chart.Canvas.Pen;
import dev.urnwright.sheet.ControlChart;
import dev.urnwright.sheet.ControlChart.Dilution;
import dev.urnwright.sheet.ControlChart.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The numbers beside the points: in one column at the left of all arrows and one at the right, each
 * joined to its point by a thin line.
 */
final class PointLabels {
  private static final double AWAY = 24;
  private static final double GAP = 10.5;
  private static final double LARGEST_LETTERS = 9;

  /** More than this in one column, and a single coffee's labels stand on both sides. */
  private static final int ONE_COLUMN = 24;

  private static final Pen LEADER = Pen.of(0.45, 0.4);

  private PointLabels() {}

  static void draw(ControlChart chart, Plot plot, Canvas canvas) {
    List<Dilution> across =
        chart.dilutions().stream()
            .sorted(Comparator.comparingDouble(dilution -> dilution.concentrate().extraction()))
            .toList();
    List<Point> left = new ArrayList<>();
    List<Point> right = new ArrayList<>();
    int number = 0;
    for (Dilution dilution : across) {
      for (Point point : dilution.points()) {
        boolean toTheRight =
            across.size() > 1
                ? across.indexOf(dilution) >= across.size() / 2
                : dilution.points().size() <= ONE_COLUMN || number % 2 == 0;
        (toTheRight ? right : left).add(point);
        number++;
      }
    }
    double leftmost = plot.x(across.get(0).concentrate().extraction());
    double rightmost = plot.x(across.get(across.size() - 1).concentrate().extraction());
    column(left, Math.max(leftmost - AWAY, plot.left() + AWAY), false, plot, canvas);
    column(right, Math.min(rightmost + AWAY, plot.right() - AWAY), true, plot, canvas);
  }

  private static void column(
      List<Point> points, double x, boolean toTheRight, Plot plot, Canvas canvas) {
    List<Point> fromTheTop =
        points.stream().sorted(Comparator.comparingDouble(Point::strength).reversed()).toList();
    double[] wanted = fromTheTop.stream().mapToDouble(point -> plot.y(point.strength())).toArray();
    double[] places = LabelColumn.spread(wanted, GAP, plot.top() + 6, plot.bottom() - 6);
    double closest = GAP;
    for (int at = 1; at < places.length; at++) {
      closest = Math.min(closest, places[at] - places[at - 1]);
    }
    double size = Math.min(LARGEST_LETTERS, closest * 0.9);
    for (int at = 0; at < places.length; at++) {
      Point point = fromTheTop.get(at);
      double away = toTheRight ? 5 : -5;
      canvas.line(
          plot.x(point.extraction()) + away, wanted[at], x - away / 2.5, places[at], LEADER);
      double width = point.label().length() * size * 0.65 + 1;
      canvas.fill(
          Outline.box(
              toTheRight ? x - 1 : x - width,
              places[at] - size / 2,
              toTheRight ? x + width : x + 1,
              places[at] + size / 2),
          1);
      canvas.text(
          point.label(),
          x,
          places[at] + size * 0.36,
          new Letters(size, true, 0, toTheRight ? Anchor.START : Anchor.END));
    }
  }
}
