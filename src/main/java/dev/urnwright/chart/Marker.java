package dev.urnwright.chart;

import dev.urnwright.chart.Canvas.Pen;
import java.util.ArrayList;
import java.util.List;

/**
 * What marks the points of one coffee: told apart by shape, filled or hollow. Hollow ones are
 * larger, so that two coffees at the same place both show.
 */
enum Marker {
  /** Filled circle. */
  DISC(24, 0, true),
  /** Hollow square. */
  SQUARE(4, 45, false),
  /** Filled triangle. */
  TRIANGLE(3, 0, true),
  /** Hollow diamond. */
  DIAMOND(4, 0, false),
  /** Filled square. */
  BLOCK(4, 45, true),
  /** Hollow circle. */
  RING(24, 0, false),
  /** Filled triangle on its tip. */
  WEDGE(3, 180, true),
  /** Hollow triangle. */
  TENT(3, 0, false),
  /** Filled diamond. */
  GEM(4, 0, true),
  /** Hollow pentagon. */
  PENTAGON(5, 0, false),
  /** Filled hexagon. */
  HEXAGON(6, 0, true),
  /** Hollow triangle on its tip. */
  FUNNEL(3, 180, false);

  private static final double FILLED_RADIUS = 3.6;
  private static final double HOLLOW_RADIUS = 5.4;

  private final int corners;
  private final double turnedDegrees;
  private final boolean filled;

  Marker(int corners, double turnedDegrees, boolean filled) {
    this.corners = corners;
    this.turnedDegrees = turnedDegrees;
    this.filled = filled;
  }

  /** The marker of a coffee; they repeat after twelve. */
  static Marker of(int number) {
    return values()[number % values().length];
  }

  void draw(Canvas canvas, double x, double y) {
    if (filled) {
      canvas.fill(at(x, y, FILLED_RADIUS), 0.1);
    } else {
      canvas.draw(at(x, y, HOLLOW_RADIUS), Pen.of(0.1, 1.3));
    }
  }

  private Outline at(double x, double y, double radius) {
    List<Outline.Corner> outline = new ArrayList<>();
    for (int corner = 0; corner < corners; corner++) {
      double angle = Math.toRadians(turnedDegrees + 360.0 * corner / corners);
      outline.add(new Outline.Corner(x + radius * Math.sin(angle), y - radius * Math.cos(angle)));
    }
    return new Outline(outline);
  }
}
