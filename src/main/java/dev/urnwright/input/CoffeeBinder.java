package dev.urnwright.input;

import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.CaffeineContent;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.ConcentrateWish;
import dev.urnwright.event.JournalName;
import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Share;
import dev.urnwright.wording.Saying;
import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds one coffee. */
final class CoffeeBinder {
  private static final Field<String> NAME =
      Field.optional("name", Words.name("Washed house filter"), "what sheets and labels call it");
  private static final Field<Boolean> DECAF =
      Field.optional("decaf", Words.yesOrNo(), "whether it is decaffeinated");
  private static final Field<CaffeineContent> CAFFEINE =
      Field.optional("caffeine", Amounts.caffeine(), "caffeine in the ground coffee");
  private static final Field<Mass> BAG =
      Field.optional("bag", Amounts.mass("1 kg", "10 g", "100 kg"), "what is in one bag");
  private static final Field<Located<Money>> PRICE =
      Field.optional("price", Currencies.price(), "what one bag costs");
  private static final Field<Mass> ON_HAND =
      Field.optional(
          "on_hand",
          Amounts.mass("500 g", "0 g", "100000 kg"),
          "of this coffee, that needn't be bought");

  static final Fields FIELDS =
      Fields.of(
          "coffee",
          NAME,
          DECAF,
          ProfileBinder.METHOD,
          ProfileBinder.REFERENCE,
          ProfileBinder.EXTRACTION,
          ProfileBinder.ABSORPTION,
          ProfileBinder.MEASURED,
          ProfileBinder.STEAM_LOSS,
          ConcentrateBinder.CONCENTRATE,
          CAFFEINE,
          BAG,
          PRICE,
          ON_HAND,
          JournalBinder.JOURNAL);

  private static final CaffeineContent USUAL_CAFFEINE =
      new CaffeineContent(Share.ofPercent(1.1), Share.ofPercent(1.3));
  private static final CaffeineContent DECAF_CAFFEINE =
      new CaffeineContent(Share.ofPercent(0.02), Share.ofPercent(0.1));

  private final Binding binding;
  private final ProfileBinder profiles;
  private final ConcentrateBinder concentrates;

  CoffeeBinder(Binding binding, FilledWater filled) {
    this.binding = binding;
    this.profiles = new ProfileBinder(binding, filled);
    this.concentrates = new ConcentrateBinder(binding);
  }

  Optional<Coffee> bind(String key, Location keyPlace, Node node) {
    return MapReader.of(node, FIELDS, binding.problems())
        .flatMap(map -> bind(key, map.has(NAME) ? map.valueOf(NAME) : keyPlace, map));
  }

  private Optional<Coffee> bind(String key, Location location, MapReader map) {
    String name =
        binding
            .defaults()
            .fill(
                key,
                map.read(NAME),
                key,
                "default-coffee-name",
                () -> Saying.of("default.coffee-name"));
    boolean decaf = decaf(key, name, map);
    Optional<BrewProfile> profile = profiles.bind(name, map);
    Optional<ConcentrateWish> concentrate = concentrates.bind(name, map);
    CaffeineContent caffeine = caffeine(name, decaf, map);
    Optional<Coffee.Bag> bag = bag(map);
    Optional<JournalName> journal = new JournalBinder(binding.problems()).bind(map);
    if (profile.isEmpty() || concentrate.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Coffee(
            key, name, decaf, profile.get(), concentrate.get(), caffeine, bag, journal, location));
  }

  private boolean decaf(String key, String name, MapReader map) {
    boolean named = (key + " " + name).toLowerCase(Locale.ROOT).contains("decaf");
    Optional<Boolean> given = map.read(DECAF);
    if (named && !map.has(DECAF)) {
      binding.defaults().noteOf(name, "decaf-by-name", () -> Saying.of("note.decaf-by-name"));
    }
    return given.orElse(named);
  }

  private CaffeineContent caffeine(String name, boolean decaf, MapReader map) {
    return decaf
        ? binding
            .defaults()
            .fill(
                name,
                map.read(CAFFEINE),
                DECAF_CAFFEINE,
                "default-caffeine-decaf",
                () ->
                    Saying.of("default.caffeine-decaf")
                        .with("least", new Figure("0.02", "%"))
                        .with("most", new Figure("0.1", "%")))
        : binding
            .defaults()
            .fill(
                name,
                map.read(CAFFEINE),
                USUAL_CAFFEINE,
                "default-caffeine",
                () ->
                    Saying.of("default.caffeine")
                        .with("least", new Figure("1.1", "%"))
                        .with("most", new Figure("1.3", "%")));
  }

  private Optional<Coffee.Bag> bag(MapReader map) {
    Optional<Mass> size = map.read(BAG);
    Optional<Money> price =
        map.read(PRICE).map(given -> binding.currencies().check(given, binding.problems()));
    Optional<Mass> onHand = map.read(ON_HAND);
    if (map.has(PRICE) && !map.has(BAG)) {
      binding
          .problems()
          .at(
              map.keyOf(PRICE),
              "this price is for no bag",
              "expected a bag beside it, such as bag: 1 kg");
    }
    if (map.has(ON_HAND) && !map.has(BAG)) {
      binding
          .problems()
          .at(
              map.keyOf(ON_HAND),
              "it isn't known how more of this coffee is bought",
              "expected a bag beside it, such as bag: 1 kg");
    }
    return size.map(mass -> new Coffee.Bag(mass, price, onHand.orElse(Mass.ZERO)));
  }
}
