package dev.urnwright.schedule;

import dev.urnwright.schedule.RunProblem.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * Tries every brewer and every minute for every batch. It shares no code with the scheduler and
 * works the other way round: forward in time, batch by batch, on a grid of minutes from 0 on.
 */
final class ExhaustiveRun {
  private static final int GROUPS = 2;

  private final RunProblem problem;
  private final List<Service> services;
  private final int[][] busy; // brewers of each kind, at each minute
  private final double[][] load; // watts on each circuit, at each minute
  private final Map<String, Double> seen = new HashMap<>();
  private Best best = new Best(Double.POSITIVE_INFINITY, 0);

  /**
   * The least wait, and of schedules that wait so long the latest start.
   *
   * @param waited gram-minutes
   * @param firstStart minute
   */
  record Best(double waited, int firstStart) {}

  /**
   * Orders that share batches.
   *
   * @param coffee index
   * @param orders in the order in which they are due
   * @param groups of batches
   */
  record Service(int coffee, List<Order> orders, List<Group> groups) {}

  /**
   * Batches that come in a fixed order among themselves.
   *
   * @param doses in steps, the first brewed first
   * @param kinds that may brew them
   */
  record Group(List<Long> doses, List<Integer> kinds) {}

  private ExhaustiveRun(RunProblem problem, List<Service> services) {
    this.problem = problem;
    this.services = services;
    int latest =
        problem.coffees().stream()
            .flatMap(coffee -> coffee.orders().stream())
            .mapToInt(Order::latestReady)
            .max()
            .orElseThrow();
    int horizon =
        latest + problem.kinds().stream().mapToInt(Kind::turnaroundMinutes).max().orElseThrow();
    this.busy = new int[problem.kinds().size()][horizon];
    this.load = new double[problem.circuitWatts().size()][horizon];
  }

  /** The least wait that batches of given sizes can have; empty when they can't be in time. */
  static OptionalDouble leastWait(RunProblem problem, List<Service> services) {
    return best(problem, services).stream().mapToDouble(Best::waited).findAny();
  }

  /** The best that batches of given sizes can do; empty when they can't be in time. */
  static Optional<Best> best(RunProblem problem, List<Service> services) {
    ExhaustiveRun run = new ExhaustiveRun(problem, services);
    run.place(0, new int[GROUPS], 0, Integer.MIN_VALUE, 0);
    return Optional.of(run.best).filter(best -> best.waited() < Double.POSITIVE_INFINITY);
  }

  /** The orders of one coffee, cut where no batch can serve both neighbours. */
  static List<List<Order>> cut(List<Order> orders) {
    List<List<Order>> parts = new ArrayList<>();
    Order before = null;
    for (Order order : RunAudit.inDueOrder(orders)) {
      if (before == null || order.earliestReady() > before.latestReady()) {
        parts.add(new ArrayList<>());
      }
      parts.get(parts.size() - 1).add(order);
      before = order;
    }
    return parts;
  }

  private void place(int index, int[] used, double from, int after, double wait) {
    if (wait > best.waited() + 1e-6) {
      return;
    }
    if (index == services.size()) {
      if (wait < best.waited() - 1e-6 || firstStart() > best.firstStart()) {
        best = new Best(wait, firstStart());
      }
      return;
    }
    String situation = situation(used, index, after);
    if (seen.getOrDefault(situation, Double.POSITIVE_INFINITY) <= wait) {
      return;
    }
    seen.put(situation, wait);
    Service service = services.get(index);
    boolean isDone = true;
    for (int g = 0; g < service.groups().size(); g++) {
      Group group = service.groups().get(g);
      if (used[g] < group.doses().size()) {
        isDone = false;
        double grams =
            group.doses().get(used[g]) * problem.coffees().get(service.coffee()).gramsPerStep();
        used[g]++;
        for (int kind : group.kinds()) {
          placeOn(kind, index, used, from, grams, after, wait);
        }
        used[g]--;
      }
    }
    if (isDone) {
      boolean sameCoffee =
          index + 1 < services.size() && services.get(index + 1).coffee() == service.coffee();
      place(index + 1, new int[GROUPS], 0, sameCoffee ? after : Integer.MIN_VALUE, wait);
    }
  }

  private int firstStart() {
    int minute = 0;
    while (Arrays.stream(busy).allMatch(isFree(minute))) {
      minute++;
    }
    return minute;
  }

  private static Predicate<int[]> isFree(int minute) {
    return brewers -> brewers[minute] == 0;
  }

  private void placeOn(
      int kind, int index, int[] used, double from, double grams, int after, double wait) {
    List<Order> orders = services.get(index).orders();
    int first = Math.max(after, problem.earliestStart() + problem.kinds().get(kind).brewMinutes());
    int last = orders.get(orders.size() - 1).latestReady();
    double start = 0;
    for (Order order : orders) {
      double overlap = Math.min(start + order.grams(), from + grams) - Math.max(start, from);
      if (overlap > 1e-6) {
        first = Math.max(first, order.earliestReady());
        last = Math.min(last, order.latestReady());
      }
      start += order.grams();
    }
    for (int ready = last; ready >= first; ready--) {
      if (take(kind, ready)) {
        place(index, used, from + grams, ready, wait + wait(orders, from, grams, ready));
        put(kind, ready, -1);
      }
    }
  }

  private static double wait(List<Order> orders, double from, double grams, int ready) {
    double wait = 0;
    double start = 0;
    for (Order order : orders) {
      double overlap = Math.min(start + order.grams(), from + grams) - Math.max(start, from);
      wait += Math.max(0, overlap) * (order.latestReady() - ready);
      start += order.grams();
    }
    return wait;
  }

  /** All that matters for what can still come, each number a letter of the key. */
  private String situation(int[] numbers, int index, int after) {
    StringBuilder situation = new StringBuilder();
    situation.append((char) index).append((char) after);
    Arrays.stream(numbers).forEach(number -> situation.append((char) number));
    for (int[] kind : busy) {
      Arrays.stream(kind).forEach(brewers -> situation.append((char) brewers));
    }
    for (double[] circuit : load) {
      Arrays.stream(circuit).forEach(watts -> situation.append((char) watts));
    }
    return situation.toString();
  }

  /** Puts a batch on the grid unless a brewer or watts are missing. */
  private boolean take(int kind, int ready) {
    Kind brewer = problem.kinds().get(kind);
    put(kind, ready, 1);
    for (int m = ready - brewer.brewMinutes(); m < ready + brewer.turnaroundMinutes(); m++) {
      boolean overloaded =
          brewer.circuit() >= 0
              && load[brewer.circuit()][m] > problem.circuitWatts().get(brewer.circuit()) + 1e-6;
      if (busy[kind][m] > brewer.units() || (m < ready && overloaded)) {
        put(kind, ready, -1);
        return false;
      }
    }
    return true;
  }

  private void put(int kind, int ready, int sign) {
    Kind brewer = problem.kinds().get(kind);
    for (int m = ready - brewer.brewMinutes(); m < ready + brewer.turnaroundMinutes(); m++) {
      busy[kind][m] += sign;
      if (brewer.circuit() >= 0 && m < ready) {
        load[brewer.circuit()][m] += sign * brewer.watts();
      }
    }
  }

  /**
   * The fewest batches of any sizes that serve all orders, tried up to a number; empty when even so
   * many don't.
   */
  static OptionalDouble fewest(RunProblem problem, int most) {
    for (int batches = 1; batches <= most; batches++) {
      if (new ExhaustiveRun(problem, List.of()).serves(0, 0, Integer.MIN_VALUE, batches)) {
        return OptionalDouble.of(batches);
      }
    }
    return OptionalDouble.empty();
  }

  /** Whether so many batches serve the orders of a coffee from a gram on, and all next coffees. */
  private boolean serves(int coffee, double from, int after, int batches) {
    if (coffee == problem.coffees().size()) {
      return true;
    }
    RunProblem.CoffeeOrders orders = problem.coffees().get(coffee);
    double total = orders.orders().stream().mapToDouble(Order::grams).sum();
    if (from >= total - 1e-6) {
      return serves(coffee + 1, 0, Integer.MIN_VALUE, batches);
    }
    long greatest = orders.doses().stream().mapToLong(DoseRange::greatest).max().orElseThrow();
    if (batches * greatest * orders.gramsPerStep() < total - from - 1e-6) {
      return false;
    }
    int[] here = {coffee, (int) Math.round(from), batches};
    if (seen.put(situation(here, 0, after), 0.0) != null) {
      return false;
    }
    List<Order> due = RunAudit.inDueOrder(orders.orders());
    for (int kind = 0; kind < problem.kinds().size(); kind++) {
      DoseRange range = orders.doses().get(kind);
      for (long dose = range.greatest(); dose >= Math.max(1, range.least()); dose--) {
        // More than the service needs is poured away: the next service starts at its first order.
        double start = 0;
        int first =
            Math.max(after, problem.earliestStart() + problem.kinds().get(kind).brewMinutes());
        int last = Integer.MAX_VALUE;
        double to = from;
        double until = from + dose * orders.gramsPerStep();
        int firstFresh = first;
        for (Order order : due) {
          double end = start + order.grams();
          if (end > to + 1e-6 && until > to + 1e-6) {
            int newLast = Math.min(last, order.latestReady());
            int newFirst = Math.max(firstFresh, order.earliestReady());
            if (newFirst > newLast) {
              break;
            }
            last = newLast;
            firstFresh = newFirst;
            to = Math.min(end, until);
          }
          start = end;
        }
        if (to > from + 1e-6 && servesWith(kind, coffee, to, firstFresh, last, batches)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean servesWith(int kind, int coffee, double to, int first, int last, int batches) {
    for (int ready = last; ready >= first; ready--) {
      if (take(kind, ready)) {
        boolean serves = serves(coffee, to, ready, batches - 1);
        put(kind, ready, -1);
        if (serves) {
          return true;
        }
      }
    }
    return false;
  }
}
