package dev.urnwright.sheet;

import dev.urnwright.event.Supply;
import dev.urnwright.plan.Costs;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.wording.Saying;
import dev.urnwright.wording.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What can be handed to the client: what is served and its price, without a word of costs.
 *
 * @param served one row for each coffee of each group
 * @param guests who come
 * @param cups planned for them
 * @param extras food that goes with the coffee, with its allergens, when any is listed
 * @param price what they pay; its margin is not printed
 */
record QuoteSheet(
    List<Row> served, long guests, long cups, Optional<String> extras, PriceText price) {
  static Optional<QuoteSheet> of(Plan plan, Display display, Words words) {
    return plan.costs()
        .flatMap(costs -> costs.quote().map(quote -> of(plan, costs, quote, display, words)));
  }

  private static QuoteSheet of(
      Plan plan, Costs costs, Costs.Quote quote, Display display, Words words) {
    String extras =
        plan.event().purchases().supplies().stream()
            .filter(Supply::isFood)
            .map(
                supply ->
                    supply
                        .allergens()
                        .map(
                            each ->
                                words.text(
                                    Saying.of("quote.extra")
                                        .with("food", supply.name())
                                        .with("allergens", each)))
                        .orElse(supply.name()))
            .collect(Collectors.joining("; "));
    return new QuoteSheet(
        plan.groups().stream().map(group -> Row.of(plan, group, display, words)).toList(),
        costs.heads().guests(),
        costs.heads().cups(),
        Optional.of(extras).filter(text -> !text.isEmpty()),
        PriceText.of(quote, display));
  }

  /**
   * One coffee of one group.
   *
   * @param name whom it is for
   * @param coffee which coffee
   * @param cups how many
   * @param cup the cup's size
   * @param iced whether it is served over ice
   * @param service where and when
   */
  record Row(Name name, CoffeeTag coffee, int cups, String cup, boolean iced, ServiceText service) {
    private static Row of(Plan plan, GroupPlan group, Display display, Words words) {
      return new Row(
          new Name(group.group().name()),
          CoffeeTag.of(group.coffee()),
          group.demand().cups(),
          display.volume(group.group().cup().size()).toString(),
          group.group().ice().isPresent(),
          ServiceText.of(plan.event(), group.group(), words));
    }
  }
}
