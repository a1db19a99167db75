package dev.urnwright.chart;

import dev.urnwright.chart.Canvas.Anchor;
import dev.urnwright.chart.Canvas.Letters;
import dev.urnwright.chart.Canvas.Pen;
import dev.urnwright.sheet.Timeline.Box;
import dev.urnwright.sheet.Timeline.Kind;

/**
 * One batch or fill: white while a fill waits, grey with a dark foot while it is poured; what is
 * cut off has no edge there.
 *
 * @param box what it stands for
 * @param kind of its lane
 * @param left edge, in points
 * @param right edge, in points
 */
record TimelineBox(Box box, Kind kind, double left, double right) {
  private static final Pen EDGE = Pen.of(0.1, 0.8);
  private static final double BATCH_GREY = 0.9;
  private static final double SERVICE_GREY = 0.82;
  private static final double FOOT_GREY = 0.3;
  private static final double INSIDE = 2;
  private static final double FOOT = 2;

  private static final double ID_SIZE = 7;
  private static final double SMALL_ID_SIZE = 5.8;
  private static final Letters GROUP = new Letters(6, false, 0, Anchor.START);

  void draw(Canvas canvas, double service, double top, double bottom) {
    canvas.fill(Outline.box(left, top, right, bottom), kind == Kind.BREWER ? BATCH_GREY : 1);
    if (kind == Kind.DISPENSER && right > service) {
      canvas.fill(Outline.box(service, top, right, bottom), SERVICE_GREY);
      canvas.fill(Outline.box(service, bottom - FOOT, right, bottom), FOOT_GREY);
    }
    canvas.line(left, top, right, top, EDGE);
    canvas.line(left, bottom, right, bottom, EDGE);
    if (!box.cut().left()) {
      canvas.line(left, top, left, bottom, EDGE);
    }
    if (!box.cut().right()) {
      canvas.line(right, top, right, bottom, EDGE);
    }
    words(canvas, top, bottom);
  }

  private void words(Canvas canvas, double top, double bottom) {
    double room = right - left - 2 * INSIDE;
    String id = box.id();
    double size = ID_SIZE;
    if (canvas.width(id, id(size)) > room) {
      size = SMALL_ID_SIZE;
    }
    if (canvas.width(id, id(size)) > room) {
      id = id.substring(id.lastIndexOf('-') + 1);
    }
    double width = canvas.width(id, id(size));
    if (width > room) {
      return;
    }
    boolean named =
        box.group().filter(group -> canvas.width(group.text(), GROUP) <= room).isPresent();
    double base = named ? top + 6 : (top + bottom) / 2 + 2.5;
    if (box.decaf()) {
      canvas.fill(Outline.box(left + 1, base - 6, left + INSIDE + width + 1.5, base + 1.5), 0);
    }
    canvas.text(id, left + INSIDE, base, id(size));
    if (named) {
      canvas.text(box.group().orElseThrow().text(), left + INSIDE, bottom - 3.6, GROUP);
    }
  }

  private Letters id(double size) {
    return new Letters(size, true, box.decaf() ? 1 : 0, Anchor.START);
  }
}
