package dev.urnwright.schedule;

import dev.urnwright.event.Brewer;
import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Mass;
import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunProblem.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Made-up problems for the scheduler, the same for the same seed. All grams and minutes are whole
 * numbers, so that sums are exact.
 *
 * <p>A <em>day</em> is a service of eight hours. So many batches' worth of each coffee is ordered
 * in dispensers of 1500 to 2099 g, due at any minute of the day or, a share of them, within the
 * twenty minutes of one of three breaks. Each is poured out over 10 to 34 minutes and may be 75
 * minutes old at its last pour.
 *
 * <p>A <em>small</em> problem has a few orders within half an hour, short cycles, tight holds and
 * weak circuits; a good part of them can't be done.
 */
public final class RunInstances {
  private static final int GRAMS_PER_STEP = 54; // 5 g of dose at about 1:13
  private static final int OPENS = 480;
  private static final int MINUTES = 480;
  private static final int[] BREAKS = {600, 720, 870};
  private static final int BREAK = 20;
  private static final int HOLD = 75;

  private RunInstances() {}

  /**
   * A problem to be timed.
   *
   * @param name brewers, batches and what is special
   */
  public record Named(String name, RunProblem problem) {}

  /** Brewers of one kind; with a turnaround of two minutes. */
  private record Brewers(int units, long dose, int brewMinutes, double watts, int circuit) {}

  /**
   * How much is ordered.
   *
   * @param batches that brew it, full ones
   * @param inBreaks which share of it is due in the breaks
   * @param steps of dose by which each coffee is short of full batches, so that some are smaller
   */
  private record Size(int batches, int coffees, double inBreaks, int steps) {
    Size(int batches, int coffees, double inBreaks) {
      this(batches, coffees, inBreaks, 0);
    }
  }

  /** Days from three brewers and twenty batches to twenty and four hundred. */
  public static List<Named> days(long seed) {
    Brewers[] oneCircuit = {new Brewers(2, 96, 11, 3100, 0), new Brewers(1, 96, 14, 2400, 0)};
    Brewers[] equalTen = {
      new Brewers(4, 96, 10, 3100, 0),
      new Brewers(3, 96, 12, 2800, 0),
      new Brewers(2, 96, 15, 2000, 1),
      new Brewers(1, 96, 20, 4000, 1)
    };
    Brewers[] mixedTen = {
      new Brewers(4, 96, 10, 3100, 0),
      new Brewers(3, 110, 12, 2800, 0),
      new Brewers(2, 120, 15, 2000, 1),
      new Brewers(1, 130, 20, 4000, 1)
    };
    Brewers[] equalTwenty = {
      new Brewers(8, 96, 10, 3100, 0),
      new Brewers(6, 96, 12, 2800, 0),
      new Brewers(4, 96, 15, 2000, 1),
      new Brewers(2, 96, 20, 4000, 1)
    };
    List<Double> forTen = List.of(12000.0, 6000.0);
    List<Double> forTwenty = List.of(36000.0, 16000.0);
    return List.of(
        new Named("3/20 equal", equalThree(seed)),
        new Named("3/20 one circuit", day(seed, new Size(20, 2, 0), List.of(5888.0), oneCircuit)),
        new Named(
            "5/50 mixed",
            day(
                seed,
                new Size(50, 2, 0),
                List.of(7000.0, 8000.0),
                new Brewers(3, 96, 11, 3100, 0),
                new Brewers(2, 150, 16, 4000, 1))),
        new Named("10/120 equal", day(seed, new Size(120, 2, 0), forTen, equalTen)),
        new Named("10/120 mixed", day(seed, new Size(120, 2, 0), forTen, mixedTen)),
        new Named("10/120 uneven", day(seed, new Size(120, 2, 0, 30), forTen, equalTen)),
        new Named("3/20 breaks", day(seed, new Size(20, 2, 0.3), List.of(5888.0), oneCircuit)),
        new Named("10/120 breaks", day(seed, new Size(120, 2, 0.3), forTen, equalTen)),
        new Named("10/120 mixed br", day(seed, new Size(120, 2, 0.3), forTen, mixedTen)),
        new Named("20/400 equal", day(seed, new Size(400, 2, 0), forTwenty, equalTwenty)),
        new Named("20/400 breaks", day(seed, new Size(400, 2, 0.3), forTwenty, equalTwenty)));
  }

  /** Three equal brewers, one coffee, no circuit, twenty batches. */
  static RunProblem equalThree(long seed) {
    return day(seed, new Size(20, 1, 0), List.of(), new Brewers(3, 96, 11, 3100, -1));
  }

  private static RunProblem day(long seed, Size size, List<Double> circuits, Brewers... brewers) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Kind> kinds = new ArrayList<>();
    List<DoseRange> ranges = new ArrayList<>();
    long doses = 0;
    int units = 0;
    for (Brewers each : brewers) {
      kinds.add(new Kind(each.units(), each.brewMinutes(), 2, each.watts(), each.circuit()));
      ranges.add(range(each.dose() / 3, each.dose()));
      doses += each.units() * each.dose();
      units += each.units();
    }
    int grams =
        (int) ((size.batches() / size.coffees() * doses / units - size.steps()) * GRAMS_PER_STEP);
    List<CoffeeOrders> all = new ArrayList<>();
    for (int coffee = 0; coffee < size.coffees(); coffee++) {
      all.add(new CoffeeOrders(dayOrders(random, grams, size.inBreaks()), GRAMS_PER_STEP, ranges));
    }
    return new RunProblem(all, kinds, circuits, 240);
  }

  private static List<Order> dayOrders(SplittableRandom random, int total, double inBreaks) {
    List<Order> orders = new ArrayList<>();
    for (int left = total; left > 0; ) {
      int grams = Math.min(left, random.nextInt(1500, 2100));
      int due =
          random.nextDouble() >= inBreaks
              ? OPENS + random.nextInt(MINUTES)
              : BREAKS[random.nextInt(BREAKS.length)] + random.nextInt(BREAK);
      int lastPour = due + random.nextInt(10, 35);
      orders.add(new Order("F" + orders.size(), grams, lastPour - HOLD, due));
      left -= grams;
    }
    return orders;
  }

  /** One or two coffees of one to four orders, one or two kinds of brewers, up to two circuits. */
  static RunProblem small(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Double> circuits = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      circuits.add(1000.0 * random.nextInt(2, 7));
    }
    List<Kind> kinds = new ArrayList<>();
    for (int i = random.nextInt(1, 3); i > 0; i--) {
      kinds.add(
          new Kind(
              random.nextInt(1, 3),
              random.nextInt(2, 8),
              random.nextInt(3),
              1000.0 * random.nextInt(1, 4),
              random.nextInt(-1, circuits.size())));
    }
    List<CoffeeOrders> coffees = new ArrayList<>();
    boolean sameDoses = random.nextBoolean();
    long same = random.nextInt(4, 11);
    for (int i = random.nextInt(1, 3); i > 0; i--) {
      List<DoseRange> ranges = new ArrayList<>();
      for (int kind = 0; kind < kinds.size(); kind++) {
        long most = sameDoses ? same : random.nextInt(4, 11);
        ranges.add(range(random.nextLong(most / 2 + 1), most));
      }
      coffees.add(new CoffeeOrders(smallOrders(random), 50, ranges));
    }
    return new RunProblem(coffees, kinds, circuits, random.nextInt(12));
  }

  private static List<Order> smallOrders(SplittableRandom random) {
    List<Order> orders = new ArrayList<>();
    for (int i = random.nextInt(1, 5); i > 0; i--) {
      int due = random.nextInt(18, 48);
      orders.add(
          new Order(
              "F" + orders.size(), random.nextInt(60, 500), due - random.nextInt(3, 25), due));
    }
    return orders;
  }

  /**
   * A problem with the sizes of all batches.
   *
   * @param sizings one for each coffee
   */
  record Sized(RunProblem problem, List<Sizing> sizings) {}

  /**
   * Two to six batches of given sizes: for each coffee one to four of one dose that all kinds take,
   * or, when mixed, up to two of each kind with a dose of its own.
   */
  static Sized sized(long seed, boolean mixed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Double> circuits = List.of(1000.0 * random.nextInt(2, 6), 1000.0 * random.nextInt(2, 6));
    List<Kind> kinds = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      kinds.add(
          new Kind(
              random.nextInt(1, 3),
              random.nextInt(2, 8),
              random.nextInt(3),
              1000.0 * random.nextInt(1, 3),
              random.nextInt(-1, 2)));
    }
    List<CoffeeOrders> coffees = new ArrayList<>();
    List<Sizing> sizings = new ArrayList<>();
    int several = random.nextInt(1, 3);
    for (int coffee = 0; coffee < several; coffee++) {
      Sizing sizing =
          mixed ? mixed(random, several) : new Sizing(List.of(batches(random, 4 / several, 0, 1)));
      int grams = -random.nextInt(50);
      for (Sizing.SizeClass each : sizing.classes()) {
        grams += (int) (50 * each.count() * each.dose(0));
      }
      coffees.add(
          new CoffeeOrders(sharedOut(random, grams), 50, List.of(range(1, 20), range(1, 20))));
      sizings.add(sizing);
    }
    return new Sized(new RunProblem(coffees, kinds, circuits, random.nextInt(10)), sizings);
  }

  private static Sizing mixed(SplittableRandom random, int coffees) {
    return new Sizing(
        List.of(batches(random, 3 - coffees + 1, 0), batches(random, 3 - coffees + 1, 1)));
  }

  private static Sizing.SizeClass batches(SplittableRandom random, int most, int... kinds) {
    long[] doses = new long[random.nextInt(1, most + 1)];
    Arrays.fill(doses, random.nextInt(2, 12));
    return new Sizing.SizeClass(doses, kinds);
  }

  /** Orders that all batches may share: none may only be brewed when another is due already. */
  private static List<Order> sharedOut(SplittableRandom random, int grams) {
    List<Order> orders = new ArrayList<>();
    int left = grams;
    for (int i = random.nextInt(1, 5); left > 0; i--) {
      int here = i <= 1 ? left : random.nextInt(1, left + 1);
      int earliest = random.nextInt(5, 20);
      orders.add(new Order("F" + orders.size(), here, earliest, random.nextInt(20, 45)));
      left -= here;
    }
    return orders;
  }

  /** The best schedule for these sizes. */
  static Optional<BackwardSearch.Found> search(Sized sized) {
    return new BackwardSearch(sized.problem(), legs(sized), 2000).run(Double.NEGATIVE_INFINITY);
  }

  /** One for each coffee. */
  static List<Leg> legs(Sized sized) {
    List<Leg> legs = new ArrayList<>();
    for (int coffee = 0; coffee < sized.sizings().size(); coffee++) {
      CoffeeOrders orders = sized.problem().coffees().get(coffee);
      OrderBook.Run run = OrderBook.of(orders.orders()).runs().get(0);
      legs.add(new SizedLeg(coffee, run, sized.sizings().get(coffee), orders.gramsPerStep()));
    }
    return legs;
  }

  /** The gram-minutes of a schedule without waiting. */
  static double latest(RunProblem problem) {
    return problem.coffees().stream()
        .flatMap(coffee -> coffee.orders().stream())
        .mapToDouble(order -> order.grams() * order.latestReady())
        .sum();
  }

  static DoseRange range(long least, long greatest) {
    return new DoseRange(
        new Brewer(
            "Brewer",
            1,
            Mass.ofGrams(1),
            Mass.ofGrams(greatest),
            Mass.ofGrams(1),
            Optional.empty(),
            Optional.empty(),
            new Brewer.Supply(Optional.empty(), Optional.empty()),
            new Location("x", 1, 1)),
        least,
        greatest);
  }
}
