package dev.urnwright.plan;

import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.Measured;
import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Brewer;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.ConcentrateWish;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Equipment;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.GuestGroup.CoffeeShare;
import dev.urnwright.event.Kitchen;
import dev.urnwright.event.Paper;
import dev.urnwright.event.Print;
import dev.urnwright.event.Provision;
import dev.urnwright.event.Purchases;
import dev.urnwright.event.Serving;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.event.Uncertainties;
import dev.urnwright.event.Window;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.quantity.Volume;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * Random valid events, the same for the same seed. The sane ones can mostly be planned; the wild
 * ones go to the ends of what an event may hold, and mostly can't.
 */
public final class RandomEvents {
  private static final double[] STEPS = {0.1, 0.5, 1, 2, 5, 5, 10, 25, 50};

  private final SplittableRandom random;
  private final boolean wild;

  private RandomEvents(long seed, boolean wild) {
    this.random = new SplittableRandom(seed);
    this.wild = wild;
  }

  /**
   * How many events to try: as many as are usual, or so many times fewer as the system property
   * {@code urnwright.fewer} says, where the tests are run over and over.
   */
  public static int count(int usual) {
    return Math.max(5, usual / Integer.getInteger("urnwright.fewer", 1));
  }

  /** An event such as people have. */
  public static Event sane(long seed) {
    return new RandomEvents(seed, false).event();
  }

  /** An event at the ends of all ranges. */
  public static Event wild(long seed) {
    return new RandomEvents(seed, true).event();
  }

  private Event event() {
    boolean us = chance(0.3);
    List<Coffee> coffees = new ArrayList<>();
    int several = chance(0.05) ? 12 : random.nextInt(1, 4);
    for (int i = 0; i < several; i++) {
      coffees.add(coffee(i == 0 ? "house" : i == 1 ? "decaf" : "coffee" + i));
    }
    List<GuestGroup> groups = new ArrayList<>();
    int count = Math.max(several, random.nextInt(1, 8));
    for (int i = 0; i < count; i++) {
      groups.add(group(i, several));
    }
    return new Event(
        "A generic event",
        Optional.empty(),
        chance(0.5) ? Optional.of(LocalTime.of(9, 0)) : Optional.empty(),
        new Print(us ? UnitSystem.US : UnitSystem.METRIC, Paper.A4, Window.USUAL),
        serving(),
        coffees,
        groups,
        equipment(us),
        Kitchen.USUAL,
        Purchases.NONE,
        List.of(),
        Events.SOMEWHERE);
  }

  private Serving serving() {
    return new Serving(
        switch (random.nextInt(3)) {
          case 0 -> new Provision.Mean();
          case 1 -> new Provision.Overage(between(0, wild ? 10 : 0.3));
          default -> new Provision.ServiceLevel(Share.ofPercent(between(wild ? 0.01 : 60, 99.99)));
        },
        Share.ofPercent(chance(0.3) ? 0 : between(0, wild ? 100 : 10)),
        celsius(60, 85),
        celsius(70, 98),
        celsius(5, 60));
  }

  private Coffee coffee(String key) {
    Method method = chance(0.75) ? Method.PERCOLATION : Method.IMMERSION;
    return Events.coffee(key, wish(method), profile(method));
  }

  private ConcentrateWish wish(Method method) {
    double ratio = method == Method.PERCOLATION ? between(8, 11.5) : between(6, 8);
    if (wild) {
      ratio = logBetween(0.1, 1000);
    }
    BrewRatio from = BrewRatio.ofGramsPerGram(chance(0.5) ? Math.rint(ratio * 10) / 10 : ratio);
    return switch (random.nextInt(4)) {
      case 0 -> new ConcentrateWish.ByRatio(BrewRatio.ofGramsPerGram(Math.max(0.1, ratio)));
      case 1 ->
          new ConcentrateWish.ByStrength(
              Strength.ofPercent(wild ? between(0, 100) : between(2, 2.4)));
      case 2 ->
          new ConcentrateWish.Between(
              BrewRatio.ofGramsPerGram(Math.max(0.1, from.gramsPerGram())),
              BrewRatio.ofGramsPerGram(
                  Math.max(0.1, from.gramsPerGram()) + between(0, wild ? 30 : 5)));
      default -> new ConcentrateWish.AsReference();
    };
  }

  private BrewProfile profile(Method method) {
    Share steam = Share.ofPercent(chance(0.5) ? 0 : between(0, wild && chance(0.3) ? 100 : 4));
    Optional<Absorption> absorption =
        chance(0.3)
            ? Optional.of(Absorption.ofGramsPerGram(wild ? between(0, 20) : between(1.5, 3)))
            : Optional.empty();
    Optional<ReferenceBrew> reference =
        chance(0.6) ? Optional.of(reference(steam)) : Optional.empty();
    Optional<Extraction> extraction =
        reference.isEmpty() && chance(0.7)
            ? Optional.of(Extraction.ofPercent(wild ? between(0, 100) : between(18, 22)))
            : Optional.empty();
    List<Measured> measured = new ArrayList<>();
    if (chance(0.3)) {
      double ratio = between(wild ? 0.1 : 6, 9);
      double extracted = between(17, 18);
      for (int n = random.nextInt(1, 6); n > 0; n--) {
        measured.add(
            new Measured(
                BrewRatio.ofGramsPerGram(ratio),
                Extraction.ofPercent(wild ? between(0, 100) : extracted)));
        ratio += between(wild ? 0.001 : 0.5, 3);
        extracted += between(0, 0.8);
      }
    }
    return new BrewProfile(method, reference, extraction, absorption, measured, steam);
  }

  private ReferenceBrew reference(Share steam) {
    double dose = between(20, 500);
    double ratio = wild ? logBetween(0.5, 300) : between(12, 17);
    double water = dose * ratio;
    double left = water * (1 - steam.fraction());
    double beverage = wild ? between(0, 1.05) * left : left - between(1.8, 2.4) * dose;
    double extraction = wild ? between(0, 1.5) : between(0.185, 0.215);
    double strength = Math.min(1, extraction * dose / Math.max(beverage, 1e-3));
    return new ReferenceBrew(
        Mass.ofGrams(dose),
        Mass.ofGrams(water),
        chance(0.7) ? Optional.of(Mass.ofGrams(beverage)) : Optional.empty(),
        Strength.ofFraction(strength));
  }

  private GuestGroup group(int number, int coffees) {
    boolean iced = chance(0.2);
    double size = wild ? logBetween(1, 10_000) : between(120, 400);
    double served = iced ? between(wild ? 0 : 2, 9) : between(60, 85);
    return new GuestGroup(
        "Group " + (number + 1),
        new GuestGroup.Guests(
            (int) logBetween(1, wild ? 20_000 : 500),
            Share.ofPercent(chance(0.3) ? 100 : between(wild ? 0 : 30, 100)),
            chance(0.5)
                ? new double[] {0.5, 1, 1.5, 2, 2.25}[random.nextInt(5)]
                : between(0.1, wild ? 20 : 3)),
        new GuestGroup.Cup(
            Volume.ofMillilitres(size),
            Volume.ofMillilitres(chance(0.5) ? 0 : size * between(0, wild ? 0.999 : 0.15)),
            Temperature.ofCelsius(served)),
        Strength.ofPercent(
            wild && chance(0.5)
                ? logBetween(0.1, 100)
                : Math.rint(between(1.05, iced ? 1.25 : 1.5) * 100) / 100),
        shares(number, coffees),
        iced
            ? Optional.of(
                new GuestGroup.OverIce(
                    Temperature.ofCelsius(wild ? between(served + 0.01, 99) : between(15, 30))))
            : Optional.empty(),
        new GuestGroup.Service(
            chance(0.6) ? Optional.of(window()) : Optional.empty(),
            GuestGroup.Arrivals.EVEN,
            Optional.empty(),
            Optional.empty()),
        Events.SOMEWHERE);
  }

  /** The first groups drink one coffee each, so that none is left out; the others may split. */
  private List<CoffeeShare> shares(int number, int coffees) {
    int first = number % coffees;
    if (coffees == 1 || chance(0.6)) {
      return List.of(share(first, 100));
    }
    double percent = random.nextInt(1, 100);
    return List.of(share(first, 100 - percent), share((first + 1) % coffees, percent));
  }

  private static CoffeeShare share(int coffee, double percent) {
    String key = coffee == 0 ? "house" : coffee == 1 ? "decaf" : "coffee" + coffee;
    return new CoffeeShare(key, Share.ofPercent(percent));
  }

  private TimeWindow window() {
    LocalTime start = LocalTime.of(random.nextInt(24), random.nextInt(60));
    return new TimeWindow(start, start.plusMinutes(random.nextInt(15, 180)));
  }

  private Equipment equipment(boolean us) {
    double step = STEPS[random.nextInt(STEPS.length)];
    Mass scale = us ? Mass.ofOunces(Math.max(0.1, step / 25)) : Mass.ofGrams(step);
    Volume jug = us ? Volume.ofFluidOunces(0.5) : Volume.ofMillilitres(10);
    List<Brewer> brewers = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      brewers.add(brewer("Brewer " + i));
    }
    List<Dispenser> dispensers = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      dispensers.add(dispenser("Dispenser " + i));
    }
    return new Equipment(brewers, List.of(), dispensers, scale, jug, Uncertainties.usual(scale));
  }

  private Brewer brewer(String name) {
    double most = logBetween(wild ? 1 : 60, 6000);
    double least = chance(0.3) ? 0 : most * between(0, wild ? 1 : 0.3) * (wild ? 1 : 0.2);
    double water = most * (wild ? logBetween(0.1, 30) : between(6, 14));
    return new Brewer(
        name,
        random.nextInt(1, 4),
        Mass.ofGrams(least),
        Mass.ofGrams(most),
        Mass.ofGrams(water),
        chance(0.3)
            ? Optional.of(Volume.ofLitres(water / 1000 * between(0.5, 1.1)))
            : Optional.empty(),
        Optional.empty(),
        new Brewer.Supply(Optional.empty(), Optional.empty()),
        Events.SOMEWHERE);
  }

  private Dispenser dispenser(String name) {
    double litres = logBetween(wild ? 0.05 : 1, 20);
    return new Dispenser(
        name,
        wild ? random.nextInt(1, 20) : random.nextInt(20, 60),
        Volume.ofLitres(litres),
        Volume.ofLitres(chance(0.3) ? 0 : litres * between(0, wild ? 0.99 : 0.04)),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(0.5 + 0.3 * litres),
        Events.SOMEWHERE);
  }

  private Temperature celsius(double from, double to) {
    return Temperature.ofCelsius(wild ? between(0, 99.97) : between(from, to));
  }

  private boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  private double between(double from, double to) {
    return from >= to ? from : random.nextDouble(from, to);
  }

  private double logBetween(double from, double to) {
    return Math.exp(between(Math.log(from), Math.log(to)));
  }
}
