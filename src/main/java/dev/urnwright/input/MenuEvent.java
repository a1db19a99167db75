package dev.urnwright.input;

import dev.urnwright.brew.BrewBalance;
import dev.urnwright.brew.BrewModel;
import dev.urnwright.brew.ExtractionCurve;
import dev.urnwright.event.BrewProfile;
import dev.urnwright.problem.Location;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Mass;
import dev.urnwright.scale.Scaled;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The event of a day's menu: the scaled brew as its coffee's reference, each product as a group
 * whose guests come by the hour. Its words keep their places in the file that they come from.
 */
final class MenuEvent {
  private static final Mass HUNDRED_GRAMS = Mass.ofGrams(100);
  private static final double SAME_RATIO = 1e-6;
  private static final int DECIMALS = 9;

  private final Scaled scaled;
  private final Typed.Mapping file;
  private final Typed.Mapping menu;
  private final Location place;
  private final Problems none;

  /** Takes up what was read without a problem. */
  MenuEvent(Scaled scaled, Typed.Mapping file, Typed menu) {
    this.scaled = scaled;
    this.file = file;
    this.menu = (Typed.Mapping) menu;
    this.place = menu.location();
    this.none = new Problems(place.file(), Document.SCALE);
  }

  /** The event in words. */
  Typed.Mapping typed() {
    List<Typed.Entry> event = new ArrayList<>();
    event.add(text("event", scaled.request().name() + ": the day's menu"));
    copy(menu, event, MenuBinder.DATE.name());
    copy(
        file,
        event,
        LanguageBinder.LANGUAGE.name(),
        PrintBinder.UNITS.name(),
        PrintBinder.PAPER.name(),
        PrintBinder.WINDOW.name(),
        ServingBinder.FILLING_TEMPERATURE.name());
    event.add(text("scale_step", grams(scaled.request().scaleStep())));
    copy(
        menu,
        event,
        ServingBinder.OVERAGE.name(),
        ServingBinder.SPILL.name(),
        ServingBinder.SERVICE_TEMPERATURE.name(),
        ServingBinder.BYPASS_TEMPERATURE.name());
    event.add(entry("coffee", coffee()));
    event.add(entry("groups", groups()));
    event.add(entry("brewers", brewers()));
    event.add(entry("dispensers", pots()));
    menu.at(MenuBinder.OPENS.name())
        .ifPresent(opens -> event.add(entry("kitchen", mapping(List.of(entry("opens", opens))))));
    return mapping(event);
  }

  private Typed coffee() {
    BrewModel model = scaled.model();
    BrewRatio ratio = scaled.recipe().brew().ratio();
    BrewBalance brew = model.brew(HUNDRED_GRAMS, ratio.waterFor(HUNDRED_GRAMS));
    List<Typed.Entry> coffee = new ArrayList<>();
    coffee.add(text("name", scaled.request().coffee()));
    coffee.add(
        text(
            "method",
            scaled.request().brewing().method() == BrewProfile.Method.PERCOLATION
                ? "percolation"
                : "immersion"));
    coffee.add(text("steam_loss", number(model.steamLoss().percent()) + " %"));
    coffee.add(
        entry(
            "reference",
            mapping(
                List.of(
                    text("dose", grams(brew.dose())),
                    text("water", grams(brew.water())),
                    text("beverage", grams(brew.beverage())),
                    text("strength", number(brew.strength().percent()) + " %")))));
    List<Typed> more = new ArrayList<>();
    for (ExtractionCurve.Knot knot : model.curve().knots()) {
      if (model.curve().knots().size() > 1
          && Math.abs(knot.ratio().gramsPerGram() - ratio.gramsPerGram()) > SAME_RATIO) {
        more.add(
            mapping(
                List.of(
                    text("ratio", number(knot.ratio().gramsPerGram())),
                    text("extraction", number(knot.extraction().percent()) + " %"))));
      }
    }
    if (!more.isEmpty()) {
      coffee.add(entry("measured", new Typed.Listing(more, place)));
    }
    return mapping(coffee);
  }

  private Typed groups() {
    List<Typed> groups = new ArrayList<>();
    for (Typed product : listing(menu, MenuBinder.PRODUCTS.name())) {
      Typed.Mapping said = (Typed.Mapping) product;
      HourlyCups cups =
          HourlyCups.read(Nodes.of(said.at(MenuBinder.CUPS.name()).orElseThrow()), none)
              .orElseThrow();
      List<Typed.Entry> group = new ArrayList<>();
      copy(said, group, MenuBinder.NAME.name());
      group.add(text("headcount", String.valueOf(cups.total())));
      group.add(text("drinkers", "100 %"));
      group.add(text("cups_each", "1"));
      copy(
          said,
          group,
          MenuBinder.CUP.name(),
          MenuBinder.ROOM.name(),
          MenuBinder.STRENGTH.name(),
          OverIceBinder.OVER_ICE.name());
      group.add(text("serve", cups.first() + "-" + cups.end()));
      group.add(entry("arrivals", shares(cups)));
      said.at(MenuBinder.POT.name()).ifPresent(pot -> group.add(entry("dispenser", pot)));
      groups.add(new Typed.Mapping(group, said.location()));
    }
    return new Typed.Listing(groups, place);
  }

  private Typed shares(HourlyCups cups) {
    List<Typed> shares = new ArrayList<>();
    for (int each : cups.each()) {
      shares.add(new Typed.Text(number(100.0 * each / cups.total()) + " %", place));
    }
    return new Typed.Listing(shares, place);
  }

  private Typed brewers() {
    Typed.Mapping machine = (Typed.Mapping) file.at("brewer").orElseThrow();
    Set<String> known = Set.copyOf(BrewerBinder.FIELDS.names());
    List<Typed.Entry> said =
        machine.entries().stream()
            .filter(entry -> known.contains(entry.key()))
            .filter(entry -> !entry.key().equals(BrewerBinder.CIRCUIT.name()))
            .toList();
    return new Typed.Listing(
        List.of(new Typed.Mapping(said, machine.location())), machine.location());
  }

  /** The pots, each kind good for no longer than what stands in it is fresh. */
  private Typed pots() {
    Map<String, Typed> fresh = new HashMap<>();
    for (Typed product : listing(menu, MenuBinder.PRODUCTS.name())) {
      Typed.Mapping said = (Typed.Mapping) product;
      Optional<Typed> limit = said.at(MenuBinder.FRESH.name());
      Optional<Typed> pot = said.at(MenuBinder.POT.name());
      if (limit.isPresent() && pot.isPresent()) {
        fresh.put(word(pot.get()), limit.get());
      }
    }
    List<Typed> pots = new ArrayList<>();
    for (Typed pot : listing(menu, MenuBinder.POTS.name())) {
      Typed.Mapping said = (Typed.Mapping) pot;
      Optional<Typed> limit =
          said.at(DispenserBinder.NAME.name()).map(name -> fresh.get(word(name)));
      List<Typed.Entry> entries = new ArrayList<>(said.entries());
      if (limit.isPresent()) {
        entries.removeIf(entry -> entry.key().equals(DispenserBinder.HOLD.name()));
        entries.add(entry(DispenserBinder.HOLD.name(), limit.get()));
      }
      pots.add(new Typed.Mapping(entries, said.location()));
    }
    return new Typed.Listing(pots, place);
  }

  private static String word(Typed typed) {
    return typed instanceof Typed.Text text ? text.value() : "";
  }

  private static List<Typed> listing(Typed.Mapping mapping, String key) {
    return mapping
        .at(key)
        .map(typed -> typed instanceof Typed.Listing list ? list.parts() : List.<Typed>of())
        .orElse(List.of());
  }

  private static void copy(Typed.Mapping from, List<Typed.Entry> to, String... keys) {
    for (String key : keys) {
      from.entries().stream().filter(entry -> entry.key().equals(key)).forEach(to::add);
    }
  }

  private Typed.Entry text(String key, String value) {
    return entry(key, new Typed.Text(value, place));
  }

  private Typed.Entry entry(String key, Typed value) {
    return new Typed.Entry(key, place, value);
  }

  private Typed.Mapping mapping(List<Typed.Entry> entries) {
    return new Typed.Mapping(entries, place);
  }

  private static String grams(Mass mass) {
    return number(mass.grams()) + " g";
  }

  /** Exact enough for the planner, and plain. */
  private static String number(double value) {
    return BigDecimal.valueOf(value)
        .setScale(DECIMALS, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
