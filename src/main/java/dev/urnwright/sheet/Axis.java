package dev.urnwright.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * One axis of a chart, in percent.
 *
 * @param least where it begins
 * @param greatest where it ends
 * @param tick from one mark to the next
 */
public record Axis(double least, double greatest, double tick) {
  private static final double SLACK = 1e-9;
  private static final int MOST_TICKS = 16;

  /** Refuses an axis of no length. */
  public Axis {
    if (!(least < greatest) || !(tick > 0)) {
      throw new IllegalArgumentException(
          "an axis goes from the lesser to the greater: " + least + " to " + greatest);
    }
  }

  /** This axis, lengthened by whole ticks until the value lies on it. */
  Axis reaching(double value) {
    return new Axis(
        Math.min(least, Math.max(0, Math.floor(value / tick + SLACK) * tick)),
        Math.max(greatest, Math.ceil(value / tick - SLACK) * tick),
        tick);
  }

  /** This axis with fewer marks, should there be too many to read. */
  Axis readable() {
    double wider = tick;
    for (double factor : new double[] {1, 2, 5, 10, 20, 50, 100}) {
      wider = tick * factor;
      if ((greatest - least) / wider <= MOST_TICKS) {
        break;
      }
    }
    return new Axis(
        Math.floor(least / wider + SLACK) * wider,
        Math.ceil(greatest / wider - SLACK) * wider,
        wider);
  }

  /** The marks, from the least on. */
  public List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    for (int at = 0; least + at * tick <= greatest + SLACK; at++) {
      ticks.add(least + at * tick);
    }
    return ticks;
  }

  /** Where a value lies: 0 at the least, 1 at the greatest. */
  public double share(double value) {
    return (value - least) / (greatest - least);
  }
}
