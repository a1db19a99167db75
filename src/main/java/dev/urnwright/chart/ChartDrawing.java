package dev.urnwright.chart;

import dev.urnwright.chart.Canvas.Anchor;
import dev.urnwright.chart.Canvas.Letters;
import dev.urnwright.chart.Canvas.Pen;
import dev.urnwright.event.Window;
import dev.urnwright.sheet.Axis;
import dev.urnwright.sheet.ControlChart;
import dev.urnwright.sheet.ControlChart.Dilution;
import dev.urnwright.sheet.RatioLine;
import dev.urnwright.wording.Words;
import java.util.List;
import java.util.Locale;

/** Puts a control chart on a canvas, without its legend. */
public final class ChartDrawing {
  private static final double LEFT = 38;
  private static final double RIGHT = 34;
  private static final double TOP = 34;
  private static final double BOTTOM = 36;

  private static final Pen FRAME = Pen.of(0.1, 0.9);
  private static final Pen TICK = Pen.of(0.1, 0.7);
  private static final Pen RATIO = Pen.of(0.62, 0.5);
  private static final Pen WINDOW = new Pen(0.35, 0.8, 3);
  private static final double WINDOW_GREY = 0.91;

  private ChartDrawing() {}

  /**
   * Draws a chart into the upper left corner of a canvas.
   *
   * @param width in points, enough for its margins of some 80 points
   * @param height in points, likewise
   * @param words for its axes
   */
  public static void draw(
      ControlChart chart, Canvas canvas, double width, double height, Words words) {
    Plot plot = new Plot(LEFT, TOP, width - RIGHT, height - BOTTOM, chart);
    window(plot, canvas, words);
    for (RatioLine line : chart.ratioLines()) {
      ratio(line, plot, canvas);
    }
    axes(plot, canvas, words);
    for (Dilution dilution : chart.dilutions()) {
      arrow(dilution, plot, canvas);
    }
    for (Dilution dilution : chart.dilutions()) {
      for (ControlChart.Point point : dilution.points()) {
        Marker.of(dilution.marker())
            .draw(canvas, plot.x(point.extraction()), plot.y(point.strength()));
      }
    }
    PointLabels.draw(chart, plot, canvas);
  }

  /**
   * Draws the marker of a coffee, for a legend.
   *
   * @param number which, counted from 0
   * @param x its middle, in points from the left
   * @param y its middle, in points from the top
   */
  public static void marker(int number, Canvas canvas, double x, double y) {
    Marker.of(number).draw(canvas, x, y);
  }

  private static void window(Plot plot, Canvas canvas, Words words) {
    Window window = plot.chart().window();
    Outline box =
        Outline.box(
            plot.x(window.leastExtracted().percent()),
            plot.y(window.strongest().percent()),
            plot.x(window.mostExtracted().percent()),
            plot.y(window.weakest().percent()));
    canvas.fill(box, WINDOW_GREY);
    canvas.draw(box, WINDOW);
    canvas.text(
        words.text("chart.aim"),
        plot.x(window.mostExtracted().percent()),
        plot.y(window.weakest().percent()) + 9,
        new Letters(7.5, false, 0.2, Anchor.END));
  }

  /** A line enters at the left or the lower edge and leaves at the upper or the right one. */
  private static void ratio(RatioLine line, Plot plot, Canvas canvas) {
    Axis across = plot.chart().extraction();
    Axis up = plot.chart().strength();
    double from = Math.max(across.least(), line.extractionAt(up.least()));
    double to = Math.min(across.greatest(), line.extractionAt(up.greatest()));
    canvas.line(
        plot.x(from),
        plot.y(line.strengthAt(from)),
        plot.x(to),
        plot.y(line.strengthAt(to)),
        RATIO);
    boolean atTop = line.strengthAt(across.greatest()) > up.greatest();
    canvas.text(
        "1:" + line.ratio(),
        plot.x(to) + (atTop ? 0 : 4),
        plot.y(line.strengthAt(to)) + (atTop ? -4 : 2.5),
        new Letters(7, false, 0.35, atTop ? Anchor.MIDDLE : Anchor.START));
  }

  private static void axes(Plot plot, Canvas canvas, Words words) {
    canvas.draw(Outline.box(plot.left(), plot.top(), plot.right(), plot.bottom()), FRAME);
    for (double tick : plot.chart().extraction().ticks()) {
      canvas.line(plot.x(tick), plot.bottom(), plot.x(tick), plot.bottom() + 4, TICK);
      canvas.text(
          words.style().of(written(tick, plot.chart().extraction().tick())),
          plot.x(tick),
          plot.bottom() + 13,
          new Letters(8, false, 0, Anchor.MIDDLE));
    }
    for (double tick : plot.chart().strength().ticks()) {
      canvas.line(plot.left() - 4, plot.y(tick), plot.left(), plot.y(tick), TICK);
      canvas.text(
          words.style().of(written(tick, plot.chart().strength().tick())),
          plot.left() - 6,
          plot.y(tick) + 3,
          new Letters(8, false, 0, Anchor.END));
    }
    canvas.text(words.text("chart.strength"), 4, 10, new Letters(9, true, 0, Anchor.START));
    canvas.text(
        words.text("chart.ratios"),
        plot.right() + RIGHT - 4,
        10,
        new Letters(8, false, 0.35, Anchor.END));
    canvas.text(
        words.text("chart.extraction"),
        (plot.left() + plot.right()) / 2,
        plot.bottom() + 28,
        new Letters(9, true, 0, Anchor.MIDDLE));
  }

  private static String written(double tick, double step) {
    return String.format(Locale.ROOT, step < 1 ? "%.1f" : "%.0f", tick);
  }

  /** From the concentrate straight down to the weakest cup. */
  private static void arrow(Dilution dilution, Plot plot, Canvas canvas) {
    if (dilution.cups().isEmpty()) {
      return;
    }
    ControlChart.Point weakest = dilution.cups().get(dilution.cups().size() - 1);
    double x = plot.x(weakest.extraction());
    double from = plot.y(dilution.concentrate().strength());
    double to = plot.y(weakest.strength()) - 7;
    if (to - from < 12) {
      return;
    }
    canvas.line(x, from, x, to - 5, Pen.of(0.1, 1.3));
    canvas.fill(
        new Outline(
            List.of(
                new Outline.Corner(x - 3.2, to - 7),
                new Outline.Corner(x + 3.2, to - 7),
                new Outline.Corner(x, to))),
        0.1);
  }
}
