package dev.urnwright.schedule;

import java.util.Arrays;
import java.util.List;

/** What the pieces of a leg are worth at given prices when each is ready at its own best minute. */
final class PricedPieces {
  private final Bargain bargain;
  private final List<Piece> pieces;
  private final int[] first; // minute at which each can be ready
  private final double[][] best; // [piece][minute]: ready by then, from its earliest minute on
  private final double[] before; // of all pieces before one, ready at the best minute of all

  PricedPieces(List<Piece> pieces, Bargain bargain) {
    this.bargain = bargain;
    this.pieces = pieces;
    this.first = new int[pieces.size()];
    this.best = new double[pieces.size()][];
    this.before = new double[pieces.size() + 1];
    for (int i = 0; i < pieces.size(); i++) {
      first[i] = bargain.first(pieces.get(i));
      best[i] = byMinute(pieces.get(i), first[i]);
      before[i + 1] = before[i] + best[i][best[i].length - 1];
    }
  }

  int count() {
    return pieces.size();
  }

  /**
   * The most that the first pieces add, none of them ready after a minute.
   *
   * @param count of pieces; of the last perhaps a part
   */
  double best(double count, int last) {
    int whole = (int) count;
    double part = count - whole;
    double sum = part > 0 ? part * ready(whole, last) : 0;
    int i = whole - 1;
    while (i >= 0 && pieces.get(i).latestReady() > last) {
      sum += ready(i, last);
      i--;
    }
    return sum + before[i + 1];
  }

  private double ready(int i, int last) {
    Piece piece = pieces.get(i);
    int minute = Math.min(last, piece.latestReady()) - first[i];
    return minute < 0 ? Double.NEGATIVE_INFINITY : best[i][minute];
  }

  private double[] byMinute(Piece piece, int first) {
    double[] worth = new double[Math.max(1, piece.latestReady() - first + 1)];
    Arrays.fill(worth, Double.NEGATIVE_INFINITY);
    for (int i = 0; first + i <= piece.latestReady(); i++) {
      worth[i] = i > 0 ? worth[i - 1] : worth[i];
      for (int at = 0; at < piece.kinds().length; at++) {
        worth[i] = Math.max(worth[i], bargain.gain(piece, at, first + i));
      }
    }
    return worth;
  }
}
