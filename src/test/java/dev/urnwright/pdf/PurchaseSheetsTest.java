package dev.urnwright.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.input.EventReader;
import dev.urnwright.plan.Costs;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.plan.ShoppingLine;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Shopping, packing list, milk table, costs and quote. */
class PurchaseSheetsTest {
  private static final Display DISPLAY = new Display(UnitSystem.METRIC, Mass.ofGrams(5));

  private static Plan plan(String sample) {
    return new Planner()
        .plan(new EventReader().read(Path.of("samples", sample)).value().orElseThrow())
        .value()
        .orElseThrow();
  }

  /** The pages that begin with that title. */
  private static List<String> pages(Plan plan, String title) throws IOException {
    try (PrintedPages pages = PrintedPages.of(out -> PrepSheets.write(plan, out))) {
      return pages.lines().stream()
          .filter(text -> text.matches("(?s)(.*page \\d+ of \\d+ )?" + title + ".*"))
          .toList();
    }
  }

  @Test
  void theQuoteShowsThePriceAndNoCosts() throws IOException {
    Plan plan = plan("harvest-supper.yaml");
    Costs costs = plan.costs().orElseThrow();
    Costs.Quote price = costs.quote().orElseThrow();
    String quote = pages(plan, "Quote").get(0);
    assertTrue(quote.contains(DISPLAY.money(price.total()).toString()), quote);
    assertTrue(quote.contains(DISPLAY.money(price.tax().orElseThrow().amount()).toString()), quote);
    assertFalse(quote.matches("(?s).*page \\d+ of.*"), "it is handed out alone: " + quote);
    assertTrue(quote.contains("Oat drink (contains: oats (gluten))"), quote);
    for (String inner : List.of("Cost", "cost", "argin", "Two people", "×")) {
      assertFalse(quote.contains(inner), inner + " is in: " + quote);
    }
    for (Costs.Line line : costs.others()) {
      assertFalse(quote.contains(DISPLAY.money(line.cost()).toString()), quote);
    }
    assertFalse(quote.contains(DISPLAY.money(costs.total()).toString()), quote);
    assertFalse(quote.contains(DISPLAY.money(price.profit()).toString()), quote);
  }

  @Test
  void theShoppingListSaysWhatToBuyAndTheCostSheetWhatItCosts() throws IOException {
    Plan plan = plan("harvest-supper.yaml");
    String shopping = pages(plan, "Shopping").get(0);
    String costs = pages(plan, "Costs").get(0);
    for (ShoppingLine line : plan.shopping()) {
      assertTrue(shopping.contains(line.item() + " "), line.item());
      assertTrue(shopping.contains(DISPLAY.amount(line.amount())), line.item());
      ShoppingLine.Packs packs = line.packs().orElseThrow();
      String buy = packs.count() + " × " + DISPLAY.amount(packs.size());
      assertEquals(packs.count() > 0, shopping.contains(buy), buy);
      assertTrue(costs.contains(DISPLAY.money(packs.cost().orElseThrow()).toString()), line.item());
    }
    assertTrue(shopping.contains("allergens: oats (gluten)"), shopping);
    assertTrue(costs.contains("= cost / (100 % − margin)"), costs);
    String cards = pages(plan, "Cards for the milk table").get(0);
    assertTrue(cards.contains("contains: oats (gluten)"), cards);
  }

  @Test
  void withoutPricesForEverythingThereIsNoQuote() throws IOException {
    Plan plan = plan("corner-cafe.yaml");
    assertEquals(List.of(), pages(plan, "Quote"));
    assertEquals(List.of(), pages(plan, "Cards for the milk table"));
    String packing = pages(plan, "Packing list").get(0);
    assertTrue(packing.contains("Thermal server"), packing);
  }
}
