package dev.urnwright.schedule;

import java.util.ArrayList;
import java.util.List;

/**
 * A leg whose batches are as large as their brewers take, or as their orders stay fresh: what the
 * fewest batches look like. Its one number counts the steps of dose placed.
 */
final class FullLeg implements Leg {
  private final int coffee;
  private final OrderBook.Run run;
  private final List<DoseRange> ranges;
  private final double gramsPerStep;

  FullLeg(int coffee, OrderBook.Run run, List<DoseRange> ranges, double gramsPerStep) {
    this.coffee = coffee;
    this.run = run;
    this.ranges = ranges;
    this.gramsPerStep = gramsPerStep;
  }

  @Override
  public int coffee() {
    return coffee;
  }

  @Override
  public int numbers() {
    return 1;
  }

  @Override
  public boolean isDone(int[] progress, int offset) {
    return left(progress, offset) <= 1e-6;
  }

  @Override
  public List<Choice> choices(int[] progress, int offset) {
    List<Choice> choices = new ArrayList<>();
    double to = left(progress, offset);
    for (int kind = 0; kind < ranges.size(); kind++) {
      DoseRange range = ranges.get(kind);
      if (range.usable()) {
        double from = run.freshFrom(Math.max(0, to - range.greatest() * gramsPerStep), to);
        long steps = Math.max(range.least(), (long) Math.ceil((to - from) / gramsPerStep - 1e-9));
        if (steps <= range.greatest()) {
          choices.add(
              new Choice(
                  new int[] {kind},
                  steps,
                  0,
                  Math.toIntExact(steps),
                  to - from,
                  run.earliestReady(from, to),
                  run.latestReady(from)));
        }
      }
    }
    return choices;
  }

  @Override
  public double bound(int[] progress, int offset, int last) {
    return run.bound(left(progress, offset), last);
  }

  @Override
  public int due(int[] progress, int offset) {
    return run.latestReady(left(progress, offset) - 1e-6);
  }

  private double left(int[] progress, int offset) {
    return Math.max(0, run.grams() - progress[offset] * gramsPerStep);
  }
}
