package dev.urnwright.sheet;

import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.StrengthAccount;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.wording.Words;
import java.util.List;

/**
 * What makes the strengths of one coffee unsure.
 *
 * @param coffee which
 * @param group the one that drinks the most of it
 * @param plusMinus how far off its cup may be, at k = 2, either way
 * @param sources of that, the largest part first
 * @param advice what to improve first
 */
record HowSure(
    CoffeeTag coffee, Name group, Figure plusMinus, List<SourceRow> sources, String advice) {
  /** One for each coffee of which something is unsure. */
  static List<HowSure> of(Plan plan, Certainty certainty, Display display, Words words) {
    return plan.coffees().stream()
        .map(certainty::of)
        .filter(account -> !account.entries().isEmpty())
        .map(account -> of(account, display, words))
        .toList();
  }

  private static HowSure of(StrengthAccount account, Display display, Words words) {
    return new HowSure(
        CoffeeTag.of(account.group().coffee()),
        new Name(account.group().group().name()),
        display.strength(account.cup().plusMinus()),
        account.entries().stream().map(entry -> SourceRow.of(entry, display, words)).toList(),
        account.first().map(words::text).orElse(""));
  }

  /**
   * One source.
   *
   * @param what in words
   * @param uncertainty its standard uncertainty
   * @param part of the variance
   * @param without how far off the cup might be without it
   */
  record SourceRow(String what, Figure uncertainty, String part, Figure without) {
    static SourceRow of(StrengthAccount.Entry entry, Display display, Words words) {
      return new SourceRow(
          words.text(entry.source().saying()),
          display.uncertainty(entry.amount(), entry.source().unit()),
          ChanceText.of(entry.share().fraction(), words),
          display.strength(entry.without().plusMinus()));
    }
  }
}
