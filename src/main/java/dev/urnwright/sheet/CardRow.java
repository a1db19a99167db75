package dev.urnwright.sheet;

import dev.urnwright.event.Supply;
import dev.urnwright.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Cards for the milk table, side by side, to cut out.
 *
 * @param cards one or two
 * @param half whether the second place stays empty
 */
record CardRow(List<Card> cards, boolean half) {
  private static final int ACROSS = 2;

  static List<CardRow> of(Plan plan) {
    List<Card> cards =
        plan.event().purchases().supplies().stream()
            .filter(Supply::isFood)
            .map(supply -> new Card(new Name(supply.name()), supply.allergens()))
            .toList();
    List<CardRow> rows = new ArrayList<>();
    for (int at = 0; at < cards.size(); at += ACROSS) {
      List<Card> row = cards.subList(at, Math.min(at + ACROSS, cards.size()));
      rows.add(new CardRow(row, row.size() < ACROSS));
    }
    return rows;
  }

  /**
   * One card.
   *
   * @param name of what stands there
   * @param allergens in the user's words, when told
   */
  record Card(Name name, Optional<String> allergens) {}
}
