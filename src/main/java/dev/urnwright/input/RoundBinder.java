package dev.urnwright.input;

import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.quantity.Volume;
import dev.urnwright.round.BrewRoom;
import dev.urnwright.round.Carafe;
import dev.urnwright.round.Change;
import dev.urnwright.round.Drop;
import dev.urnwright.round.Leg;
import dev.urnwright.round.Round;
import dev.urnwright.round.Rules;
import dev.urnwright.wording.Saying;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds a round, but for its sites, which stand in a table of their own. */
final class RoundBinder {
  private static final Field<String> ROUND =
      Field.required("round", Words.name("Ferry Lane coffee service"), "what the sheets call it");
  static final Field<Located<String>> SITES =
      Field.required(
          "sites",
          Located.of(Words.name("sites.csv")),
          "the table of sites beside this file, .csv or .xlsx");
  static final Field<Located<String>> RETURNS =
      Field.optional(
          "returns",
          Located.of(Words.name("returns.csv")),
          "the table of what came back, .csv or .xlsx");
  private static final Field<Set<DayOfWeek>> WEEKDAYS =
      Field.optional("weekdays", Weekdays.days(), "the days of rows that say none");
  private static final Field<Volume> CUP =
      Field.optional(
          "cup",
          Amounts.volume("200 ml", "30 ml", "1 l"),
          "what a cup takes where the table doesn't say");
  private static final Field<Duration> FRESH =
      Field.optional(
          "fresh",
          Amounts.duration("2 h", "0 s", "24 h"),
          "how long coffee must still be good when it is handed over");

  private static final Field<Integer> TUNE_DAYS =
      Field.optional(
          "days", Numbers.count("4", 1, 52), "of the same weekday that are looked back on");
  private static final Field<Integer> TUNE_LEAST =
      Field.optional("least", Numbers.count("2", 1, 52), "of them that must be known");
  private static final Field<Share> TUNE_MARGIN =
      Field.optional(
          "margin", Amounts.share("10 %", "0 %", "100 %"), "kept above the most that was poured");
  private static final Fields TUNE_FIELDS = Fields.of("tune", TUNE_DAYS, TUNE_LEAST, TUNE_MARGIN);
  private static final Field<Node> TUNE =
      Field.optional("tune", Part.mapping(TUNE_FIELDS), "how leftovers change the carafes");

  static final Fields FIELDS =
      Fields.of(
          "round",
          ROUND,
          LanguageBinder.LANGUAGE,
          PrintBinder.UNITS,
          PrintBinder.PAPER,
          PrintBinder.WINDOW,
          SITES,
          RETURNS,
          WEEKDAYS,
          ChangeBinder.EXCEPTIONS,
          LegBinder.LEGS,
          CarafeBinder.CARAFES,
          CoffeesBinder.COFFEE,
          CoffeesBinder.COFFEES,
          StrengthBinder.STRENGTHS,
          CUP,
          FRESH,
          TUNE,
          ServingBinder.BYPASS_TEMPERATURE,
          ServingBinder.FILLING_TEMPERATURE,
          BrewRoomBinder.BREWERS,
          EquipmentBinder.CIRCUITS,
          BrewRoomBinder.KITCHEN,
          HeaterBinder.HEATERS,
          PurchasesBinder.SUPPLIES,
          EquipmentBinder.SCALE_STEP,
          EquipmentBinder.JUG_MARK,
          UncertaintyBinder.UNCERTAINTY,
          BrewRoomBinder.TIME_ZONE);

  private static final Set<DayOfWeek> MONDAY_TO_FRIDAY =
      EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
  private static final Volume USUAL_CUP = Volume.ofMillilitres(200);
  private static final Duration USUAL_FRESH = Duration.ofHours(1);
  private static final Share USUAL_MARGIN = Share.ofPercent(10);

  private final Problems problems;

  RoundBinder(Problems problems) {
    this.problems = problems;
  }

  /**
   * A round without its sites.
   *
   * @param sites the table's name, when it can be told
   * @param returns the name of the table of returns, when given
   * @param known what rows may name
   * @param named sites and floors that exceptions name
   * @param round all but the sites; empty when it has problems
   */
  record Bound(
      Optional<Located<String>> sites,
      Optional<Located<String>> returns,
      DropBinder.Known known,
      List<ChangeBinder.Named> named,
      Optional<Round> round) {}

  /** What a file's root node asks for; empty where it is no mapping. */
  Optional<Bound> bind(Node root) {
    return MapReader.of(root, FIELDS, problems).map(this::bind);
  }

  private Bound bind(MapReader map) {
    Optional<String> name = map.read(ROUND);
    Defaults defaults = new Defaults();
    Optional<Locale> language = map.read(LanguageBinder.LANGUAGE);
    UnitSystem units = PrintBinder.units(map, language, defaults);
    Mass step = EquipmentBinder.scaleStep(map, units, defaults);
    Binding binding = new Binding(problems, defaults, new Display(units, step), new Currencies());
    BrewRoomBinder rooms = new BrewRoomBinder(binding);
    BrewRoom room = rooms.bind(map, language);
    StrengthBinder strengths = new StrengthBinder(problems);
    strengths.bindNames(map);
    CarafeBinder carafeBinder = new CarafeBinder(binding);
    List<Carafe> carafes = carafeBinder.bind(map);
    LegBinder legBinder = new LegBinder(problems);
    List<Leg> legs = legBinder.bind(map);
    Set<DayOfWeek> days =
        defaults.fill(
            map.read(WEEKDAYS),
            MONDAY_TO_FRIDAY,
            "default-weekdays",
            () -> Saying.of("round.default.weekdays"));
    Rules rules = rules(map, binding);
    ChangeBinder changeBinder = new ChangeBinder(problems);
    List<Change> changes = changeBinder.bind(map, legBinder.names(), rules.cup());
    Optional<Located<String>> sites = map.read(SITES);
    Optional<Located<String>> returns = map.read(RETURNS);
    Optional<Round> round =
        problems.none() && name.isPresent()
            ? Optional.of(
                new Round(
                    name.get(),
                    room,
                    carafes,
                    legs,
                    List.<Drop>of(),
                    changes,
                    rules,
                    defaults.notes(),
                    map.valueOf(ROUND)))
            : Optional.empty();
    return new Bound(
        sites,
        returns,
        new DropBinder.Known(
            legBinder.names(),
            carafeBinder.names(),
            carafes,
            rooms.coffeeKeys(),
            strengths,
            days,
            rules.cup(),
            binding.display()),
        changeBinder.named(),
        round);
  }

  private Rules rules(MapReader map, Binding binding) {
    Defaults defaults = binding.defaults();
    Volume cup =
        defaults.fill(
            map.read(CUP),
            USUAL_CUP,
            "default-cup",
            () -> Saying.of("round.default.cup").with("cup", binding.display().volume(USUAL_CUP)));
    Duration fresh =
        defaults.fill(
            map.read(FRESH), USUAL_FRESH, "default-fresh", () -> Saying.of("round.default.fresh"));
    Optional<MapReader> tune =
        map.read(TUNE).flatMap(node -> MapReader.of(node, TUNE_FIELDS, problems));
    int days = tune.flatMap(given -> given.read(TUNE_DAYS)).orElse(4);
    int least = tune.flatMap(given -> given.read(TUNE_LEAST)).orElse(Math.min(2, days));
    if (least > days) {
      problems.at(
          tune.orElseThrow().start(),
          "more days must be known than are looked back on",
          "expected 'least' to be " + days + " at most");
      least = days;
    }
    if (tune.isEmpty()) {
      defaults.note(
          "default-tune",
          Saying.of("round.default.tune").with("margin", binding.display().share(USUAL_MARGIN)));
    }
    return new Rules(
        fresh,
        cup,
        new Rules.Tuning(
            days, least, tune.flatMap(given -> given.read(TUNE_MARGIN)).orElse(USUAL_MARGIN)));
  }
}
