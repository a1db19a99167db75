package dev.urnwright.schedule;

import dev.urnwright.schedule.RunProblem.Kind;
import java.util.Arrays;
import java.util.List;

/** What the pieces of a leg are worth at given prices when each is ready at its own best minute. */
final class PricedPieces {
  private final RunProblem problem;
  private final Prices prices;
  private final List<Piece> pieces;
  private final double[][] best; // [piece][minute]: ready by then, from its earliest minute on
  private final double[] before; // of all pieces before one, ready at the best minute of all

  /**
   * A place for a piece.
   *
   * @param at which of the piece's kinds
   * @param ready minute
   * @param worth gram-minutes, less what it pays
   */
  record Place(int at, int ready, double worth) {}

  PricedPieces(RunProblem problem, List<Piece> pieces, Prices prices) {
    this.problem = problem;
    this.prices = prices;
    this.pieces = pieces;
    this.best = new double[pieces.size()][];
    this.before = new double[pieces.size() + 1];
    for (int i = 0; i < pieces.size(); i++) {
      best[i] = byMinute(pieces.get(i));
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
    int minute = Math.min(last, piece.latestReady()) - first(piece);
    return minute < 0 ? Double.NEGATIVE_INFINITY : best[i][minute];
  }

  private int first(Piece piece) {
    return Math.min(piece.latestReady(), Math.max(piece.earliestReady(), prices.from()));
  }

  private double[] byMinute(Piece piece) {
    int first = first(piece);
    double[] worth = new double[piece.latestReady() - first + 1];
    Arrays.fill(worth, Double.NEGATIVE_INFINITY);
    for (int i = 0; i < worth.length; i++) {
      worth[i] = i > 0 ? worth[i - 1] : worth[i];
      for (int at = 0; at < piece.kinds().length; at++) {
        worth[i] = Math.max(worth[i], worth(piece, at, first + i));
      }
    }
    return worth;
  }

  private double worth(Piece piece, int at, int ready) {
    Kind kind = problem.kinds().get(piece.kinds()[at]);
    return ready < problem.earliestStart() + kind.brewMinutes() || ready < piece.earliestReady()
        ? Double.NEGATIVE_INFINITY
        : piece.grams() * ready - piece.batches()[at] * prices.ofBatch(piece.kinds()[at], ready);
  }

  /** The place that is best for one piece alone; the latest of several. */
  Place place(int i) {
    Piece piece = pieces.get(i);
    Place best = new Place(0, piece.latestReady(), Double.NEGATIVE_INFINITY);
    for (int ready = piece.latestReady(); ready >= first(piece); ready--) {
      for (int at = 0; at < piece.kinds().length; at++) {
        double worth = worth(piece, at, ready);
        if (worth > best.worth()) {
          best = new Place(at, ready, worth);
        }
      }
    }
    return best;
  }
}
