package dev.urnwright.chart;

/** Moves labels that stand in a column apart, as little as possible, until none hides another. */
final class LabelColumn {
  private LabelColumn() {}

  /**
   * Places for labels, in the same order, with at least a gap from each to the next.
   *
   * <p>Subtracting the gaps turns the task into finding the nearest rising sequence (isotonic
   * regression), which pooling neighbours that are out of order solves exactly, in the sense of
   * least squares.
   *
   * @param wanted where each would best stand, in rising order
   * @param gap from one to the next; what fits, should that be less
   * @param least where the column begins
   * @param greatest where it ends
   */
  static double[] spread(double[] wanted, double gap, double least, double greatest) {
    int count = wanted.length;
    double step = count < 2 ? gap : Math.min(gap, (greatest - least) / (count - 1));
    double[] poolMean = new double[count];
    int[] poolSize = new int[count];
    int pools = 0;
    for (int at = 0; at < count; at++) {
      poolMean[pools] = wanted[at] - at * step;
      poolSize[pools] = 1;
      pools++;
      while (pools > 1 && poolMean[pools - 2] > poolMean[pools - 1]) {
        int size = poolSize[pools - 2] + poolSize[pools - 1];
        poolMean[pools - 2] =
            (poolMean[pools - 2] * poolSize[pools - 2] + poolMean[pools - 1] * poolSize[pools - 1])
                / size;
        poolSize[pools - 2] = size;
        pools--;
      }
    }
    double[] places = new double[count];
    double last = greatest - Math.max(0, count - 1) * step;
    int at = 0;
    for (int pool = 0; pool < pools; pool++) {
      for (int member = 0; member < poolSize[pool]; member++, at++) {
        places[at] = Math.max(least, Math.min(poolMean[pool], last)) + at * step;
      }
    }
    return places;
  }
}
