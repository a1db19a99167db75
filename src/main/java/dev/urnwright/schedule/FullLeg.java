package dev.urnwright.schedule;

import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A leg whose batches are as large as their brewers take, or as their orders stay fresh: what the
 * fewest batches look like. Its one number counts the micrograms served.
 *
 * <p>Full batches may come out too late although smaller ones would not: where that is so, a batch
 * may also stop short of the order that it would serve in part, or an order is let go.
 */
final class FullLeg implements Leg {
  private static final double MICROGRAMS = 1e6;

  /** Less than this is rounding, not an order. */
  private static final double DROP = 1e-4;

  /** What it may do where full batches come out too late. */
  enum Leeway {
    /** Nothing. */
    NONE,
    /** A batch may stop short of an order. */
    STOP_SHORT,
    /** And an order that can't be served even so is let go. */
    LET_GO,
    /** And so is one that could be served, so that others are. */
    LET_GO_FREELY
  }

  private final int coffee;
  private final OrderBook.Run run;
  private final List<DoseRange> ranges;
  private final double gramsPerStep;
  private final Leeway leeway;

  private FullLeg(
      int coffee, OrderBook.Run run, List<DoseRange> ranges, double gramsPerStep, Leeway leeway) {
    this.coffee = coffee;
    this.run = run;
    this.ranges = ranges;
    this.gramsPerStep = gramsPerStep;
    this.leeway = leeway;
  }

  static FullLeg of(int coffee, OrderBook.Run run, CoffeeOrders orders, Leeway leeway) {
    return new FullLeg(coffee, run, orders.doses(), orders.gramsPerStep(), leeway);
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
  public boolean isDone(long[] progress, int offset) {
    return left(progress, offset) <= DROP;
  }

  @Override
  public List<Choice> choices(long[] progress, int offset) {
    List<Choice> choices = new ArrayList<>();
    double to = left(progress, offset);
    for (int kind = 0; kind < ranges.size(); kind++) {
      DoseRange range = ranges.get(kind);
      if (range.usable()) {
        double from = run.freshFrom(Math.max(0, to - range.greatest() * gramsPerStep), to);
        offer(kind, from, to, choices);
        // An order left to the batch before may be what this one would have to be early for.
        double next = run.endOfOrder(from);
        if (leeway != Leeway.NONE
            && next < to - DROP
            && run.latestReady(next) > run.latestReady(from)) {
          offer(kind, next, to, choices);
        }
      }
    }
    return choices;
  }

  private void offer(int kind, double from, double to, List<Choice> choices) {
    DoseRange range = ranges.get(kind);
    long steps = Math.max(range.least(), (long) Math.ceil((to - from) / gramsPerStep - 1e-9));
    choices.add(
        new Choice(
            new int[] {kind},
            steps,
            0,
            micrograms(from, to),
            to - from,
            run.earliestReady(from, to),
            run.latestReady(from)));
  }

  @Override
  public boolean letsGo() {
    return leeway == Leeway.LET_GO || letsGoFreely();
  }

  @Override
  public boolean letsGoFreely() {
    return leeway == Leeway.LET_GO_FREELY;
  }

  @Override
  public Optional<Released> release(long[] progress, int offset) {
    if (!letsGo()) {
      return Optional.empty();
    }
    double to = left(progress, offset);
    double last = Math.max(0, to - DROP);
    return Optional.of(new Released(run.orderAt(last), micrograms(run.startOfOrder(last), to)));
  }

  @Override
  public double bound(long[] progress, int offset, int last) {
    return run.bound(left(progress, offset), last);
  }

  @Override
  public List<Piece> pieces() {
    int[] kinds = IntStream.range(0, ranges.size()).filter(k -> ranges.get(k).usable()).toArray();
    return run.pieces(
        kinds,
        IntStream.of(kinds).mapToDouble(k -> ranges.get(k).greatest() * gramsPerStep).toArray());
  }

  @Override
  public double piecesLeft(long[] progress, int offset) {
    return run.piecesBefore(left(progress, offset));
  }

  @Override
  public int due(long[] progress, int offset) {
    return run.latestReady(Math.max(0, left(progress, offset) - DROP));
  }

  /** Rounded so that no drop is left between two batches: rather one is served twice. */
  private static long micrograms(double from, double to) {
    double exact = (to - from) * MICROGRAMS;
    return (long) (from > 0 ? Math.floor(exact) : Math.ceil(exact));
  }

  private double left(long[] progress, int offset) {
    return Math.max(0, run.grams() - progress[offset] / MICROGRAMS);
  }
}
