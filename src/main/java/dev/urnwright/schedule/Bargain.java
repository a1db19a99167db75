package dev.urnwright.schedule;

/**
 * What a piece gains when it is alone in the world: the gram-minutes of its ready time, less what
 * it pays at given prices.
 */
record Bargain(RunProblem problem, Prices prices) {
  /** The first minute at which a piece may be ready. */
  int first(Piece piece) {
    int brewed = Integer.MAX_VALUE;
    for (int kind : piece.kinds()) {
      brewed = Math.min(brewed, earliest(kind));
    }
    return Math.max(piece.earliestReady(), brewed);
  }

  private int earliest(int kind) {
    return problem.earliestStart() + problem.kinds().get(kind).brewMinutes();
  }

  /** The gain at a minute; minus infinity on a kind that can't be ready by then. */
  double gain(Piece piece, int at, int ready) {
    int kind = piece.kinds()[at];
    return ready < earliest(kind)
        ? Double.NEGATIVE_INFINITY
        : piece.grams() * ready - piece.batches()[at] * prices.ofBatch(kind, ready);
  }
}
