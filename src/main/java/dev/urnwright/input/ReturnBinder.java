package dev.urnwright.input;

import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Volume;
import dev.urnwright.round.Drop;
import dev.urnwright.round.Return;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Binds the rows of the table of returns. Rows of which neither carafes nor a leftover is written
 * yet say nothing; those of sites that are no longer in the table are left out, and named.
 */
final class ReturnBinder {
  private static final Scalar<Volume> VOLUME = Amounts.volume("0.6 l", "0 ml", "1000 l");

  private static final Field<LocalDate> DATE =
      Field.required("date", Times.A_DATE, "the day of the delivery");
  private static final Field<Located<String>> SITE =
      Field.required("site", Located.of(Words.name("Mill House")), "as in the table of sites");
  private static final Field<Located<String>> FLOOR =
      Field.optional("floor", Located.of(Words.name("3rd floor")), "as in the table of sites");
  private static final Field<Located<String>> COFFEE =
      Field.optional("coffee", Located.of(Words.name("house")), "where a floor gets several");
  private static final Field<Located<String>> STRENGTH =
      Field.optional("strength", Located.of(Words.name("medium")), "where a floor gets several");
  private static final Field<Located<String>> CARAFE =
      Field.optional("carafe", Located.of(Words.name("Carafe 2 l")), "where a floor gets several");
  private static final Field<Integer> DELIVERED =
      Field.optional(
          "delivered", Numbers.count("4", 0, 10_000), "carafes, if not as the table says");
  private static final Field<Integer> BACK =
      Field.optional(
          "carafes_back", Numbers.count("4", 0, 10_000), "carafes taken back on that day");
  private static final Field<Volume> LEFTOVER =
      Field.optional(
          "leftover",
          new Scalar<>(
              VOLUME.shape(),
              text ->
                  text.strip().matches("0+([.,]0+)?")
                      ? Volume.ofLitres(0)
                      : VOLUME.parse().apply(text)),
          "what was left of this day's coffee");

  static final Fields FIELDS =
      Fields.of("row", DATE, SITE, FLOOR, COFFEE, STRENGTH, CARAFE, DELIVERED, BACK, LEFTOVER);

  private final Problems problems;
  private final Map<String, List<Drop>> sites = new LinkedHashMap<>();
  private final Map<List<Object>, Location> entered = new HashMap<>();
  private final List<Problem> strangers = new ArrayList<>();

  ReturnBinder(List<Drop> drops, Problems problems) {
    this.problems = problems;
    for (Drop drop : drops) {
      sites.computeIfAbsent(drop.place().site(), site -> new ArrayList<>()).add(drop);
    }
  }

  /** What came back; rows with problems are left out. */
  List<Return> bind(List<Typed.Mapping> rows) {
    List<Return> returns = new ArrayList<>();
    for (Typed.Mapping row : rows) {
      MapReader.of(Nodes.of(row), FIELDS, problems).flatMap(this::bind).ifPresent(returns::add);
    }
    return returns;
  }

  /** Rows of sites and floors that the table of sites doesn't have. */
  List<Problem> strangers() {
    return List.copyOf(strangers);
  }

  private Optional<Return> bind(MapReader row) {
    Optional<LocalDate> date = row.read(DATE);
    Optional<Located<String>> site = row.read(SITE);
    Optional<Integer> delivered = row.read(DELIVERED);
    Optional<Integer> back = row.read(BACK);
    Optional<Volume> leftover = row.read(LEFTOVER);
    if (date.isEmpty() || site.isEmpty() || (!row.has(BACK) && !row.has(LEFTOVER))) {
      return Optional.empty();
    }
    Optional<Drop> drop = drop(row, site.get(), date.get());
    return drop.flatMap(found -> once(row, found, date.get()))
        .map(
            found ->
                new Return(
                    date.get(),
                    found,
                    delivered.map(OptionalInt::of).orElse(OptionalInt.empty()),
                    back.orElse(0),
                    leftover,
                    row.start()));
  }

  private Optional<Drop> drop(MapReader row, Located<String> site, LocalDate date) {
    List<Drop> left = sites.getOrDefault(site.value(), List.of());
    if (left.isEmpty()) {
      stranger(site, "site", List.copyOf(sites.keySet()));
      return Optional.empty();
    }
    Optional<Located<String>> floor = row.read(FLOOR);
    List<Drop> here = left;
    if (floor.isPresent()) {
      here = where(left, drop -> drop.place().floor().equals(floor.get().value()));
      if (here.isEmpty()) {
        stranger(
            floor.get(),
            "floor of " + Words.plain(site.value()),
            left.stream().map(drop -> drop.place().floor()).distinct().toList());
        return Optional.empty();
      }
    }
    here = narrowed(row, COFFEE, here, drop -> drop.content().coffee());
    here = narrowed(row, STRENGTH, here, drop -> drop.content().strengthName());
    here = narrowed(row, CARAFE, here, drop -> drop.content().carafe());
    if (here.size() > 1) {
      List<Drop> thatDay = where(here, drop -> drop.days().contains(date.getDayOfWeek()));
      here = thatDay.isEmpty() ? here : thatDay;
    }
    if (here.size() == 1) {
      return Optional.of(here.get(0));
    }
    if (!here.isEmpty()) {
      problems.at(
          row.start(),
          "this may be any of " + here.size() + " rows of the table of sites",
          "expected a column that tells which: floor, coffee, strength or carafe");
    }
    return Optional.empty();
  }

  private List<Drop> narrowed(
      MapReader row, Field<Located<String>> field, List<Drop> drops, Function<Drop, String> what) {
    Optional<Located<String>> given = row.read(field);
    if (given.isEmpty() || drops.isEmpty()) {
      return drops;
    }
    List<Drop> left = where(drops, drop -> what.apply(drop).equals(given.get().value()));
    if (left.isEmpty()) {
      stranger(
          given.get(),
          field.name() + " there",
          drops.stream().map(what).distinct().collect(Collectors.toList()));
    }
    return left;
  }

  private void stranger(Located<String> named, String what, List<String> known) {
    strangers.add(
        new Problem(
            named.location(),
            "no " + what + " is called " + Words.quoted(named.value()),
            Nearest.among(named.value(), known)));
  }

  private Optional<Drop> once(MapReader row, Drop drop, LocalDate date) {
    Location first = entered.putIfAbsent(List.of(date, drop.location()), row.start());
    if (first == null) {
      return Optional.of(drop);
    }
    problems.at(
        row.start(),
        "what came back from "
            + Words.quoted(drop.place().inWords())
            + " on "
            + date
            + " is entered twice",
        "expected once; the first is " + first.inWords());
    return Optional.empty();
  }

  private static List<Drop> where(List<Drop> drops, Predicate<Drop> which) {
    return drops.stream().filter(which).toList();
  }
}
