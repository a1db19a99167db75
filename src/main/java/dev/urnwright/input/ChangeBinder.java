package dev.urnwright.input;

import dev.urnwright.quantity.UnreadableException;
import dev.urnwright.quantity.Volume;
import dev.urnwright.round.Change;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds the days that aren't ordinary. */
final class ChangeBinder {
  private static final String EXPECTED_DATES =
      "expected a day such as 2027-04-05, or days such as 2027-12-24 to 2027-12-31";

  private static final Field<Dates> DATE =
      Field.required("date", new Scalar<>(EXPECTED_DATES, Dates::parse), "the day, or days");
  private static final Field<Located<String>> LEG =
      Field.optional(
          "leg",
          Located.of(Words.name("North bank").naming("legs")),
          "the stops of this leg alone");
  private static final Field<Located<String>> SITE =
      Field.optional("site", Located.of(Words.name("Mill House")), "this site alone");
  private static final Field<Located<String>> FLOOR =
      Field.optional("floor", Located.of(Words.name("3rd floor")), "this floor of it alone");
  private static final Field<String> CLOSED =
      Field.optional("closed", Words.name("holiday"), "why nothing is delivered");
  private static final Field<Integer> CARAFES =
      Field.optional("carafes", Numbers.count("6", 0, 10_000), "how many carafes instead");
  private static final Field<Integer> PEOPLE =
      Field.optional("people", Numbers.count("40", 0, 100_000), "how many people instead");

  private static final Fields FIELDS =
      Fields.of("exception", DATE, LEG, SITE, FLOOR, CLOSED, CARAFES, PEOPLE);

  static final Field<List<Node>> EXCEPTIONS =
      Field.optional("exceptions", Part.list(FIELDS), "days that aren't as usual");

  private final Problems problems;
  private final List<Named> named = new ArrayList<>();

  ChangeBinder(Problems problems) {
    this.problems = problems;
  }

  /**
   * What exceptions name, to be looked up when the table is known.
   *
   * @param site of it
   * @param floor of it, when given
   */
  record Named(Located<String> site, Optional<Located<String>> floor) {}

  List<Named> named() {
    return List.copyOf(named);
  }

  /**
   * The changes.
   *
   * @param legs that may be named
   * @param cup what a cup takes where the table doesn't say
   */
  List<Change> bind(MapReader round, List<String> legs, Volume cup) {
    List<Change> changes = new ArrayList<>();
    for (Node node : round.read(EXCEPTIONS).orElse(List.of())) {
      MapReader.of(node, FIELDS, problems)
          .flatMap(map -> change(map, legs, cup))
          .ifPresent(changes::add);
    }
    return changes;
  }

  private Optional<Change> change(MapReader map, List<String> legs, Volume cup) {
    Optional<Dates> dates = map.read(DATE);
    Optional<Located<String>> leg = map.read(LEG);
    leg.ifPresent(given -> References.check(given, "leg", legs, problems));
    Optional<Located<String>> site = map.read(SITE);
    Optional<Located<String>> floor = map.read(FLOOR);
    if (floor.isPresent() && site.isEmpty() && !map.meant(SITE)) {
      problems.at(
          map.keyOf(FLOOR), "it isn't known whose floor this is", "expected a site beside it");
    }
    site.ifPresent(given -> named.add(new Named(given, floor)));
    List<Change.What> whats = new ArrayList<>();
    map.read(CLOSED).ifPresent(reason -> whats.add(new Change.What.Closed(reason)));
    map.read(CARAFES).ifPresent(count -> whats.add(new Change.What.Carafes(count)));
    map.read(PEOPLE).ifPresent(count -> whats.add(new Change.What.People(count, cup)));
    map.oneOf(CLOSED, CARAFES);
    map.oneOf(CLOSED, PEOPLE);
    map.oneOf(CARAFES, PEOPLE);
    boolean said =
        map.has(CLOSED)
            || map.has(CARAFES)
            || map.has(PEOPLE)
            || map.meant(CLOSED)
            || map.meant(CARAFES)
            || map.meant(PEOPLE);
    if (!said) {
      problems.at(
          map.start(),
          "this exception changes nothing",
          "expected closed: with a reason, or carafes: or people: with a number");
    }
    return whats.size() == 1
        ? dates.map(
            days ->
                new Change(
                    days.from(),
                    days.to(),
                    new Change.Whom(
                        leg.map(Located::value),
                        site.map(Located::value),
                        floor.map(Located::value)),
                    whats.get(0),
                    map.start()))
        : Optional.empty();
  }

  /**
   * One day or several.
   *
   * @param from the first
   * @param to the last
   */
  private record Dates(LocalDate from, LocalDate to) {
    static Dates parse(String text) {
      String[] parts = text.strip().split("\\s+to\\s+", 2);
      LocalDate first = Times.date(parts[0]);
      Dates dates = new Dates(first, parts.length == 1 ? first : Times.date(parts[1]));
      if (dates.to().isBefore(dates.from())) {
        throw new UnreadableException(
            Words.quoted(text) + " ends before it begins", EXPECTED_DATES);
      }
      return dates;
    }
  }
}
