package dev.urnwright.input;

import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Volume;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Checks a day's menu: products out of one concentrate, with what is asked for by the hour. */
final class MenuBinder {
  static final Field<LocalDate> DATE = Field.optional("date", Times.A_DATE, "the day");
  static final Field<LocalTime> OPENS =
      Field.optional("opens", Times.A_TIME, "before this nothing can be switched on");

  static final Field<String> NAME =
      Field.required("name", Words.name("House pot"), "what the sheets call it");
  static final Field<Volume> CUP =
      Field.required("cup", Amounts.volume("240 ml", "10 ml", "5 l"), "what a cup holds");
  static final Field<Volume> ROOM =
      Field.optional("room", Amounts.volume("20 ml", "0 ml", "5 l"), "left free for milk");
  static final Field<Strength> STRENGTH =
      Field.required("strength", Amounts.strength("1.35 %"), "in the cup");
  static final Field<Node> CUPS =
      Field.required(
          "cups",
          Part.any(HourlyCups.EXPECTED, new Shape.NamedValues(HourlyCups.COUNT.shape())),
          "how many are asked for in the hour from each time on");
  static final Field<Located<String>> POT =
      Field.optional(
          "pot", Located.of(Words.name("Thermal server")), "the kind of pot that it stands in");
  static final Field<Duration> FRESH =
      Field.optional(
          "fresh",
          Amounts.duration("45 min", "5 min", "24 h"),
          "how long after brewing it may be poured");
  private static final Fields PRODUCT_FIELDS =
      Fields.of("product", NAME, CUP, ROOM, STRENGTH, OverIceBinder.OVER_ICE, CUPS, POT, FRESH);

  static final Field<List<Node>> PRODUCTS =
      Field.required(
          "products", Part.list(PRODUCT_FIELDS), "what is served out of the concentrate");
  static final Field<List<Node>> POTS =
      Field.required(
          "pots", Part.list(DispenserBinder.FIELDS), "kinds of airpot, server or carafe");
  private static final Fields FIELDS =
      Fields.of(
          "menu",
          DATE,
          OPENS,
          ServingBinder.OVERAGE,
          ServingBinder.SPILL,
          ServingBinder.SERVICE_TEMPERATURE,
          ServingBinder.BYPASS_TEMPERATURE,
          PRODUCTS,
          POTS);

  static final Field<Node> MENU =
      Field.optional("menu", Part.mapping(FIELDS), "a day's products, all out of one concentrate");

  private final Problems problems;

  MenuBinder(Problems problems) {
    this.problems = problems;
  }

  /** Finds what is wrong with a menu. */
  void check(Node node) {
    MapReader.of(node, FIELDS, problems).ifPresent(this::check);
  }

  private void check(MapReader menu) {
    menu.read(DATE);
    menu.read(OPENS);
    menu.read(ServingBinder.OVERAGE);
    menu.read(ServingBinder.SPILL);
    menu.read(ServingBinder.SERVICE_TEMPERATURE);
    menu.read(ServingBinder.BYPASS_TEMPERATURE);
    List<String> pots = new ArrayList<>();
    for (Node pot : menu.read(POTS).orElse(List.of())) {
      MapReader.of(pot, DispenserBinder.FIELDS, problems)
          .flatMap(map -> map.read(DispenserBinder.NAME))
          .ifPresent(pots::add);
    }
    Names names = new Names("product", problems);
    Map<String, Duration> fresh = new HashMap<>();
    for (Node product : menu.read(PRODUCTS).orElse(List.of())) {
      MapReader.of(product, PRODUCT_FIELDS, problems)
          .ifPresent(map -> check(map, names, pots, fresh));
    }
  }

  private void check(
      MapReader product, Names names, List<String> pots, Map<String, Duration> fresh) {
    product.read(NAME).ifPresent(name -> names.add(name, product.valueOf(NAME)));
    product.read(CUP);
    product.read(ROOM);
    product.read(STRENGTH);
    new OverIceBinder(problems).bind(product, ServingBinder.SERVICE_TEMPERATURE);
    product.read(CUPS).ifPresent(node -> HourlyCups.read(node, problems));
    Optional<Located<String>> pot = product.read(POT);
    pot.ifPresent(named -> References.check(named, "pot", pots, problems));
    Optional<Duration> limit = product.read(FRESH);
    if (limit.isPresent() && pot.isEmpty()) {
      problems.at(
          product.keyOf(FRESH),
          "it isn't known which pot this is for",
          "expected a pot beside it, such as pot: " + (pots.isEmpty() ? "Airpot" : pots.get(0)));
    }
    if (limit.isPresent() && pot.isPresent()) {
      Duration first = fresh.putIfAbsent(pot.get().value(), limit.get());
      if (first != null && !first.equals(limit.get())) {
        Location place = product.valueOf(FRESH);
        problems.at(
            place,
            "another product in the same kind of pot is fresh for another time",
            "expected one time for a kind of pot; list another kind for this product");
      }
    }
  }
}
