package dev.urnwright.xlsx;

import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.Measured;
import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Brewer;
import dev.urnwright.event.CaffeineContent;
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
import dev.urnwright.event.Supply;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.event.Uncertainties;
import dev.urnwright.event.Window;
import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Amount;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.quantity.Volume;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Events of all kinds, the same for the same seed; most of them can be planned. */
final class RandomEvents {
  private static final Location SOMEWHERE = new Location("event.yaml", 1, 1);

  private final Random shape;
  private final Random random;
  private final boolean fractionalCups;

  /**
   * Events for two seeds.
   *
   * @param shape what there is: coffees, groups, equipment, what is given and what is left out
   * @param numbers how much of it
   * @param fractionalCups whether guests may take one cup or two, as chance has it; POI's evaluator
   *     can't sum over such odds
   */
  RandomEvents(long shape, long numbers, boolean fractionalCups) {
    this.shape = new Random(shape);
    this.random = new Random(numbers);
    this.fractionalCups = fractionalCups;
  }

  Event next() {
    boolean us = shape.nextInt(3) == 0;
    Provision provision = provision();
    Temperature service = Temperature.ofCelsius(60 + random.nextInt(25));
    List<Coffee> coffees = new ArrayList<>();
    coffees.add(coffee("house", "House filter"));
    if (shape.nextBoolean()) {
      coffees.add(coffee("decaf", "Decaf"));
    }
    List<GuestGroup> groups = new ArrayList<>();
    int count = 1 + shape.nextInt(5);
    for (int i = 1; i <= count; i++) {
      groups.add(group(i, coffees, provision, service));
    }
    return new Event(
        "A random event",
        Optional.of(LocalDate.of(2027, 4, 17)),
        Optional.empty(),
        new Print(
            us ? UnitSystem.US : UnitSystem.METRIC, us ? Paper.LETTER : Paper.A4, Window.USUAL),
        new Serving(
            provision,
            Share.ofPercent(random.nextInt(6)),
            service,
            Temperature.ofCelsius(80 + random.nextInt(15)),
            Temperature.ofCelsius(10 + random.nextInt(30))),
        coffees,
        groups,
        equipment(us),
        Kitchen.USUAL,
        purchases(groups),
        List.of(),
        SOMEWHERE);
  }

  /** Every use there is, so that each formula is followed. */
  private Purchases purchases(List<GuestGroup> groups) {
    Amount pack = Amount.ofPieces(20 + random.nextInt(80));
    Amount one = Amount.ofPieces(1);
    Amount some = Amount.of(Volume.ofMillilitres(10 + random.nextInt(20)));
    Amount milk = Amount.of(Volume.ofLitres(1));
    List<String> first = List.of(groups.get(0).name());
    Optional<Volume> cup = Optional.of(groups.get(0).cup().size());
    List<Supply> supplies = new ArrayList<>();
    supplies.add(supply("Cups", each(one, Supply.Per.CUP), cup, List.of(), pack));
    supplies.add(supply("Milk", each(some, Supply.Per.CUP), Optional.empty(), first, milk));
    supplies.add(supply("Lids", each(one, Supply.Per.CUP), Optional.empty(), List.of(), pack));
    supplies.add(supply("Napkins", each(one, Supply.Per.GUEST), cup, first, pack));
    supplies.add(supply("Filters", each(one, Supply.Per.BATCH), Optional.empty(), List.of(), pack));
    supplies.add(supply("Labels", each(one, Supply.Per.FILL), Optional.empty(), List.of(), pack));
    supplies.add(supply("Cloths", each(one, Supply.Per.EVENT), Optional.empty(), List.of(), pack));
    supplies.add(
        supply("Water", new Supply.Use.AllWater(), Optional.empty(), List.of(), milk.times(5)));
    supplies.add(
        supply(
            "Ice",
            new Supply.Use.AllIce(),
            Optional.empty(),
            List.of(),
            Amount.of(Mass.ofGrams(2000))));
    return new Purchases(
        supplies,
        new Purchases.Costing(
            Optional.of(Share.ofPercent(random.nextInt(60))),
            Optional.of(Share.ofPercent(random.nextInt(20))),
            List.of(new Purchases.Charge("Van", euros(random.nextInt(9000))))),
        List.of());
  }

  private static Supply.Use each(Amount amount, Supply.Per per) {
    return new Supply.Use.Each(amount, per);
  }

  private Supply supply(
      String name, Supply.Use use, Optional<Volume> cup, List<String> groups, Amount pack) {
    boolean drunk =
        use instanceof Supply.Use.Each each
            && (each.per() == Supply.Per.CUP || each.per() == Supply.Per.GUEST);
    return new Supply(
        name,
        use,
        new Supply.Takers(
            Share.ofPercent(drunk ? random.nextInt(101) : 100),
            random.nextInt(30) / 100.0,
            cup,
            groups,
            Optional.empty()),
        new Supply.Stock(
            Optional.of(new Supply.Pack(pack, Optional.of(euros(random.nextInt(1000))))),
            pack.times(random.nextInt(3) / 2.0).whole()),
        Optional.empty(),
        SOMEWHERE);
  }

  private static Money euros(int cents) {
    return new Money(BigDecimal.valueOf(cents, 2), Currency.getInstance("EUR"));
  }

  private Provision provision() {
    return switch (shape.nextInt(3)) {
      case 0 -> new Provision.Mean();
      case 1 -> new Provision.Overage(random.nextInt(30) / 100.0);
      default -> new Provision.ServiceLevel(Share.ofPercent(80 + random.nextInt(19)));
    };
  }

  private Coffee coffee(String key, String name) {
    boolean immersion = shape.nextInt(4) == 0;
    boolean weighed = shape.nextBoolean();
    boolean measured = shape.nextInt(3) == 0;
    boolean hasReference = shape.nextBoolean();
    double extraction = (measured ? shape : random).nextInt(60) / 10.0 + 17;
    ReferenceBrew reference =
        new ReferenceBrew(
            Mass.ofGrams(60),
            Mass.ofGrams(960),
            weighed ? Optional.of(Mass.ofGrams(800 + shape.nextInt(40))) : Optional.empty(),
            Strength.ofPercent(1.2 + shape.nextInt(30) / 100.0));
    List<Measured> points =
        measured
            ? List.of(
                new Measured(BrewRatio.ofGramsPerGram(11), Extraction.ofPercent(extraction - 1.5)),
                new Measured(BrewRatio.ofGramsPerGram(13), Extraction.ofPercent(extraction - 0.4)),
                new Measured(BrewRatio.ofGramsPerGram(17), Extraction.ofPercent(extraction)))
            : List.of();
    BrewProfile profile =
        new BrewProfile(
            immersion ? Method.IMMERSION : Method.PERCOLATION,
            hasReference ? Optional.of(reference) : Optional.empty(),
            hasReference ? Optional.empty() : Optional.of(Extraction.ofPercent(extraction)),
            hasReference
                ? Optional.empty()
                : Optional.of(Absorption.ofGramsPerGram(1.5 + random.nextInt(15) / 10.0)),
            points,
            Share.ofPercent(hasReference ? shape.nextInt(3) : random.nextInt(3)));
    return new Coffee(
        key,
        name,
        key.equals("decaf"),
        profile,
        wish(),
        new CaffeineContent(Share.ofPercent(1.1), Share.ofPercent(1.3)),
        shape.nextInt(4) == 0
            ? Optional.empty()
            : Optional.of(
                new Coffee.Bag(
                    Mass.ofGrams(250 * (1 + random.nextInt(5))),
                    Optional.of(new Money(new BigDecimal("26.50"), Currency.getInstance("EUR"))),
                    Mass.ZERO)),
        SOMEWHERE);
  }

  private ConcentrateWish wish() {
    return switch (shape.nextInt(4)) {
      case 0 ->
          new ConcentrateWish.ByRatio(BrewRatio.ofGramsPerGram(10 + random.nextInt(40) / 10.0));
      case 1 ->
          new ConcentrateWish.ByStrength(Strength.ofPercent(1.7 + random.nextInt(40) / 100.0));
      case 2 ->
          new ConcentrateWish.Between(
              BrewRatio.ofGramsPerGram(9), BrewRatio.ofGramsPerGram(12 + random.nextInt(4)));
      default -> new ConcentrateWish.AsReference();
    };
  }

  private GuestGroup group(
      int number, List<Coffee> coffees, Provision provision, Temperature service) {
    boolean asTheEvent = shape.nextBoolean();
    Temperature own = Temperature.ofCelsius(50.5 + random.nextInt(9));
    boolean iced = shape.nextInt(5) == 0;
    boolean split = coffees.size() == 2 && shape.nextBoolean();
    int part = 50 + random.nextInt(45);
    List<CoffeeShare> shares =
        split
            ? List.of(
                new CoffeeShare("house", Share.ofPercent(part)),
                new CoffeeShare("decaf", Share.ofPercent(100 - part)))
            : List.of(
                new CoffeeShare(
                    number == 2 && coffees.size() == 2 ? "decaf" : "house", Share.ofPercent(100)));
    double[] each = {1, 2, 0.5, 1, 1.5, 2.3};
    boolean anyCups = fractionalCups || !(provision instanceof Provision.ServiceLevel);
    return new GuestGroup(
        "Group " + number,
        new GuestGroup.Guests(
            10 + random.nextInt(90),
            Share.ofPercent(40 + random.nextInt(61)),
            each[random.nextInt(anyCups ? each.length : 3)]),
        new GuestGroup.Cup(
            Volume.ofMillilitres(150 + 10 * random.nextInt(20)),
            Volume.ofMillilitres(random.nextInt(4) * 10),
            iced ? Temperature.ofCelsius(5) : asTheEvent ? service : own),
        Strength.ofPercent(1.15 + random.nextInt(30) / 100.0),
        shares,
        iced
            ? Optional.of(new GuestGroup.OverIce(Temperature.ofCelsius(15 + random.nextInt(15))))
            : Optional.empty(),
        new GuestGroup.Service(
            shape.nextBoolean() && number > 1 // untimed: one group says nothing of its time
                ? Optional.of(
                    new TimeWindow(LocalTime.of(6 + shape.nextInt(10), 0), LocalTime.of(17, 0)))
                : Optional.empty(),
            GuestGroup.Arrivals.EVEN,
            Optional.empty(),
            Optional.empty()),
        SOMEWHERE);
  }

  private Equipment equipment(boolean us) {
    List<Brewer> brewers = new ArrayList<>();
    int kinds = shape.nextInt(3);
    for (int i = 0; i < kinds; i++) {
      brewers.add(
          new Brewer(
              "Brewer " + (i + 1),
              1 + random.nextInt(3),
              Mass.ofGrams(20 + random.nextInt(80)),
              Mass.ofGrams(300 + 100 * random.nextInt(5)),
              Mass.ofGrams(3000 + 500 * random.nextInt(8)),
              shape.nextBoolean() ? Optional.of(Volume.ofLitres(6)) : Optional.empty(),
              Optional.of(Duration.ofMinutes(10)),
              new Brewer.Supply(Optional.empty(), Optional.empty()),
              SOMEWHERE));
    }
    List<Dispenser> dispensers =
        shape.nextInt(4) == 0
            ? List.of()
            : List.of(
                dispenser("Airpot", 20, 2.2, 40), dispenser("Urn", 6, 6 + random.nextInt(6), 150));
    Mass[] metricSteps = {Mass.ofGrams(1), Mass.ofGrams(5), Mass.ofGrams(10)};
    Mass step = us ? Mass.ofOunces(0.1) : metricSteps[shape.nextInt(3)];
    return new Equipment(
        brewers,
        List.of(),
        dispensers,
        step,
        us ? Volume.ofFluidOunces(0.5) : Volume.ofMillilitres(10),
        Uncertainties.usual(step));
  }

  private static Dispenser dispenser(String name, int count, double litres, double heel) {
    return new Dispenser(
        name,
        count,
        Volume.ofLitres(litres),
        Volume.ofMillilitres(heel),
        Optional.of(Duration.ofMinutes(60)),
        OptionalDouble.empty(),
        OptionalDouble.of(0.5 + 0.3 * litres),
        SOMEWHERE);
  }
}
