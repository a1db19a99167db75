package dev.urnwright.xlsx;

import dev.urnwright.brew.BrewBalance;
import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.BrewProfile;
import dev.urnwright.plan.CoffeePlan;
import java.util.List;

/** What stands under a coffee's figures to help its formulas: the curve, the split, the order. */
final class CoffeeWorkings {
  private final Book book;
  private final int item;
  private final CoffeePlan plan;

  CoffeeWorkings(Book book, int item) {
    this.book = book;
    this.item = item;
    this.plan = book.plan().coffees().get(item);
  }

  void write(Line line) {
    BrewModel model = book.plan().brewing(plan);
    BrewBalance brew = plan.needed().brew();
    boolean immersion = plan.coffee().profile().method() == BrewProfile.Method.IMMERSION;
    int knots = model.curve().knots().size();
    int firstKnot = 1 + knotsBefore();
    line.number("immersion", immersion ? 1 : 0)
        .formula("perDose", "[ratio]*(1-[steam])-[absorption]", model.beveragePerDose(brew.ratio()))
        .number("firstKnot", firstKnot)
        .number("knots", Math.max(2, knots))
        .formula(
            "knot",
            Extractions.row(Integer.toString(item + 1), "[ratio]", "[knots]", "[firstKnot]"),
            firstKnot + Extractions.pieceAt(model.curve(), CoffeesSheet.ratio(plan)))
        .formula(
            "way",
            Extractions.way("[knot]", "[ratio]"),
            Extractions.wayAt(model.curve(), CoffeesSheet.ratio(plan)));
    BatchShares shares = BatchShares.of(book, plan);
    batches(line, shares);
    before(line);
  }

  private void batches(Line line, BatchShares shares) {
    int kinds = book.plan().event().equipment().brewers().size();
    line.formula(
        "steps",
        "IF([perDose]<=0,0," + Formulas.stepsUp("[drawn]/[perDose]", Inputs.SCALE_STEP) + ")",
        shares.steps());
    if (kinds == 0) {
      line.number("least", 0).formula("greatest", "MAX(1,[steps])", shares.greatest());
    } else {
      line.formula(
              "least",
              "MIN(" + book.layout().ranges().fullRange("usable", item * kinds, kinds) + ")",
              shares.least())
          .formula(
              "greatest",
              "MAX(" + book.layout().ranges().fullRange("reach", item * kinds, kinds) + ")",
              shares.greatest());
    }
    line.number("asPlanned", shares.equal() ? 0 : 1);
    if (shares.equal()) {
      line.formula(
          "batches", "IF([greatest]=0,0,ROUNDUP([steps]/[greatest],0))", plan.batches().size());
    } else {
      int count = plan.batches().size();
      line.formula("batches", "IF([steps]<=0,0," + count + ")", count);
    }
    line.formula(
            "each",
            "IF([batches]=0,0,IF(INT([steps]/[batches])>=[least],INT([steps]/[batches]),"
                + "MAX([least],ROUNDUP([steps]/[batches],0))))",
            shares.each())
        .formula(
            "larger",
            "IF([batches]=0,0,IF(INT([steps]/[batches])>=[least],MOD([steps],[batches]),0))",
            shares.larger());
  }

  private void before(Line line) {
    line.formula(
        "fills",
        "SUM(" + CoffeesSheet.ofGroups(book.plan(), book.layout().service(), "fills", item) + ")",
        plan.fills().size());
    if (item == 0) {
      line.number("batchesBefore", 0).number("fillsBefore", 0).number("beverageBefore", 0);
      return;
    }
    List<CoffeePlan> earlier = book.plan().coffees().subList(0, item);
    line.with("prior", book.layout().coffees().entry(item - 1))
        .formula(
            "batchesBefore",
            "[prior.batchesBefore]+[prior.batches]",
            earlier.stream().mapToInt(coffee -> coffee.batches().size()).sum())
        .formula(
            "fillsBefore",
            "[prior.fillsBefore]+[prior.fills]",
            earlier.stream().mapToInt(coffee -> coffee.fills().size()).sum())
        .formula(
            "beverageBefore",
            "[prior.beverageBefore]+[prior." + (book.isTimed() ? "drawn" : "brewedBeverage") + "]",
            earlier.stream().mapToDouble(coffee -> book.units().of(book.taken().of(coffee))).sum());
  }

  private int knotsBefore() {
    return book.plan().coffees().stream()
        .limit(item)
        .mapToInt(coffee -> Math.max(2, book.plan().brewing(coffee).curve().knots().size()))
        .sum();
  }
}
