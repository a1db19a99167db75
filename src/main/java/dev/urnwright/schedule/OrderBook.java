package dev.urnwright.schedule;

import dev.urnwright.schedule.RunProblem.Kind;
import java.util.ArrayList;
import java.util.List;

/**
 * The orders for one coffee in the order in which they are due, cut into runs. Batches of a coffee
 * are poured in the order in which they are ready, so a batch serves neighbouring orders; no batch
 * serves two runs, for what is fresh enough for the later one comes too late for the earlier.
 */
final class OrderBook {
  private final List<Run> runs;

  private OrderBook(List<Run> runs) {
    this.runs = runs;
  }

  /** Sorts and cuts orders. */
  static OrderBook of(List<Order> orders) {
    List<Order> due = orders.stream().sorted(Order.DUE).toList();
    List<Run> runs = new ArrayList<>();
    List<Order> current = new ArrayList<>();
    for (Order order : due) {
      // Orders are due in this sequence, so the last one's due time is the run's latest.
      if (!current.isEmpty()
          && order.earliestReady() > current.get(current.size() - 1).latestReady()) {
        runs.add(new Run(current));
        current = new ArrayList<>();
      }
      current.add(order);
    }
    if (!current.isEmpty()) {
      runs.add(new Run(current));
    }
    return new OrderBook(runs);
  }

  List<Run> runs() {
    return runs;
  }

  /** Neighbouring orders that batches may share. */
  static final class Run {
    private final List<Order> orders;
    private final double[] ends; // grams from the run's start to the end of each order

    Run(List<Order> orders) {
      this.orders = List.copyOf(orders);
      this.ends = new double[orders.size()];
      double sum = 0;
      for (int i = 0; i < ends.length; i++) {
        sum += orders.get(i).grams();
        ends[i] = sum;
      }
    }

    List<Order> orders() {
      return orders;
    }

    double grams() {
      return ends[ends.length - 1];
    }

    /** The minute by which its last batch must be ready. */
    int latestReady() {
      return orders.get(orders.size() - 1).latestReady();
    }

    /** The minute by which the batch that serves from this gram on must be ready. */
    int latestReady(double from) {
      return orders.get(at(from)).latestReady();
    }

    /** The minute before which a batch that serves these grams must not be ready. */
    int earliestReady(double from, double to) {
      int earliest = Integer.MIN_VALUE;
      for (int i = at(from); i < ends.length; i++) {
        earliest = Math.max(earliest, orders.get(i).earliestReady());
        if (ends[i] >= to - 1e-6) {
          break;
        }
      }
      return earliest;
    }

    /** The order that holds the gram just after this one. */
    Order orderAt(double from) {
      return orders.get(at(from));
    }

    /** Where the order that holds the gram just after this one begins. */
    double startOfOrder(double from) {
      int order = at(from);
      return order == 0 ? 0 : ends[order - 1];
    }

    /** Where the order that holds the gram just after this one ends. */
    double endOfOrder(double from) {
      return ends[at(from)];
    }

    /**
     * How many batches for this run the brewers of a kind have time for, if they do nothing else.
     */
    long room(Kind kind, int earliestStart) {
      int latest = orders.get(orders.size() - 1).latestReady();
      int earliest = orders.stream().mapToInt(Order::earliestReady).min().orElseThrow();
      int first = Math.max(earliest, earliestStart + kind.brewMinutes());
      long each =
          latest < first
              ? 0
              : (latest - first) / (kind.brewMinutes() + kind.turnaroundMinutes()) + 1;
      return each * kind.units();
    }

    /**
     * From which gram on a batch can serve up to another one, so that it is neither too late for
     * its first order nor too old for any.
     */
    double freshFrom(double from, double to) {
      double start = from;
      while (earliestReady(start, to) > latestReady(start)) {
        start = ends[at(start)];
      }
      return start;
    }

    /** The fewest batches, of so many grams at most, that are neither too late nor too old. */
    int freshBatches(double largestGrams) {
      int batches = 0;
      double to = grams();
      while (to > 1e-3) {
        to = freshFrom(Math.max(0, to - largestGrams), to);
        batches++;
      }
      return batches;
    }

    /**
     * The gram-minutes that the first grams of the run can't exceed, each ready no later than its
     * own order is due, and nothing ready after a minute.
     */
    double bound(double grams, int last) {
      double sum = 0;
      double from = 0;
      for (Order order : orders) {
        double part = Math.min(order.grams(), grams - from);
        if (part <= 0) {
          break;
        }
        sum += part * Math.min(last, order.latestReady());
        from += order.grams();
      }
      return sum;
    }

    /**
     * Its orders as pieces that take their share of a batch: an order's part of a batch is ready
     * when the batch is, which is in time for the order and fresh enough for it.
     *
     * @param kinds that may brew
     * @param grams that a batch of each of these kinds holds at most
     */
    List<Piece> pieces(int[] kinds, double[] grams) {
      List<Piece> pieces = new ArrayList<>();
      for (Order order : orders) {
        double[] batches = new double[kinds.length];
        for (int i = 0; i < kinds.length; i++) {
          batches[i] = order.grams() / grams[i];
        }
        pieces.add(
            new Piece(order.grams(), kinds, batches, order.earliestReady(), order.latestReady()));
      }
      return pieces;
    }

    /** How many orders its first grams are; of the last of them perhaps a part. */
    double piecesBefore(double grams) {
      double to = Math.min(grams, grams());
      int order = at(to);
      return order + Math.max(0, to - startOfOrder(to)) / orders.get(order).grams();
    }

    /** The order that holds the gram just after this one. */
    private int at(double from) {
      int low = 0;
      int high = ends.length - 1;
      while (low < high) {
        int middle = (low + high) / 2;
        if (ends[middle] > from + 1e-6) {
          high = middle;
        } else {
          low = middle + 1;
        }
      }
      return low;
    }
  }
}
