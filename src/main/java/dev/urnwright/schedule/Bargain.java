package dev.urnwright.schedule;

/**
 * What a piece gains when it is alone in the world: the gram-minutes of its ready time, less what
 * it pays at given prices.
 */
record Bargain(RunProblem problem, Prices prices) {
  /**
   * A place for a piece.
   *
   * @param at which of the piece's kinds
   * @param ready minute
   * @param gain in gram-minutes
   */
  record Place(int at, int ready, double gain) {}

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

  /** The best place, the latest of several. */
  Place best(Piece piece) {
    Place best = new Place(0, piece.latestReady(), Double.NEGATIVE_INFINITY);
    for (int ready = piece.latestReady(); ready >= first(piece); ready--) {
      for (int at = 0; at < piece.kinds().length; at++) {
        double gain = gain(piece, at, ready);
        if (gain > best.gain()) {
          best = new Place(at, ready, gain);
        }
      }
    }
    return best;
  }
}
