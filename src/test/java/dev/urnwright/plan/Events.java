package dev.urnwright.plan;

import dev.urnwright.event.BrewProfile;
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
import dev.urnwright.event.Uncertainties;
import dev.urnwright.event.Window;
import dev.urnwright.problem.Location;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.quantity.Volume;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Plain events for tests: obviously generic, each part replaceable. */
public final class Events {
  public static final Location SOMEWHERE = new Location("event.yaml", 1, 1);

  /** 60 g and 960 g of water gave 831 g at 1.40 %: 19.39 % extracted, 2.15 g/g absorbed. */
  public static final ReferenceBrew REFERENCE =
      new ReferenceBrew(
          Mass.ofGrams(60),
          Mass.ofGrams(960),
          Optional.of(Mass.ofGrams(831)),
          Strength.ofPercent(1.40));

  private Events() {}

  public static Coffee coffee(String key, ConcentrateWish wish) {
    return coffee(key, wish, profile(Method.PERCOLATION, REFERENCE));
  }

  public static Coffee coffee(String key, ConcentrateWish wish, BrewProfile profile) {
    return new Coffee(
        key,
        key.equals("decaf") ? "Decaf" : "Coffee " + key,
        key.equals("decaf"),
        profile,
        wish,
        new CaffeineContent(Share.ofPercent(1.2), Share.ofPercent(1.2)),
        Optional.empty(),
        SOMEWHERE);
  }

  public static BrewProfile profile(Method method, ReferenceBrew reference) {
    return new BrewProfile(
        method,
        Optional.of(reference),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Share.ofPercent(0));
  }

  public static ConcentrateWish ratio(double gramsPerGram) {
    return new ConcentrateWish.ByRatio(BrewRatio.ofGramsPerGram(gramsPerGram));
  }

  public static GuestGroup group(String name, int headcount, double cupMl, double strengthPercent) {
    return new GuestGroup(
        name,
        new GuestGroup.Guests(headcount, Share.ofPercent(100), 1),
        new GuestGroup.Cup(
            Volume.ofMillilitres(cupMl), Volume.ofMillilitres(0), Temperature.ofCelsius(75)),
        Strength.ofPercent(strengthPercent),
        List.of(new CoffeeShare("house", Share.ofPercent(100))),
        Optional.empty(),
        new GuestGroup.Service(
            Optional.empty(), GuestGroup.Arrivals.EVEN, Optional.empty(), Optional.empty()),
        SOMEWHERE);
  }

  public static GuestGroup drinking(GuestGroup group, CoffeeShare... shares) {
    return new GuestGroup(
        group.name(),
        group.guests(),
        group.cup(),
        group.strength(),
        List.of(shares),
        group.ice(),
        group.service(),
        group.location());
  }

  public static GuestGroup iced(GuestGroup group, double pouredAt, double servedAt) {
    return new GuestGroup(
        group.name(),
        group.guests(),
        new GuestGroup.Cup(group.cup().size(), group.cup().room(), Temperature.ofCelsius(servedAt)),
        group.strength(),
        group.coffees(),
        Optional.of(new GuestGroup.OverIce(Temperature.ofCelsius(pouredAt))),
        group.service(),
        group.location());
  }

  public static Brewer brewer(
      String name, int count, double leastGrams, double mostGrams, double litres) {
    return new Brewer(
        name,
        count,
        Mass.ofGrams(leastGrams),
        Mass.ofGrams(mostGrams),
        Mass.ofGrams(litres * 998.2),
        Optional.empty(),
        Optional.of(Duration.ofMinutes(10)),
        new Brewer.Supply(Optional.empty(), Optional.empty()),
        SOMEWHERE);
  }

  public static Dispenser dispenser(String name, int count, double litres, double heelMl) {
    return new Dispenser(
        name,
        count,
        Volume.ofLitres(litres),
        Volume.ofMillilitres(heelMl),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        SOMEWHERE);
  }

  public static Equipment equipment(
      double stepGrams, List<Brewer> brewers, List<Dispenser> dispensers) {
    return new Equipment(
        brewers,
        List.of(),
        dispensers,
        Mass.ofGrams(stepGrams),
        Volume.ofMillilitres(10),
        Uncertainties.usual(Mass.ofGrams(stepGrams)));
  }

  public static Serving serving(Provision provision, double spillPercent) {
    return new Serving(
        provision,
        Share.ofPercent(spillPercent),
        Temperature.ofCelsius(75),
        Temperature.ofCelsius(92),
        Temperature.ofCelsius(20));
  }

  public static Event event(
      Serving serving, List<Coffee> coffees, List<GuestGroup> groups, Equipment equipment) {
    return new Event(
        "A generic event",
        Optional.of(LocalDate.of(2027, 4, 17)),
        Optional.empty(),
        new Print(UnitSystem.METRIC, Paper.A4, Window.USUAL),
        serving,
        coffees,
        groups,
        equipment,
        Kitchen.USUAL,
        Purchases.NONE,
        List.of(),
        SOMEWHERE);
  }

  /** One coffee, no brewers or dispensers listed, exact to the gram. */
  public static Event simple(ConcentrateWish wish, GuestGroup... groups) {
    return event(
        serving(new Provision.Mean(), 0),
        List.of(coffee("house", wish)),
        List.of(groups),
        equipment(1, List.of(), List.of()));
  }

  /**
   * Common practice, no source (check values): 16 g and 208 g of water gave 169 g at 1.81 %, 19.12
   * % extracted; with 55.9 g of bypass it is 224.9 g at 1.36 %. One guest wants just that cup.
   */
  public static Event oneCup() {
    double cupMl = Volume.ofWater(Mass.ofGrams(224.9), Temperature.ofCelsius(75)).millilitres();
    ReferenceBrew reference =
        new ReferenceBrew(
            Mass.ofGrams(16),
            Mass.ofGrams(208),
            Optional.of(Mass.ofGrams(169)),
            Strength.ofPercent(1.81));
    return event(
        serving(new Provision.Mean(), 0),
        List.of(coffee("house", ratio(13), profile(Method.PERCOLATION, reference))),
        List.of(group("One guest", 1, cupMl, 1.36)),
        equipment(0.1, List.of(), List.of()));
  }
}
