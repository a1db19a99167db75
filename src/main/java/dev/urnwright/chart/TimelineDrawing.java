package dev.urnwright.chart;

import dev.urnwright.chart.Canvas.Anchor;
import dev.urnwright.chart.Canvas.Letters;
import dev.urnwright.chart.Canvas.Pen;
import dev.urnwright.sheet.Name;
import dev.urnwright.sheet.Timeline;
import dev.urnwright.sheet.Timeline.Box;
import dev.urnwright.sheet.Timeline.Kind;
import dev.urnwright.sheet.Timeline.Lane;
import dev.urnwright.sheet.Timeline.Tick;

/** Puts a part of a run on a canvas: brewers above, dispensers below, time to the right. */
public final class TimelineDrawing {
  private static final double LEFT = 88;
  private static final double RIGHT = 14;
  private static final double TOP = 17;
  private static final double BOTTOM = 4;
  private static final double LANE = 20;

  /** Between the brewers and the dispensers. */
  private static final double GAP = 7;

  private static final Pen HOUR = Pen.of(0.35, 0.7);
  private static final Pen MARK = Pen.of(0.72, 0.4);
  private static final Pen EDGE = Pen.of(0.1, 0.7);
  private static final Pen RULE = Pen.of(0.85, 0.4);
  private static final Letters UNIT = new Letters(7.5, false, 0, Anchor.END);

  private final Timeline timeline;
  private final Canvas canvas;
  private final double across;

  private TimelineDrawing(Timeline timeline, Canvas canvas, double width) {
    this.timeline = timeline;
    this.canvas = canvas;
    this.across = width - LEFT - RIGHT;
  }

  /** How high a drawing is, in points. */
  public static double height(Timeline timeline) {
    return TOP + timeline.lanes().size() * LANE + (hasBoth(timeline) ? GAP : 0) + BOTTOM;
  }

  /**
   * Draws into the upper left corner of a canvas.
   *
   * @param width in points, enough for some 100 points of names and a few hundred of time
   */
  public static void draw(Timeline timeline, Canvas canvas, double width) {
    new TimelineDrawing(timeline, canvas, width).draw();
  }

  private static boolean hasBoth(Timeline timeline) {
    return timeline.lanes().stream().map(Lane::kind).distinct().count() > 1;
  }

  private void draw() {
    double bottom = height(timeline) - BOTTOM;
    for (Tick tick : timeline.ticks()) {
      double x = x(tick.minute());
      canvas.line(x, TOP - 3, x, bottom, tick.hour() ? HOUR : MARK);
      canvas.text(tick.label(), x, TOP - 6, new Letters(7.5, tick.hour(), 0, Anchor.MIDDLE));
    }
    double top = TOP;
    Kind above = timeline.lanes().get(0).kind();
    for (Lane lane : timeline.lanes()) {
      if (lane.kind() != above) {
        canvas.line(0, top + GAP / 2, x(timeline.minutes()), top + GAP / 2, EDGE);
        top += GAP;
        above = lane.kind();
      }
      lane(lane, top);
      top += LANE;
    }
  }

  private void lane(Lane lane, double top) {
    canvas.text(fitting(lane.unit(), UNIT, LEFT - 6), LEFT - 5, top + LANE / 2 + 2.7, UNIT);
    canvas.line(LEFT, top + LANE, x(timeline.minutes()), top + LANE, RULE);
    for (Box box : lane.boxes()) {
      new TimelineBox(box, lane.kind(), x(box.stretch().from()), x(box.stretch().to()))
          .draw(canvas, x(box.stretch().service()), top + 2, top + LANE - 2);
    }
  }

  /** The name, or as much of it as there is room for. */
  private String fitting(Name name, Letters letters, double room) {
    int count = name.text().codePointCount(0, name.text().length());
    String text = name.text();
    while (canvas.width(text, letters) > room && count > 2) {
      count--;
      text = name.shortenedTo(count);
    }
    return text;
  }

  private double x(int minute) {
    return LEFT + across * timeline.share(minute);
  }
}
