package dev.urnwright.schedule;

import dev.urnwright.schedule.RunProblem.Kind;
import java.util.Arrays;
import java.util.List;

/**
 * The bound that prices give, rounded off where it has edges: of a choice, the best of its values
 * {@code v} is replaced by {@code w·log Σ exp(v/w)}, which is above it by no more than {@code
 * w·log} of their number. So it has a slope everywhere, and can be gone down fast.
 *
 * <p>Prices are one row of numbers: of each kind's brewers for each minute, then of each kind's
 * power. Yu. Nesterov, "Smooth minimization of non-smooth functions", Mathematical Programming 103
 * (2005); cited from memory.
 */
final class SmoothBound {
  /** What is worse than the best by so many widths doesn't count. */
  private static final double FAR = -30;

  private final List<Kind> kinds;
  private final List<Piece> pieces;
  private final List<CircuitLoads> loads;
  private final int from;
  private final int minutes;
  private final boolean[] limited; // kinds whose power has prices
  private final double[][] unitsUpTo; // [kind][minute]: prices of all minutes before it
  private final double[][] powerUpTo;
  private final double[][] unitsFrom; // [kind][minute]: brewers wanted from it on
  private final double[][] powerFrom;
  private double[] values = new double[64];

  SmoothBound(RunProblem problem, List<Piece> pieces, List<CircuitLoads> loads, int minutes) {
    this.kinds = problem.kinds();
    this.pieces = pieces;
    this.loads = loads;
    this.from = problem.earliestStart();
    this.minutes = minutes;
    this.limited = new boolean[kinds.size()];
    for (CircuitLoads circuit : loads) {
      for (int kind : circuit.kinds()) {
        limited[kind] = true;
      }
    }
    this.unitsUpTo = new double[kinds.size()][minutes + 1];
    this.powerUpTo = new double[kinds.size()][minutes + 1];
    this.unitsFrom = new double[kinds.size()][minutes + 1];
    this.powerFrom = new double[kinds.size()][minutes + 1];
  }

  /** How many prices there are. */
  int size() {
    return 2 * kinds.size() * minutes;
  }

  private int unit(int kind, int minute) {
    return kind * minutes + minute;
  }

  private int power(int kind, int minute) {
    return (kinds.size() + kind) * minutes + minute;
  }

  /**
   * The bound at some prices.
   *
   * @param width over which edges are rounded off, gram-minutes, above 0
   * @param slope takes how the bound changes with each price
   */
  double at(double[] prices, double width, double[] slope) {
    for (int kind = 0; kind < kinds.size(); kind++) {
      for (int m = 0; m < minutes; m++) {
        unitsUpTo[kind][m + 1] = unitsUpTo[kind][m] + prices[unit(kind, m)];
        powerUpTo[kind][m + 1] = powerUpTo[kind][m] + prices[power(kind, m)];
      }
      Arrays.fill(unitsFrom[kind], 0);
      Arrays.fill(powerFrom[kind], 0);
    }
    double bound = 0;
    for (Piece piece : pieces) {
      bound += ofPiece(piece, width);
    }
    for (int kind = 0; kind < kinds.size(); kind++) {
      int units = kinds.get(kind).units();
      double wanted = 0;
      double powered = 0;
      for (int m = 0; m < minutes; m++) {
        wanted += unitsFrom[kind][m];
        powered += powerFrom[kind][m];
        slope[unit(kind, m)] = units - wanted;
        slope[power(kind, m)] = limited[kind] ? -powered : 0;
        bound += units * prices[unit(kind, m)];
      }
    }
    for (CircuitLoads circuit : loads) {
      for (int m = 0; m < minutes; m++) {
        bound += ofCircuit(circuit, m, prices, width, slope);
      }
    }
    return bound;
  }

  private double ofPiece(Piece piece, double width) {
    int count = 0;
    for (int at = 0; at < piece.kinds().length; at++) {
      Kind kind = kinds.get(piece.kinds()[at]);
      for (int ready = first(piece, kind); ready <= piece.latestReady(); ready++) {
        put(count++, piece.grams() * ready - piece.batches()[at] * cost(piece.kinds()[at], ready));
      }
    }
    double best = weigh(count, width);
    int next = 0;
    for (int at = 0; at < piece.kinds().length; at++) {
      int k = piece.kinds()[at];
      Kind kind = kinds.get(k);
      for (int ready = first(piece, kind); ready <= piece.latestReady(); ready++) {
        double wanted = piece.batches()[at] * values[next++];
        if (wanted > 0) {
          int start = ready - kind.brewMinutes() - from;
          unitsFrom[k][start] += wanted;
          unitsFrom[k][until(ready + kind.turnaroundMinutes())] -= wanted;
          powerFrom[k][start] += wanted;
          powerFrom[k][until(ready)] -= wanted;
        }
      }
    }
    return best;
  }

  private int first(Piece piece, Kind kind) {
    return Math.max(piece.earliestReady(), from + kind.brewMinutes());
  }

  private double cost(int k, int ready) {
    int start = ready - kinds.get(k).brewMinutes() - from;
    return unitsUpTo[k][until(ready + kinds.get(k).turnaroundMinutes())]
        - unitsUpTo[k][start]
        + powerUpTo[k][until(ready)]
        - powerUpTo[k][start];
  }

  private int until(int minute) {
    return Math.min(minutes, minute - from);
  }

  private double ofCircuit(
      CircuitLoads circuit, int minute, double[] prices, double width, double[] slope) {
    int[] on = circuit.kinds();
    List<int[]> possible = circuit.loads();
    for (int l = 0; l < possible.size(); l++) {
      double worth = 0;
      for (int i = 0; i < on.length; i++) {
        worth += possible.get(l)[i] * prices[power(on[i], minute)];
      }
      put(l, worth);
    }
    double best = weigh(possible.size(), width);
    for (int l = 0; l < possible.size(); l++) {
      for (int i = 0; i < on.length; i++) {
        slope[power(on[i], minute)] += values[l] * possible.get(l)[i];
      }
    }
    return best;
  }

  private void put(int place, double value) {
    if (place == values.length) {
      values = Arrays.copyOf(values, 2 * place);
    }
    values[place] = value;
  }

  /** The rounded best of the first values, which become their weights in it. */
  private double weigh(int count, double width) {
    double best = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      best = Math.max(best, values[i]);
    }
    double sum = 0;
    for (int i = 0; i < count; i++) {
      double away = (values[i] - best) / width;
      values[i] = away < FAR ? 0 : away == 0 ? 1 : Math.exp(away);
      sum += values[i];
    }
    for (int i = 0; i < count; i++) {
      values[i] /= sum;
    }
    return best + width * Math.log(sum);
  }
}
