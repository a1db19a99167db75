package dev.urnwright.sheet;

import dev.urnwright.dispatch.WeekShopping;
import dev.urnwright.plan.ShoppingLine;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Money;
import dev.urnwright.round.Round;
import dev.urnwright.wording.Saying;
import dev.urnwright.wording.Words;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What several days take to buy, as a sheet.
 *
 * @param heading of every page
 * @param days in their order
 * @param lines what to buy
 * @param cost of what has a price
 * @param unpriced what has none
 */
public record WeekView(
    Heading heading,
    List<DayLine> days,
    List<BuyLine> lines,
    Optional<String> cost,
    Optional<String> unpriced) {
  /**
   * Arranges a list.
   *
   * @param words in which it is written
   */
  public static WeekView of(Round round, WeekShopping week, Words words) {
    Display display = RoundHeading.display(round, words);
    List<LocalDate> dates =
        Stream.concat(week.days().stream().map(WeekShopping.Day::date), week.idle().stream())
            .sorted()
            .toList();
    return new WeekView(
        RoundHeading.of(
            round,
            words.text(
                Saying.of("round.week.days")
                    .with("first", DayWords.of(dates.get(0), words))
                    .with("last", DayWords.of(dates.get(dates.size() - 1), words))),
            words),
        week.days().stream()
            .map(
                day ->
                    new DayLine(
                        DayWords.of(day.date(), words), day.sites(), day.carafes(), day.batches()))
            .toList(),
        week.lines().stream().map(line -> BuyLine.of(line, display, words)).toList(),
        week.cost().map(money -> display.money(money).toString()),
        week.unpriced().isEmpty()
            ? Optional.empty()
            : Optional.of(String.join(", ", week.unpriced())));
  }

  /**
   * One day.
   *
   * @param date in words
   * @param sites served
   * @param carafes filled
   * @param batches brewed
   */
  record DayLine(String date, int sites, int carafes, int batches) {}

  /**
   * Something to buy.
   *
   * @param row what and how much
   * @param cost of it, when known
   */
  record BuyLine(ShoppingRow row, Optional<String> cost) {
    static BuyLine of(ShoppingLine line, Display display, Words words) {
      Optional<Money> cost = line.packs().flatMap(ShoppingLine.Packs::cost);
      return new BuyLine(
          ShoppingRow.of(line, display, words), cost.map(money -> display.money(money).toString()));
    }
  }
}
