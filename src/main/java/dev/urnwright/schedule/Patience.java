package dev.urnwright.schedule;

/**
 * How much is searched for a good schedule before what was found has to do.
 *
 * @param wide states that a search keeps in a layer at the most; while fewer are open the optimum
 *     is proven
 * @param narrow states kept at a first look
 * @param quick states kept while prices are sought
 * @param firstRounds rounds in which prices are sought first
 * @param mostRounds rounds where that proves too little
 * @param budget states looked at in all before searches become narrow
 */
record Patience(int wide, int narrow, int quick, int firstRounds, int mostRounds, long budget) {
  /** A few seconds' worth. */
  static final Patience USUAL = new Patience(2_000, 24, 100, 1_000, 2_000, 500_000);

  /** A long run is searched less widely: so many states, over the square of its batches. */
  private static final int EFFORT = 28_800_000;

  /** So many rounds, over a long run's batches. */
  private static final int ROUND_EFFORT = 240_000;

  Patience withWide(int states) {
    return new Patience(states, narrow, quick, firstRounds, mostRounds, budget);
  }

  /** How many states a search of so many batches keeps, when so many have been looked at. */
  int width(int batches, long spent) {
    long affordable = (budget - spent) / batches;
    return (int)
        Math.max(narrow, Math.min(affordable, Math.min(wide, EFFORT / (batches * batches))));
  }

  /** In how many rounds prices for so many pieces are sought at the most. */
  int rounds(int pieces) {
    return Math.min(mostRounds, ROUND_EFFORT / pieces);
  }

  boolean isSpent(long states) {
    return states >= budget;
  }
}
