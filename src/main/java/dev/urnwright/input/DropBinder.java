package dev.urnwright.input;

import dev.urnwright.event.TimeWindow;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Volume;
import dev.urnwright.round.Carafe;
import dev.urnwright.round.Drop;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Binds the rows of the table of sites. What a row leaves blank of leg, stop, window and address is
 * that of the row before it with the same site.
 */
final class DropBinder {
  private static final Field<Located<String>> SITE =
      Field.required("site", Located.of(Words.name("Mill House")), "the building or firm");
  private static final Field<String> ADDRESS =
      Field.optional("address", Words.name("14 Weir Street"), "in one line");
  private static final Field<String> FLOOR =
      Field.optional("floor", Words.name("3rd floor"), "or group within the site");
  private static final Field<Located<String>> LEG =
      Field.optional("leg", Located.of(Words.name("North bank")), "the leg that brings it");
  private static final Field<Integer> STOP =
      Field.optional("stop", Numbers.count("3", 1, 10_000), "its place on the way");
  private static final Field<TimeWindow> WINDOW =
      Field.optional("window", Times.A_WINDOW, "when it is expected");
  private static final Field<Located<String>> CARAFE =
      Field.optional("carafe", Located.of(Words.name("Carafe 2 l")), "the kind of carafe");
  private static final Field<Integer> CARAFES =
      Field.optional("carafes", Numbers.count("4", 0, 10_000), "how many");
  private static final Field<Integer> PEOPLE =
      Field.optional("people", Numbers.count("30", 1, 100_000), "how many drink, instead");
  private static final Field<Volume> CUP =
      Field.optional("cup", Amounts.volume("200 ml", "30 ml", "1 l"), "what a cup of theirs takes");
  private static final Field<Double> CUPS_EACH =
      Field.optional("cups_each", Numbers.number("1.5", "0.1", "20"), "cups for each of them");
  private static final Field<Located<String>> STRENGTH =
      Field.optional(
          "strength",
          Located.of(
              new Scalar<>(
                  "expected a percentage such as 1.30 %, or the name of a strength", text -> text)),
          "how strong");
  private static final Field<Located<String>> COFFEE =
      Field.optional("coffee", Located.of(Words.name("house")), "which coffee, by its short name");
  private static final Field<Set<DayOfWeek>> WEEKDAYS =
      Field.optional("weekdays", Weekdays.days(), "on which days");
  private static final Field<String> CONTACT =
      Field.optional("contact", Words.name("Reception, 5550 102"), "whom to ask for");
  private static final Field<String> NOTES =
      Field.optional("notes", Words.name("Back door"), "for the driver");

  static final Fields FIELDS =
      Fields.of(
          "row", SITE, ADDRESS, FLOOR, LEG, STOP, WINDOW, CARAFE, CARAFES, PEOPLE, CUP, CUPS_EACH,
          STRENGTH, COFFEE, WEEKDAYS, CONTACT, NOTES);

  private final Known known;
  private final Problems problems;
  private final Map<String, Before> ofSite = new HashMap<>();
  private final Map<List<String>, Integer> stops = new HashMap<>();
  private final Map<List<Object>, List<Drop>> alike = new HashMap<>();

  DropBinder(Known known, Problems problems) {
    this.known = known;
    this.problems = problems;
  }

  /**
   * What rows may name.
   *
   * @param legs of the round, those with problems too
   * @param carafeNames of its carafes, those with problems too
   * @param carafes without problems
   * @param coffees keys of its coffees
   * @param strengths by their names
   * @param days of rows that say none
   * @param cup where a row says none
   * @param display for the names of strengths given in percent
   */
  record Known(
      List<String> legs,
      List<String> carafeNames,
      List<Carafe> carafes,
      List<String> coffees,
      StrengthBinder strengths,
      Set<DayOfWeek> days,
      Volume cup,
      Display display) {}

  /**
   * What a row says or takes over from the one before it with the same site.
   *
   * @param leg of it
   * @param window of it
   * @param address of it
   */
  private record Before(
      Optional<String> leg, Optional<TimeWindow> window, Optional<String> address) {}

  /** What the rows ask for; those with problems are left out. */
  List<Drop> bind(List<Typed.Mapping> rows) {
    List<Drop> drops = new ArrayList<>();
    for (Typed.Mapping row : rows) {
      MapReader.of(Nodes.of(row), FIELDS, problems).flatMap(this::bind).ifPresent(drops::add);
    }
    return drops;
  }

  private Optional<Drop> bind(MapReader row) {
    Optional<String> site = row.read(SITE).map(Located::value);
    Optional<Before> before = site.map(ofSite::get);
    Optional<String> leg = leg(row, before);
    Optional<Integer> stop =
        row.read(STOP).or(() -> site.flatMap(s -> leg.map(l -> stops.get(List.of(s, l)))));
    Optional<TimeWindow> window =
        row.has(WINDOW) ? row.read(WINDOW) : before.flatMap(Before::window);
    Optional<String> address =
        row.has(ADDRESS) ? row.read(ADDRESS) : before.flatMap(Before::address);
    Optional<Drop.Content> content = content(row);
    Optional<Drop.Par> par = par(row, content);
    Set<DayOfWeek> days = row.has(WEEKDAYS) ? row.read(WEEKDAYS).orElse(Set.of()) : known.days();
    String floor = row.read(FLOOR).orElse("");
    Optional<String> contact = row.read(CONTACT);
    Optional<String> notes = row.read(NOTES);
    if (stop.isEmpty() && !row.has(STOP) && leg.isPresent() && site.isPresent()) {
      problems.at(row.start(), "this row has no stop", "expected its place on the way, such as 3");
    }
    if (site.isPresent()) {
      ofSite.put(site.get(), new Before(leg, window, address));
    }
    if (site.isEmpty() || leg.isEmpty() || stop.isEmpty() || content.isEmpty() || par.isEmpty()) {
      return Optional.empty();
    }
    sameStop(row, site.get(), leg.get(), stop.get());
    Drop drop =
        new Drop(
            new Drop.Place(site.get(), floor, address, contact, notes),
            new Drop.Stop(leg.get(), stop.get(), window),
            content.get(),
            par.get(),
            days,
            row.start());
    distinct(drop);
    return Optional.of(drop);
  }

  private Optional<String> leg(MapReader row, Optional<Before> before) {
    return !row.has(LEG) && before.isPresent()
        ? before.get().leg()
        : one(row, LEG, "leg", known.legs());
  }

  private Optional<Drop.Content> content(MapReader row) {
    Optional<String> carafe = one(row, CARAFE, "carafe", known.carafeNames());
    Optional<String> coffee = one(row, COFFEE, "coffee", known.coffees());
    Optional<Located<String>> wish = row.read(STRENGTH);
    if (!row.has(STRENGTH) && known.strengths().names().size() == 1) {
      String only = known.strengths().names().iterator().next();
      wish = Optional.of(new Located<>(only, row.start()));
    } else if (!row.has(STRENGTH)) {
      missing(row, "strength", List.copyOf(known.strengths().names()));
    }
    Optional<Strength> strength = wish.flatMap(w -> known.strengths().resolve(w, problems));
    if (carafe.isEmpty() || coffee.isEmpty() || strength.isEmpty()) {
      return Optional.empty();
    }
    String called = wish.orElseThrow().value();
    return Optional.of(
        new Drop.Content(
            coffee.get(),
            known.strengths().names().contains(called)
                ? called
                : known.display().strength(strength.get()).toString(),
            strength.get(),
            carafe.get()));
  }

  /** What is named, or the only one that there is. */
  private Optional<String> one(
      MapReader row, Field<Located<String>> field, String what, List<String> names) {
    if (!row.has(field) && names.size() == 1) {
      return Optional.of(names.get(0));
    }
    if (!row.has(field)) {
      missing(row, what, names);
      return Optional.empty();
    }
    return row.read(field)
        .filter(named -> names.isEmpty() || References.check(named, what, names, problems))
        .map(Located::value);
  }

  private void missing(MapReader row, String what, List<String> names) {
    if (!names.isEmpty()) {
      problems.at(
          row.start(), "this row has no " + what, "expected one of " + String.join(", ", names));
    }
  }

  private Optional<Drop.Par> par(MapReader row, Optional<Drop.Content> content) {
    row.oneOf(CARAFES, PEOPLE);
    Optional<Integer> carafes = row.read(CARAFES);
    Optional<Volume> cup = row.read(CUP);
    Optional<Double> each = row.read(CUPS_EACH);
    Optional<Drop.People> people =
        row.read(PEOPLE)
            .map(count -> new Drop.People(count, cup.orElse(known.cup()), each.orElse(1.0)));
    if (!row.has(CARAFES) && !row.has(PEOPLE)) {
      problems.at(
          row.start(),
          "this row doesn't say how much",
          "expected carafes, or people and their cup");
    }
    if (row.has(CARAFES)) {
      return carafes.map(count -> new Drop.Par(count, cup, Optional.empty()));
    }
    Optional<Carafe> kind =
        content.flatMap(
            c -> known.carafes().stream().filter(k -> k.name().equals(c.carafe())).findFirst());
    return people.flatMap(
        drinkers ->
            kind.map(k -> new Drop.Par(k.holding(drinkers.drunk()), cup, Optional.of(drinkers))));
  }

  private void sameStop(MapReader row, String site, String leg, int stop) {
    Integer first = stops.putIfAbsent(List.of(site, leg), stop);
    if (first != null && first != stop) {
      problems.at(
          row.valueOf(STOP),
          Words.quoted(site) + " is stop " + first + " of " + Words.plain(leg) + " in a row before",
          "expected one stop for a site");
    }
  }

  /** Two rows that could be one are a slip of the hand. */
  private void distinct(Drop drop) {
    List<Drop> same =
        alike.computeIfAbsent(
            List.of(
                drop.place().site(),
                drop.place().floor(),
                drop.stop().leg(),
                drop.content().coffee(),
                drop.content().strengthName(),
                drop.content().carafe()),
            key -> new ArrayList<>());
    same.stream()
        .filter(other -> !Collections.disjoint(other.days(), drop.days()))
        .findFirst()
        .ifPresent(
            other ->
                problems.at(
                    drop.location(),
                    Words.quoted(drop.place().inWords())
                        + " gets the same in a second row, on the same days",
                    "expected one row; the first is " + other.location().inWords()));
    same.add(drop);
  }
}
