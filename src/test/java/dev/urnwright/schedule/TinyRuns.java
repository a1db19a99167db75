package dev.urnwright.schedule;

import dev.urnwright.schedule.BackwardSearch.Found;
import dev.urnwright.schedule.ExhaustiveRun.Group;
import dev.urnwright.schedule.ExhaustiveRun.Service;
import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunProblem.Kind;
import dev.urnwright.schedule.RunSolution.Proof;
import dev.urnwright.schedule.Sizing.SizeClass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Made-up problems of one to four batches within half an hour, so small that trying everything
 * takes a millisecond: one to three coffees, some with a break between two runs, equal and mixed
 * sizes, short holds, up to three kinds of brewers on up to two weak circuits.
 */
final class TinyRuns {
  static final int STEP = 10; // grams of beverage for each step of dose
  private static final int LATEST = 22;

  private TinyRuns() {}

  /**
   * One run of orders with the sizes of its batches.
   *
   * @param orders in the order in which they are due
   */
  record Part(int coffee, List<Order> orders, Sizing sizing) {
    OrderBook.Run run() {
      return new OrderBook.Run(orders);
    }
  }

  /**
   * A problem with the sizes of all batches.
   *
   * @param parts of each coffee in order of time
   */
  record Tiny(RunProblem problem, List<Part> parts) {
    List<Leg> legs() {
      List<Leg> legs = new ArrayList<>();
      parts.forEach(p -> legs.add(new SizedLeg(p.coffee(), p.run(), p.sizing(), STEP)));
      return legs;
    }

    /** The same so many minutes earlier. */
    Tiny earlier(int minutes) {
      List<Part> moved =
          parts.stream()
              .map(
                  part ->
                      new Part(
                          part.coffee(),
                          part.orders().stream().map(order -> earlier(order, minutes)).toList(),
                          part.sizing()))
              .toList();
      List<CoffeeOrders> coffees =
          problem.coffees().stream()
              .map(
                  coffee ->
                      new CoffeeOrders(
                          coffee.orders().stream().map(order -> earlier(order, minutes)).toList(),
                          coffee.gramsPerStep(),
                          coffee.doses()))
              .toList();
      return new Tiny(
          new RunProblem(
              coffees, problem.kinds(), problem.circuitWatts(), problem.earliestStart() - minutes),
          moved);
    }

    private static Order earlier(Order order, int minutes) {
      return new Order(
          order.id(),
          order.grams(),
          order.earliestReady() - minutes,
          order.latestReady() - minutes);
    }

    /** Its batches one by one, each for the kinds that its size is for. */
    List<Leg> fixedLegs() {
      List<Leg> legs = new ArrayList<>();
      for (Part part : parts) {
        SizeClass only = part.sizing().classes().get(0);
        List<DoseRange> ranges = new ArrayList<>();
        for (int kind = 0; kind < problem.kinds().size(); kind++) {
          int which = kind;
          boolean may = IntStream.of(only.kinds()).anyMatch(k -> k == which);
          ranges.add(may ? RunInstances.range(1, 20) : RunInstances.range(1, 1));
        }
        List<Double> grams = new ArrayList<>();
        for (int batch = only.count() - 1; batch >= 0; batch--) {
          grams.add((double) only.dose(batch) * STEP);
        }
        legs.add(new FixedLeg(part.coffee(), part.run(), grams, ranges, STEP));
      }
      return legs;
    }

    boolean isOfSingleClasses() {
      return parts.stream().allMatch(part -> part.sizing().classes().size() == 1);
    }

    List<Service> services() {
      return parts.stream()
          .map(
              part ->
                  new Service(
                      part.coffee(),
                      part.orders(),
                      part.sizing().classes().stream().map(TinyRuns::group).toList()))
          .toList();
    }

    /** The gram-minutes of a schedule without waiting. */
    double latest() {
      return RunInstances.latest(problem);
    }

    /** What a search found, as the audit wants it. */
    List<String> faults(Found found, double bound) {
      double waited = latest() - found.value();
      Proof proof = new Proof(false, false, latest() - bound);
      return RunAudit.faults(problem, new RunSolution(found.batches(), waited, proof));
    }
  }

  static Group group(SizeClass sizes) {
    List<Long> firstFirst = new ArrayList<>();
    for (int i = sizes.count() - 1; i >= 0; i--) {
      firstFirst.add(sizes.dose(i));
    }
    return new Group(firstFirst, Arrays.stream(sizes.kinds()).boxed().toList());
  }

  /** The problem of a seed. */
  static Tiny of(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Double> circuits = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      circuits.add(1000.0 * random.nextInt(2, 4));
    }
    List<Kind> kinds = new ArrayList<>();
    for (int i = random.nextInt(1, 4); i > 0; i--) {
      kinds.add(
          new Kind(
              random.nextInt(1, 3),
              random.nextInt(2, 6),
              random.nextInt(3),
              1000.0 * random.nextInt(1, 3),
              random.nextInt(-1, circuits.size())));
    }
    List<Part> parts = new ArrayList<>();
    List<CoffeeOrders> coffees = new ArrayList<>();
    int batchesLeft = 4;
    for (int coffee = 0; batchesLeft > 0 && coffee < 3; coffee++) {
      List<Order> all = new ArrayList<>();
      boolean isCut = batchesLeft > 1 && random.nextInt(4) == 0;
      int until = isCut ? 14 : LATEST;
      for (int from = 8; from < until && batchesLeft > 0; from = until + 1, until = LATEST + 3) {
        Sizing sizing = sizing(random, Math.min(batchesLeft, isCut ? 2 : 3), kinds.size());
        batchesLeft -= sizing.count();
        List<Order> orders = orders(random, sizing, isCut && from > 8 ? 15 : 0, from, until);
        all.addAll(orders);
        parts.add(new Part(coffee, orders, sizing));
        if (!isCut) {
          break;
        }
      }
      coffees.add(
          new CoffeeOrders(
              all, STEP, kinds.stream().map(kind -> RunInstances.range(1, 20)).toList()));
      if (random.nextInt(3) == 0) {
        break;
      }
    }
    return new Tiny(new RunProblem(coffees, kinds, circuits, random.nextInt(5)), parts);
  }

  /** A problem whose sizes are not decided: what each kind takes is about a batch of it. */
  static RunProblem open(long seed) {
    RunProblem problem = of(seed).problem();
    SplittableRandom random = new SplittableRandom(-seed);
    List<CoffeeOrders> coffees = new ArrayList<>();
    boolean alike = random.nextBoolean();
    long same = random.nextInt(4, 11);
    for (CoffeeOrders coffee : problem.coffees()) {
      List<DoseRange> ranges = new ArrayList<>();
      for (int kind = 0; kind < problem.kinds().size(); kind++) {
        long most = alike ? same : random.nextInt(3, 10);
        DoseRange range = RunInstances.range(random.nextLong(1, most / 3 + 2), most);
        boolean isUsable = random.nextInt(8) > 0; // else its least dose is more than it takes
        ranges.add(isUsable ? range : new DoseRange(range.brewer(), most + 1, most));
      }
      coffees.add(new CoffeeOrders(coffee.orders(), STEP, ranges));
    }
    return new RunProblem(coffees, problem.kinds(), problem.circuitWatts(), 0);
  }

  /**
   * Of tight problems, some whose equal batches must be more than the fewest; the last have several
   * runs.
   */
  static final int[] MORE = {
    280, 348, 479, 1198, 1309, 1565, 2897, 4877, 10129, 14416, 32115, 48557
  };

  /**
   * Orders that may hardly share a batch: what serves two neighbours is ready just when the first
   * is due. So equal batches are often in time only when they are more, or not at all.
   */
  static RunProblem tight(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Kind> kinds = new ArrayList<>();
    for (int i = random.nextInt(1, 3); i > 0; i--) {
      kinds.add(new Kind(random.nextInt(1, 4), random.nextInt(2, 5), 1, 1000, -1));
    }
    List<CoffeeOrders> coffees = new ArrayList<>();
    long most = random.nextInt(4, 8);
    for (int coffee = random.nextInt(1, 3); coffee > 0; coffee--) {
      List<Order> orders = new ArrayList<>();
      int due = random.nextInt(6, 9);
      int before = 0;
      for (int i = random.nextInt(1, 4); i > 0; i--) {
        orders.add(new Order("F" + i, random.nextInt(10, 60), before, due));
        before = due + (random.nextInt(6) == 0 ? 1 : -random.nextInt(2));
        due += random.nextInt(2, 6);
      }
      List<DoseRange> ranges = new ArrayList<>();
      for (int kind = 0; kind < kinds.size(); kind++) {
        ranges.add(RunInstances.range(1, most + random.nextInt(2) * kind));
      }
      coffees.add(new CoffeeOrders(orders, STEP, ranges));
    }
    return new RunProblem(coffees, kinds, List.of(), 0);
  }

  private static Sizing sizing(SplittableRandom random, int most, int kinds) {
    if (most > 1 && kinds > 1 && random.nextInt(3) == 0) {
      int count = random.nextInt(1, most);
      return new Sizing(List.of(sizes(random, count, 0), sizes(random, most - count, 1)));
    }
    int count = random.nextInt(1, most + 1);
    int[] all = IntStream.range(0, kinds).toArray();
    return new Sizing(
        List.of(
            random.nextBoolean()
                ? sizes(random, count, all)
                : sizes(random, count, random.nextInt(kinds))));
  }

  /** The last brewed first; the first may be a step more, as equal batches are. */
  private static SizeClass sizes(SplittableRandom random, int count, int... kinds) {
    long[] doses = new long[count];
    Arrays.fill(doses, random.nextInt(2, 9));
    int more = random.nextInt(count);
    for (int i = 0; i < more; i++) {
      doses[count - 1 - i]++;
    }
    return new SizeClass(doses, kinds);
  }

  /** Orders that batches may share; what is brewed last may be a little more than is ordered. */
  private static List<Order> orders(
      SplittableRandom random, Sizing sizing, int notBefore, int from, int until) {
    int grams = -random.nextInt(STEP);
    for (SizeClass each : sizing.classes()) {
      for (long dose : each.doses()) {
        grams += (int) dose * STEP;
      }
    }
    List<Order> orders = new ArrayList<>();
    for (int left = grams, i = random.nextInt(1, 4); left > 0; i--) {
      int here = i <= 1 ? left : random.nextInt(1, left + 1);
      int due = random.nextInt(from, until);
      int earliest = Math.max(notBefore, Math.min(from, due - random.nextInt(3, 15)));
      orders.add(new Order("F" + orders.size(), here, earliest, due));
      left -= here;
    }
    return RunAudit.inDueOrder(orders);
  }

  /** Prices of a kind's brewers and of its power in each minute from the earliest start on. */
  record PriceRows(double[][] unit, double[][] power) {
    /** Whole numbers, half of them 0; power has a price where a circuit limits it. */
    static PriceRows any(RunProblem problem, long seed) {
      SplittableRandom random = new SplittableRandom(seed);
      int minutes = 28 - problem.earliestStart(); // all is due by 25, and 2 minutes' turnaround
      double[][] unit = new double[problem.kinds().size()][minutes];
      double[][] power = new double[problem.kinds().size()][minutes];
      for (int kind = 0; kind < unit.length; kind++) {
        for (int i = 0; i < minutes; i++) {
          unit[kind][i] = random.nextInt(2) * random.nextInt(20);
          power[kind][i] = isLimited(problem, kind) ? random.nextInt(2) * random.nextInt(20) : 0;
        }
      }
      return new PriceRows(unit, power);
    }

    PriceBound bound(RunProblem problem, List<Leg> legs) {
      return new PriceBound(
          problem, legs, new Prices(problem, problem.earliestStart(), unit, power));
    }
  }

  /** Whether all brewers of a kind's circuit at once are too much for it. */
  static boolean isLimited(RunProblem problem, int kind) {
    int circuit = problem.kinds().get(kind).circuit();
    double watts =
        problem.kinds().stream()
            .filter(other -> other.circuit() == circuit)
            .mapToDouble(other -> other.units() * other.watts())
            .sum();
    return circuit >= 0 && watts > problem.circuitWatts().get(circuit);
  }
}
