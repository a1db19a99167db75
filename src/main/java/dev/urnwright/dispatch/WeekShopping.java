package dev.urnwright.dispatch;

import dev.urnwright.plan.ShoppingLine;
import dev.urnwright.quantity.Amount;
import dev.urnwright.quantity.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What several days take to buy, as one list: the days' needs are added up first, and only then is
 * what there is taken off and the rest rounded to whole packs.
 *
 * @param days on which something is delivered, in their order
 * @param idle days on which nothing is delivered, in their order
 * @param lines what to buy; {@code times} counts the days
 */
public record WeekShopping(List<Day> days, List<LocalDate> idle, List<ShoppingLine> lines) {
  /** Copies the lists. */
  public WeekShopping {
    days = List.copyOf(days);
    idle = List.copyOf(idle);
    lines = List.copyOf(lines);
  }

  /**
   * One day.
   *
   * @param date when
   * @param sites that are served
   * @param carafes that are filled
   * @param batches that are brewed
   * @param lines what it takes, before anything is taken off
   */
  public record Day(LocalDate date, int sites, int carafes, int batches, List<ShoppingLine> lines) {
    /** Copies the list. */
    public Day {
      lines = List.copyOf(lines);
    }

    /** What a worked-out day takes. */
    public static Day of(Dispatch dispatch) {
      return new Day(
          dispatch.day().date(),
          dispatch.sites(),
          dispatch.carafes(),
          dispatch.brewing().batches().size(),
          dispatch.plan().shopping());
    }

    /** How much of an item it takes. */
    public Optional<Amount> amountOf(String item) {
      return lines.stream()
          .filter(line -> line.item().equals(item))
          .map(ShoppingLine::amount)
          .findFirst();
    }
  }

  /** The list of several days. */
  public static WeekShopping of(List<Day> days, List<LocalDate> idle) {
    Map<String, List<ShoppingLine>> items = new LinkedHashMap<>();
    days.forEach(
        day ->
            day.lines()
                .forEach(
                    line ->
                        items.computeIfAbsent(line.item(), item -> new ArrayList<>()).add(line)));
    return new WeekShopping(
        days, idle, items.values().stream().map(WeekShopping::together).toList());
  }

  private static ShoppingLine together(List<ShoppingLine> lines) {
    ShoppingLine first = lines.get(0);
    Amount needed = first.amount();
    for (ShoppingLine line : lines.subList(1, lines.size())) {
      needed = plus(needed, line.amount());
    }
    Amount missing = needed.beyond(first.onHand());
    return new ShoppingLine(
        first.what(),
        lines.size(),
        needed,
        first.onHand(),
        first
            .packs()
            .map(
                packs ->
                    new ShoppingLine.Packs(
                        missing.packsOf(packs.size()), packs.size(), packs.price())),
        first.supply());
  }

  private static Amount plus(Amount one, Amount other) {
    return switch (one.kind()) {
      case PIECES -> Amount.ofPieces(one.value() + other.value());
      case MASS -> Amount.of(one.mass().plus(other.mass()));
      case VOLUME -> Amount.of(one.volume().plus(other.volume()));
    };
  }

  /** What all that is to be bought costs, of what has a price; empty when nothing has. */
  public Optional<Money> cost() {
    return lines.stream()
        .flatMap(line -> line.packs().flatMap(ShoppingLine.Packs::cost).stream())
        .reduce(Money::plus);
  }

  /** What has to be bought at a price that nobody told. */
  public List<String> unpriced() {
    return lines.stream().filter(ShoppingLine::isUnpriced).map(ShoppingLine::item).toList();
  }
}
