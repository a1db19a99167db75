package dev.urnwright.sheet;

import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.StrengthAccount;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
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
  static List<HowSure> of(Plan plan, Certainty certainty, Display display) {
    return plan.coffees().stream()
        .map(certainty::of)
        .filter(account -> !account.entries().isEmpty())
        .map(account -> of(account, display))
        .toList();
  }

  private static HowSure of(StrengthAccount account, Display display) {
    return new HowSure(
        CoffeeTag.of(account.group().coffee()),
        new Name(account.group().group().name()),
        display.strength(account.cup().plusMinus()),
        account.entries().stream().map(entry -> SourceRow.of(entry, display)).toList(),
        account.advice());
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
    static SourceRow of(StrengthAccount.Entry entry, Display display) {
      return new SourceRow(
          entry.source().words(),
          display.uncertainty(entry.amount(), entry.source().unit()),
          display.chance(entry.share().fraction()),
          display.strength(entry.without().plusMinus()));
    }
  }
}
