package dev.urnwright.input;

import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Brewer;
import dev.urnwright.event.Print;
import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Dimension;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Measure;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.quantity.Volume;
import dev.urnwright.scale.Grind;
import dev.urnwright.scale.ScaleRequest;
import dev.urnwright.scale.ScaleRequest.Brewing;
import dev.urnwright.scale.ScaleRequest.Reference;
import dev.urnwright.scale.ScaleRequest.Target;
import dev.urnwright.scale.ScaleRequest.Trial;
import dev.urnwright.scale.ScaleRequest.Wish;
import dev.urnwright.wording.Saying;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds a file for {@code scale}. */
final class ScaleBinder {
  private static final Field<String> SCALE =
      Field.required(
          "scale", Words.name("Bar filter on the 6-litre brewer"), "what the sheet calls it");
  private static final Field<String> COFFEE =
      Field.optional("coffee", Words.name("Washed house filter"), "the coffee's name");
  private static final Field<Double> BULK_DENSITY =
      Field.optional(
          "bulk_density", Amounts.bulkDensity(), "of ground coffee, dry and loose, as it is dosed");

  private static final Field<Duration> TIME =
      Field.optional(
          "time",
          Amounts.duration("3 min 10 s", "10 s", "24 h"),
          "from the first water to the last drop");
  private static final Field<Mass> BLOOM =
      Field.optional(
          "bloom", Amounts.mass("40 g", "1 g", "10 kg"), "water poured first, to wet the grounds");
  private static final Field<Grind> GRIND =
      Field.optional(
          "grind",
          Words.choice(
              Arrays.stream(Grind.values()).map(Grind::word).toList(), List.of(Grind.values())),
          "how coarse");
  private static final Fields REFERENCE_FIELDS =
      ReferenceBinder.FIELDS.and(
          "reference", BasketBinder.DIAMETER, BasketBinder.SHAPE, TIME, BLOOM, GRIND);
  private static final Field<Node> REFERENCE =
      Field.required(
          "reference", Part.mapping(REFERENCE_FIELDS), "the brew that tastes right, weighed");

  private static final Field<Volume> FLOW =
      Field.optional("flow", Amounts.flow(), "how fast its water comes, when that is known or set");
  private static final Fields BREWER_FIELDS =
      BrewerBinder.FIELDS.and(
          "brewer", BasketBinder.DIAMETER, BasketBinder.SHAPE, BasketBinder.HEIGHT, FLOW);
  private static final Field<Node> BREWER =
      Field.required("brewer", Part.mapping(BREWER_FIELDS), "the brewer that is to make the same");

  private static final Field<Measure> MAKE_BEVERAGE =
      Field.optional(
          "beverage",
          Amounts.water("4 l", "10 g", "1000 kg"),
          "finished, all batches together; a full batch when left out");
  private static final Field<Strength> MAKE_STRENGTH =
      Field.optional(
          "strength", Amounts.strength("1.40 %"), "in the cup; the reference's when left out");
  private static final Fields MAKE_FIELDS = Fields.of("make", MAKE_BEVERAGE, MAKE_STRENGTH);
  private static final Field<Node> MAKE =
      Field.optional("make", Part.mapping(MAKE_FIELDS), "how much, and how strong");

  private static final Fields TRIAL_FIELDS = ReferenceBinder.FIELDS.and("trial", TIME);
  private static final Field<List<Node>> TRIALS =
      Field.optional("trials", Part.list(TRIAL_FIELDS), "brewed on that brewer, in their order");

  static final Fields FIELDS =
      Fields.of(
          "scale file",
          SCALE,
          COFFEE,
          LanguageBinder.LANGUAGE,
          PrintBinder.UNITS,
          PrintBinder.PAPER,
          PrintBinder.WINDOW,
          EquipmentBinder.SCALE_STEP,
          ServingBinder.FILLING_TEMPERATURE,
          ProfileBinder.METHOD,
          ProfileBinder.STEAM_LOSS,
          ProfileBinder.ABSORPTION,
          BULK_DENSITY,
          REFERENCE,
          BREWER,
          MAKE,
          TRIALS,
          MenuBinder.MENU);

  /** Between the published pairs of weight and volume, which give 0.38 to 0.43 g/ml. */
  private static final double USUAL_DENSITY = 0.40;

  private static final Temperature USUAL_FILLING = Temperature.ofCelsius(20);

  /** Beverage given by volume is measured as hot as it leaves the brewer. */
  private static final Temperature FRESH = Temperature.ofCelsius(88);

  private final Problems problems;

  ScaleBinder(Problems problems) {
    this.problems = problems;
  }

  /** What a file's root node asks for; empty exactly when there are problems. */
  Optional<ScaleRequest> bind(Node root) {
    return MapReader.of(root, FIELDS, problems).flatMap(this::bind).filter(r -> problems.none());
  }

  private Optional<ScaleRequest> bind(MapReader map) {
    Optional<String> name = map.read(SCALE);
    Defaults defaults = new Defaults();
    Optional<Locale> language = map.read(LanguageBinder.LANGUAGE);
    UnitSystem units = PrintBinder.units(map, language, defaults);
    Mass step = step(map, units, defaults);
    Binding binding = new Binding(problems, defaults, new Display(units, step), new Currencies());
    Print print = new PrintBinder(binding, language).bind(map);
    Temperature filling =
        defaults.fill(
            map.read(ServingBinder.FILLING_TEMPERATURE),
            USUAL_FILLING,
            "default-filling-temperature",
            () ->
                Saying.of("default.filling-temperature")
                    .with("temperature", binding.display().temperature(USUAL_FILLING)));
    FilledWater filled = new FilledWater(binding, filling);
    String coffee = map.read(COFFEE).or(() -> name).orElse("");
    Brewing brewing = brewing(map, coffee, binding);
    Optional<Reference> reference =
        map.read(REFERENCE).flatMap(node -> reference(node, binding, filled));
    Optional<Target> target = map.read(BREWER).flatMap(node -> target(node, binding, filled));
    Wish wish = wish(map, binding);
    List<Trial> trials = trials(map, binding, filled);
    map.read(MenuBinder.MENU).ifPresent(node -> new MenuBinder(problems).check(node));
    if (name.isEmpty() || reference.isEmpty() || target.isEmpty() || !problems.none()) {
      return Optional.empty();
    }
    return Optional.of(
        new ScaleRequest(
            name.get(),
            coffee,
            print,
            step,
            brewing,
            reference.get(),
            target.get(),
            wish,
            trials,
            defaults.notes(),
            map.valueOf(SCALE)));
  }

  /** A hand brew is weighed to the gram. */
  private static Mass step(MapReader map, UnitSystem units, Defaults defaults) {
    boolean us = units == UnitSystem.US;
    return defaults.fill(
        map.read(EquipmentBinder.SCALE_STEP),
        us ? Mass.ofOunces(0.1) : Mass.ofGrams(1),
        "default-scale-step",
        () ->
            Saying.of("default.scale-step")
                .with("step", us ? new Figure("0.1", "oz") : new Figure("1", "g")));
  }

  private static Brewing brewing(MapReader map, String coffee, Binding binding) {
    Defaults defaults = binding.defaults();
    return new Brewing(
        defaults.fill(
            coffee,
            map.read(ProfileBinder.METHOD),
            Method.PERCOLATION,
            "default-method",
            () -> Saying.of("default.method")),
        defaults.fill(
            coffee,
            map.read(ProfileBinder.STEAM_LOSS),
            Share.ofPercent(0),
            "default-steam-loss",
            () -> Saying.of("default.no-steam-loss")),
        map.read(ProfileBinder.ABSORPTION),
        defaults.fill(
            coffee,
            map.read(BULK_DENSITY),
            USUAL_DENSITY,
            "default-bulk-density",
            () ->
                Saying.of("default.bulk-density")
                    .with("density", new Figure("0.40", "g/ml"))
                    .with("least", Figure.bare("0.38"))
                    .with("most", Figure.bare("0.43"))));
  }

  private Optional<Reference> reference(Node node, Binding binding, FilledWater filled) {
    return MapReader.of(node, REFERENCE_FIELDS, problems)
        .flatMap(
            map -> {
              Optional<ReferenceBrew> brew =
                  new ReferenceBinder(binding, filled).bind("the reference", map);
              Optional<Reference> reference =
                  brew.map(
                      weighed ->
                          new Reference(
                              weighed,
                              BasketBinder.bind(map, "the reference", binding.defaults()),
                              map.read(TIME),
                              map.read(BLOOM),
                              map.read(GRIND),
                              map.start()));
              reference.ifPresent(
                  given ->
                      given
                          .bloom()
                          .filter(bloom -> bloom.compareTo(given.brew().water()) >= 0)
                          .ifPresent(
                              bloom ->
                                  problems.at(
                                      map.valueOf(BLOOM),
                                      "this bloom is all of the brew water, or more",
                                      "expected part of it, such as twice the dose")));
              return reference;
            });
  }

  private Optional<Target> target(Node node, Binding binding, FilledWater filled) {
    return MapReader.of(node, BREWER_FIELDS, problems)
        .flatMap(
            map -> {
              // Its circuit is of no matter here; whatever it is called is known.
              List<String> circuits =
                  map.read(BrewerBinder.CIRCUIT).map(Located::value).stream().toList();
              Optional<Brewer> brewer =
                  new BrewerBinder(binding, filled, circuits)
                      .bind(map, new Names("brewer", problems));
              return brewer.map(
                  machine ->
                      new Target(
                          machine,
                          BasketBinder.bind(map, machine.name(), binding.defaults()),
                          map.read(FLOW)));
            });
  }

  private Wish wish(MapReader map, Binding binding) {
    Optional<MapReader> make =
        map.read(MAKE).flatMap(node -> MapReader.of(node, MAKE_FIELDS, problems));
    Optional<Mass> beverage =
        make.flatMap(wish -> wish.read(MAKE_BEVERAGE)).map(measure -> beverage(measure, binding));
    if (beverage.isEmpty()) {
      binding.defaults().note("default-make", Saying.of("default.make"));
    }
    return new Wish(beverage, make.flatMap(wish -> wish.read(MAKE_STRENGTH)));
  }

  private static Mass beverage(Measure measure, Binding binding) {
    if (measure.dimension() == Dimension.MASS) {
      return measure.mass();
    }
    binding
        .defaults()
        .note(
            "beverage-by-volume",
            Saying.of("note.beverage-by-volume")
                .with("temperature", binding.display().temperature(FRESH)));
    return measure.volume().massOfWaterAt(FRESH);
  }

  private List<Trial> trials(MapReader map, Binding binding, FilledWater filled) {
    List<Trial> trials = new ArrayList<>();
    for (Node node : map.read(TRIALS).orElse(List.of())) {
      MapReader.of(node, TRIAL_FIELDS, problems)
          .flatMap(trial -> trial(trial, trials.size() + 1, binding, filled))
          .ifPresent(trials::add);
    }
    return trials;
  }

  private static Optional<Trial> trial(
      MapReader map, int number, Binding binding, FilledWater filled) {
    Location place = map.start();
    return new ReferenceBinder(binding, filled)
        .bind("trial " + number, map)
        .map(brew -> new Trial(brew, map.read(TIME), place));
  }
}
