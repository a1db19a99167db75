package dev.urnwright.schedule;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A leg whose batches are decided one by one: so much for these orders, so much for those. Its one
 * number counts the batches placed.
 */
final class FixedLeg implements Leg {
  private final int coffee;
  private final OrderBook.Run run;
  private final List<Choice> lastFirst;

  /**
   * A leg.
   *
   * @param grams that each batch serves, in order of time; together the run's
   * @param ranges one for each kind of brewer
   */
  FixedLeg(
      int coffee,
      OrderBook.Run run,
      List<Double> grams,
      List<DoseRange> ranges,
      double gramsPerStep) {
    this.coffee = coffee;
    this.run = run;
    Choice[] choices = new Choice[grams.size()];
    double from = 0;
    for (int batch = 0; batch < choices.length; batch++) {
      double to = Math.min(run.grams(), from + grams.get(batch));
      choices[choices.length - 1 - batch] = choice(from, to, ranges, gramsPerStep);
      from = to;
    }
    this.lastFirst = List.of(choices);
  }

  private Choice choice(double from, double to, List<DoseRange> ranges, double gramsPerStep) {
    long least = (long) Math.ceil((to - from) / gramsPerStep - 1e-9);
    int[] kinds =
        IntStream.range(0, ranges.size())
            .filter(k -> ranges.get(k).usable() && ranges.get(k).greatest() >= least)
            .toArray();
    long smallest = IntStream.of(kinds).mapToLong(k -> ranges.get(k).least()).min().orElse(least);
    long dose = Math.max(least, smallest); // a least dose may force more than is served
    int[] taking = IntStream.of(kinds).filter(k -> ranges.get(k).takes(dose)).toArray();
    return new Choice(
        taking, dose, 0, 1, to - from, run.earliestReady(from, to), run.latestReady(from));
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
    return progress[offset] == lastFirst.size();
  }

  @Override
  public List<Choice> choices(long[] progress, int offset) {
    return List.of(lastFirst.get((int) progress[offset]));
  }

  @Override
  public double bound(long[] progress, int offset, int last) {
    double sum = 0;
    for (int i = (int) progress[offset]; i < lastFirst.size(); i++) {
      sum += lastFirst.get(i).grams() * Math.min(last, lastFirst.get(i).latestReady());
    }
    return sum;
  }

  @Override
  public List<Piece> pieces() {
    return IntStream.range(0, lastFirst.size())
        .mapToObj(i -> Piece.of(lastFirst.get(lastFirst.size() - 1 - i)))
        .toList();
  }

  @Override
  public double piecesLeft(long[] progress, int offset) {
    return lastFirst.size() - progress[offset];
  }

  @Override
  public int due(long[] progress, int offset) {
    return lastFirst.get((int) progress[offset]).latestReady();
  }
}
