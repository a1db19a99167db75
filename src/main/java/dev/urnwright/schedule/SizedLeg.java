package dev.urnwright.schedule;

import dev.urnwright.schedule.Sizing.SizeClass;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * A leg whose number of batches and doses are decided. Its numbers count the batches placed of each
 * size class.
 */
final class SizedLeg implements Leg {
  /** Less than this is rounding, not an order. */
  private static final double DROP = 1e-4;

  private final int coffee;
  private final OrderBook.Run run;
  private final List<SizeClass> classes;
  private final double gramsPerStep;
  private final List<Choice> equal; // the choices of a single class, the last batch first
  private final double[] measures; // of the grams of each of these and all after it; 0 if none

  SizedLeg(int coffee, OrderBook.Run run, Sizing sizing, double gramsPerStep) {
    this.coffee = coffee;
    this.run = run;
    this.classes = sizing.classes();
    this.gramsPerStep = gramsPerStep;
    this.equal =
        classes.size() == 1
            ? IntStream.range(0, classes.get(0).count())
                .mapToObj(placed -> choice(new long[] {placed}, 0, 0))
                .toList()
            : List.of();
    this.measures = new double[equal.size() + 1];
    long dose = 0; // greatest common measure
    for (int i = equal.size() - 1; i >= 0; i--) {
      Choice choice = equal.get(i);
      dose = greatestMeasure(dose, choice.doseSteps());
      boolean whole = Math.abs(choice.grams() - choice.doseSteps() * gramsPerStep) < 1e-9;
      if (!whole) {
        break; // the last batch may be drawn in part
      }
      measures[i] = dose * gramsPerStep;
    }
  }

  private static long greatestMeasure(long a, long b) {
    return b == 0 ? a : greatestMeasure(b, a % b);
  }

  @Override
  public int coffee() {
    return coffee;
  }

  @Override
  public int numbers() {
    return classes.size();
  }

  @Override
  public boolean isDone(long[] progress, int offset) {
    for (int c = 0; c < classes.size(); c++) {
      if (progress[offset + c] < classes.get(c).count()) {
        return false;
      }
    }
    return true;
  }

  @Override
  public List<Choice> choices(long[] progress, int offset) {
    if (!equal.isEmpty()) {
      return List.of(equal.get((int) progress[offset]));
    }
    List<Choice> choices = new ArrayList<>();
    for (int c = 0; c < classes.size(); c++) {
      if (progress[offset + c] < classes.get(c).count()) {
        choices.add(choice(progress, offset, c));
      }
    }
    return choices;
  }

  @Override
  public double bound(long[] progress, int offset, int last) {
    double sum = 0;
    if (equal.isEmpty()) {
      return run.bound(left(progress, offset, -1), last);
    }
    for (int i = (int) progress[offset]; i < equal.size(); i++) {
      sum += equal.get(i).grams() * Math.min(last, equal.get(i).latestReady());
    }
    return sum;
  }

  @Override
  public List<Piece> pieces() {
    if (!equal.isEmpty()) {
      return IntStream.range(0, equal.size())
          .mapToObj(i -> Piece.of(equal.get(equal.size() - 1 - i)))
          .toList();
    }
    int[] kinds = classes.stream().flatMapToInt(c -> IntStream.of(c.kinds())).toArray();
    double[] grams =
        classes.stream()
            .flatMapToDouble(
                c ->
                    IntStream.of(c.kinds())
                        .mapToDouble(
                            kind -> LongStream.of(c.doses()).max().orElseThrow() * gramsPerStep))
            .toArray();
    return run.pieces(kinds, grams);
  }

  @Override
  public double piecesLeft(long[] progress, int offset) {
    return equal.isEmpty()
        ? run.piecesBefore(left(progress, offset, -1))
        : equal.size() - progress[offset];
  }

  @Override
  public double measure(long[] progress, int offset) {
    return equal.isEmpty() ? 0 : measures[(int) progress[offset]];
  }

  @Override
  public int due(long[] progress, int offset) {
    return run.latestReady(Math.min(run.grams(), left(progress, offset, -1)) - DROP);
  }

  /** The batch of one class that comes, in time, before all those already placed. */
  private Choice choice(long[] progress, int offset, int cls) {
    SizeClass sizes = classes.get(cls);
    long dose = sizes.dose((int) progress[offset + cls]);
    double from = left(progress, offset, cls);
    double to = Math.min(run.grams(), from + dose * gramsPerStep);
    boolean unneeded = from >= run.grams() - 1e-6; // forced by a least dose; nobody waits for it
    return new Choice(
        sizes.kinds(),
        dose,
        cls,
        1,
        unneeded ? 0 : to - from,
        unneeded ? Integer.MIN_VALUE : run.earliestReady(from, to),
        run.latestReady(from));
  }

  /** Beverage of all batches not placed, without the next of one class. */
  private double left(long[] progress, int offset, int without) {
    double left = 0;
    for (int c = 0; c < classes.size(); c++) {
      for (int i = (int) progress[offset + c] + (c == without ? 1 : 0);
          i < classes.get(c).count();
          i++) {
        left += classes.get(c).dose(i) * gramsPerStep;
      }
    }
    return left;
  }
}
