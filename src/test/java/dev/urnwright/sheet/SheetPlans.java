package dev.urnwright.sheet;

import static dev.urnwright.plan.Events.SOMEWHERE;

import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Equipment;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.GuestGroup.CoffeeShare;
import dev.urnwright.event.Paper;
import dev.urnwright.event.Print;
import dev.urnwright.event.Provision;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.event.Window;
import dev.urnwright.input.EventReader;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.problem.Checked;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.UnitSystem;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Plans for tests of what gets printed: a usual one, and ones that strain the page. */
public final class SheetPlans {
  public static final String LONG_NAME =
      ("A name as long as somebody in a hurry would never write it down, with commas, and a hyphenated"
              + "-word or two, so that it must wrap over several lines wherever it is printed at all, "
              + "up to two hundred letters")
          .substring(0, 200);

  private SheetPlans() {}

  /** A house coffee and a decaf, five groups, one of them iced. */
  public static Plan usual(UnitSystem units, Paper paper) {
    Coffee house = bagged(Events.coffee("house", Events.ratio(13)));
    Coffee decaf = bagged(Events.coffee("decaf", Events.ratio(13)));
    CoffeeShare most = new CoffeeShare("house", Share.ofPercent(85));
    CoffeeShare few = new CoffeeShare("decaf", Share.ofPercent(15));
    List<GuestGroup> groups =
        List.of(
            at(Events.group("Early setup crew", 40, 220, 1.45), "Barn", "06:30", "07:30"),
            at(
                Events.drinking(Events.group("Visitors", 160, 200, 1.25), most, few),
                "Marquee",
                "08:00",
                "10:00"),
            at(
                Events.drinking(Events.group("Speakers", 24, 180, 1.35), most, few),
                "Green room",
                "08:30",
                "09:30"),
            at(Events.group("Stewards", 30, 240, 1.30), "Gate", "07:00", "11:00"),
            at(
                Events.iced(Events.group("Iced table", 30, 300, 1.30), 25, 5),
                "Terrace",
                "09:00",
                "10:00"));
    Equipment equipment =
        Events.equipment(
            5,
            List.of(
                Events.brewer("Twin brewer", 2, 150, 480, 6),
                Events.brewer("Small brewer", 1, 40, 150, 2)),
            List.of(airpot(20)));
    return planned(
        event("A generic breakfast", units, paper, List.of(house, decaf), groups, equipment));
  }

  /**
   * A crowd that strains the page: every name has 200 letters.
   *
   * @param groups how many
   * @param coffees how many; the second is decaf
   */
  public static Plan crowded(int groups, int coffees, UnitSystem units, Paper paper) {
    return crowded(groups, coffees, 20, LONG_NAME, units, paper);
  }

  /** The same with names of one's own; a number is put behind them to keep them distinct. */
  public static Plan crowded(
      int groups, int coffees, int headcount, String name, UnitSystem units, Paper paper) {
    List<Coffee> all = new ArrayList<>();
    for (int number = 0; number < coffees; number++) {
      Coffee plain = Events.coffee("c" + number, Events.ratio(12.5));
      all.add(
          new Coffee(
              plain.key(),
              name + number,
              number == 1,
              plain.profile(),
              plain.concentrate(),
              plain.caffeine(),
              bagged(plain).bag(),
              SOMEWHERE));
    }
    List<GuestGroup> guests = new ArrayList<>();
    for (int number = 0; number < groups; number++) {
      GuestGroup group =
          Events.drinking(
              Events.group(name + number, headcount, 200, 1.15 + 0.01 * (number % 31)),
              new CoffeeShare("c" + number % coffees, Share.ofPercent(100)));
      guests.add(at(group, name, "08:00", "10:00"));
    }
    Equipment equipment =
        Events.equipment(
            1,
            List.of(Events.brewer(name, 8, 1, 480, 6.6)),
            List.of(
                new Dispenser(
                    name,
                    1000,
                    airpot(1).capacity(),
                    airpot(1).heel(),
                    airpot(1).hold(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    SOMEWHERE)));
    return planned(event(name, units, paper, all, guests, equipment));
  }

  /** The plan of one of the samples. */
  public static Plan sample(String name) throws IOException {
    Path file = Path.of("samples", name + ".yaml");
    Checked<Event> read = new EventReader().read(file);
    return planned(read.value().orElseThrow(() -> new AssertionError(read.problems())));
  }

  /** The plan of an event that can be planned. */
  public static Plan planned(Event event) {
    Checked<Plan> checked = new Planner().plan(event);
    return checked
        .value()
        .orElseThrow(() -> new AssertionError("not planned: " + checked.problems()));
  }

  private static Event event(
      String name,
      UnitSystem units,
      Paper paper,
      List<Coffee> coffees,
      List<GuestGroup> groups,
      Equipment equipment) {
    Event plain = Events.event(Events.serving(new Provision.Mean(), 2), coffees, groups, equipment);
    return new Event(
        name,
        plain.date(),
        plain.time(),
        new Print(units, paper, Window.USUAL),
        plain.serving(),
        plain.coffees(),
        plain.groups(),
        plain.equipment(),
        plain.kitchen(),
        plain.purchases(),
        plain.defaults(),
        plain.location());
  }

  /** The same coffee, brewed by another profile. */
  public static Coffee brewedBy(Coffee coffee, BrewProfile profile) {
    return new Coffee(
        coffee.key(),
        coffee.name(),
        coffee.decaf(),
        profile,
        coffee.concentrate(),
        coffee.caffeine(),
        coffee.bag(),
        coffee.location());
  }

  private static Coffee bagged(Coffee coffee) {
    return new Coffee(
        coffee.key(),
        coffee.name(),
        coffee.decaf(),
        coffee.profile(),
        coffee.concentrate(),
        coffee.caffeine(),
        Optional.of(
            new Coffee.Bag(
                Mass.ofGrams(1000),
                Optional.of(new Money(new BigDecimal("26.50"), Currency.getInstance("EUR"))),
                Mass.ZERO)),
        coffee.location());
  }

  private static GuestGroup at(GuestGroup group, String station, String from, String to) {
    return new GuestGroup(
        group.name(),
        group.guests(),
        group.cup(),
        group.strength(),
        group.coffees(),
        group.ice(),
        new GuestGroup.Service(
            Optional.of(new TimeWindow(LocalTime.parse(from), LocalTime.parse(to))),
            GuestGroup.Arrivals.EVEN,
            Optional.of(station),
            Optional.empty()),
        group.location());
  }

  private static Dispenser airpot(int count) {
    Dispenser plain = Events.dispenser("Airpot", count, 2.2, 40);
    return new Dispenser(
        plain.name(),
        count,
        plain.capacity(),
        plain.heel(),
        Optional.of(Duration.ofMinutes(60)),
        plain.coolingKelvinsFirstHour(),
        plain.cupsPerMinute(),
        plain.location());
  }
}
