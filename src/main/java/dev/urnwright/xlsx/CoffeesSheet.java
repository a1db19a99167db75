package dev.urnwright.xlsx;

import dev.urnwright.brew.BrewBalance;
import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.ConcentrateWish;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Needed;
import dev.urnwright.plan.Plan;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;

/** One column for each coffee: how it brews, what it takes, what the batches give. */
final class CoffeesSheet {
  private static final int LABEL_WIDTH = 46;
  private static final int COFFEE_WIDTH = 20;

  /** Past a strength of 30 % a brew would be more solids than water. */
  private static String check(Plan plan) {
    return "IF([perDose]<=0,\"The grounds keep all the water: raise the ratio\",IF([strength]>0.3,"
        + "\"Hardly any water: raise the ratio\",IF([least]>="
        + ReferenceSheet.NO_DOSE
        + ",\"No brewer takes the water for its"
        + " least dose\",IF(AND([steps]>0,[steps]<[least]),\"Less than the least dose of any"
        + " brewer\",IF([batchesBefore]+[batches]>"
        + BatchesSheet.rows(plan)
        + ",\"More batches than this sheet has rows\",IF([fillsBefore]+[fills]>"
        + FillsSheet.rows(plan)
        + ",\"More fills than this sheet has rows\",\""
        + Page.OK
        + "\"))))))";
  }

  /** What formulas of other sheets, or people, call by name. */
  private static final List<String> NAMED =
      List.of(
          "name",
          "key",
          "ratio",
          "absorption",
          "steam",
          "strength",
          "reading",
          "dose",
          "water",
          "concentrate",
          "bypass",
          "ice",
          "batches",
          "check",
          "immersion",
          "firstKnot",
          "knots",
          "steps",
          "perDose",
          "drawn",
          "each",
          "larger",
          "asPlanned",
          "fills",
          "batchesBefore",
          "fillsBefore",
          "beverageBefore");

  private final Book book;
  private final Page page;
  private final Layout layout;
  private final Units units;

  private CoffeesSheet(Book book, Page page) {
    this.book = book;
    this.page = page;
    this.layout = book.layout();
    this.units = book.units();
  }

  /** The named range of one figure of all coffees. */
  static String all(String key) {
    return "Coffee_" + key;
  }

  static Grid grid(Units units) {
    String mass = ", " + units.mass();
    return Grid.across(
        Layout.COFFEES,
        Page.FIRST_ITEM - 1,
        List.of(
            new Column("name", "Coffee", Format.TEXT, 0),
            new Column("key", "Short name", Format.TEXT, 0),
            new Column("method", "Method", Format.TEXT, 0),
            Column.heading("How it brews"),
            new Column("ratio", "Brew ratio", Format.RATIO, 0),
            new Column("why", "How the ratio came about", Format.TEXT, 0),
            new Column("wanted", "Wanted strength of the concentrate", Format.STRENGTH, 0),
            new Column("given", "Solids dissolved, of the dose", new Format("0.00%"), 0),
            new Column(
                "absorption",
                "Absorption, " + units.mass() + " per " + units.mass(),
                Format.PER_GRAM,
                0),
            new Column("steam", "Brew water lost as steam", Format.SHARE, 0),
            new Column("strength", "Strength of the concentrate", Format.STRENGTH, 0),
            new Column("extraction", "Extraction, before and after bypass", Format.EXTRACTION, 0),
            Column.heading("On the day"),
            new Column("reading", "Concentrate as read (empty: as planned)", Format.STRENGTH, 0),
            Column.heading("Needed, exact"),
            new Column("dose", "Dose" + mass, units.exact(), 0),
            new Column("water", "Brew water" + mass, units.exact(), 0),
            new Column("steamLost", "Lost as steam" + mass, units.exact(), 0),
            new Column("absorbed", "Absorbed by the grounds" + mass, units.exact(), 0),
            new Column("concentrate", "Concentrate" + mass, units.exact(), 0),
            new Column("bypass", "Bypass water" + mass, units.exact(), 0),
            new Column("ice", "Ice that melts in" + mass, units.exact(), 0),
            new Column("finished", "Finished beverage" + mass, units.exact(), 0),
            new Column("totalWater", "Total water to coffee", Format.PER_COFFEE, 0),
            new Column("cupToCoffee", "Cup to coffee (not a brew ratio)", Format.PER_COFFEE, 0),
            Column.heading("Brewed, in whole scale steps"),
            new Column("batches", "Batches", Format.COUNT, 0),
            new Column("brewedDose", "Dose of all batches" + mass, units.weighed(), 0),
            new Column("brewedWater", "Brew water of all batches" + mass, units.weighed(), 0),
            new Column("brewedBeverage", "Concentrate of all batches" + mass, units.exact(), 0),
            new Column("brewedStrength", "Its strength, as planned", Format.STRENGTH, 0),
            new Column("drawn", "Drawn by the fills" + mass, units.weighed(), 0),
            new Column("leftOver", "Left over" + mass, units.exact(), 0),
            new Column("check", "Check", Format.TEXT, 0),
            Column.heading("Behind the formulas"),
            new Column("immersion", "Immersion: 1, percolation: 0", Format.WHOLE, 0),
            new Column("perDose", "Beverage per dose", Format.DENSITY, 0),
            new Column("firstKnot", "Row of its first measured point", Format.WHOLE, 0),
            new Column("knots", "Measured points", Format.WHOLE, 0),
            new Column("knot", "Point at or before the ratio", Format.WHOLE, 0),
            new Column("way", "Way to the next point", Format.DENSITY, 0),
            new Column("steps", "Dose for the fills, scale steps", Format.COUNT, 0),
            new Column("least", "Least dose of any brewer, steps", Format.COUNT, 0),
            new Column("greatest", "Greatest dose of any brewer, steps", Format.COUNT, 0),
            new Column("each", "Each batch, steps at least", Format.COUNT, 0),
            new Column("larger", "Batches of one step more", Format.COUNT, 0),
            new Column("asPlanned", "Dose shared as planned: 1, equally: 0", Format.WHOLE, 0),
            new Column("fills", "Fills", Format.COUNT, 0),
            new Column("batchesBefore", "Batches of coffees before it", Format.COUNT, 0),
            new Column("fillsBefore", "Fills of coffees before it", Format.COUNT, 0),
            new Column(
                "beverageBefore",
                "Concentrate taken of coffees before it" + mass,
                units.exact(),
                0)));
  }

  static void write(Book book) {
    int coffees = book.plan().coffees().size();
    List<Integer> widths = new ArrayList<>(List.of(LABEL_WIDTH));
    widths.addAll(Collections.nCopies(Math.max(coffees, 2), COFFEE_WIDTH));
    Page page =
        Page.of(book, Layout.COFFEES, false)
            .widths(widths)
            .title(
                "Coffees",
                "One concentrate for each coffee, thinned for every group. Water added after"
                    + " brewing leaves the extraction as it is.")
            .header(book.layout().coffees());
    CoffeesSheet sheet = new CoffeesSheet(book, page);
    for (int i = 0; i < coffees; i++) {
      sheet.write(i);
    }
    sheet.finish(coffees);
    page.freeze(1, Page.FIRST_ITEM)
        .print(widths.size(), book.layout().coffees().row("check", 0) + 1)
        .finish();
  }

  private void write(int item) {
    CoffeePlan plan = book.plan().coffees().get(item);
    Line line = page.line(layout.coffees().entry(item));
    brews(line, plan);
    needed(line, plan, item);
    brewed(line, plan, item);
    line.check("check", check(book.plan()));
    new CoffeeWorkings(book, item).write(line);
  }

  private void brews(Line line, CoffeePlan plan) {
    BrewModel model = book.plan().brewing(plan);
    boolean constant = model.curve().knots().size() == 1;
    boolean immersion = plan.coffee().profile().method() == BrewProfile.Method.IMMERSION;
    double ratio = ratio(plan);
    line.text("name", Words.coffee(plan.coffee()))
        .text("key", plan.coffee().key())
        .text("method", immersion ? "Immersion" : "Percolation")
        .text("why", why(plan.coffee().concentrate(), constant))
        .input("absorption", model.absorption().gramsPerGram())
        .input("steam", model.steamLoss().fraction())
        .blankInput("reading");
    if (plan.coffee().concentrate() instanceof ConcentrateWish.ByStrength by && constant) {
      line.input("wanted", by.strength().fraction())
          .inputFormula(
              "ratio",
              "IF([wanted]<=0,0,IF([immersion]=1,[given]*(1/[wanted]-1),[given]/[wanted]+[absorption])"
                  + "/(1-[steam]))",
              ratio);
    } else {
      line.blank("wanted").input("ratio", ratio);
    }
    double dissolved = model.curve().at(plan.needed().brew().ratio()).fraction();
    if (constant) {
      line.input("given", dissolved);
    } else {
      line.formula("given", Extractions.at("[knot]", "[way]"), dissolved);
    }
    line.formula(
            "strength",
            "IF([perDose]<=0,0,[given]/IF([immersion]=1,[ratio]*(1-[steam])+[given],[perDose]))",
            plan.needed().brew().strength().fraction())
        .formula(
            "extraction",
            "[strength]*MAX(0,[perDose])",
            plan.needed().brew().extraction().fraction());
  }

  /** The planned ratio without the binary noise of a quotient: 13, not 12.999999999999998. */
  static double ratio(CoffeePlan plan) {
    return Math.rint(plan.needed().brew().ratio().gramsPerGram() * 1e10) / 1e10;
  }

  private static String why(ConcentrateWish wish, boolean constant) {
    if (wish instanceof ConcentrateWish.ByRatio) {
      return "As asked for";
    }
    if (wish instanceof ConcentrateWish.ByStrength) {
      return constant
          ? "Follows from the wanted strength"
          : "Found for the wanted strength; does not follow";
    }
    return wish instanceof ConcentrateWish.Between
        ? "Planner's choice: fewest batches; does not follow"
        : "Planner's choice; does not follow";
  }

  private void needed(Line line, CoffeePlan plan, int item) {
    Needed needed = plan.needed();
    BrewBalance brew = needed.brew();
    line.formula("concentrate", sum("concentrate", item), units.of(needed.blend().concentrate()))
        .formula("dose", "IF([perDose]<=0,0,[concentrate]/[perDose])", units.of(brew.dose()))
        .formula("water", "[dose]*[ratio]", units.of(brew.water()))
        .formula("steamLost", "[water]*[steam]", units.of(brew.steam()))
        .formula("absorbed", "[dose]*[absorption]", units.of(brew.absorbed()))
        .formula("bypass", sum("bypass", item), units.of(needed.blend().bypass()))
        .formula("ice", sum("ice", item), units.of(needed.blend().ice()))
        .formula("finished", "[concentrate]+[bypass]+[ice]", units.of(needed.blend().finished()))
        .formula(
            "totalWater",
            "IF([dose]=0,0,([water]+[bypass]+[ice])/[dose])",
            needed.totalWaterToCoffee())
        .formula("cupToCoffee", "IF([dose]=0,0,[finished]/[dose])", needed.cupToCoffee());
  }

  private String sum(String key, int item) {
    return "SUM(" + ofGroups(layout.dilution(), key, item) + ")";
  }

  private String ofGroups(Grid grid, String key, int item) {
    return ofGroups(book.plan(), grid, key, item);
  }

  /** A figure of all groups that drink a coffee; they stand together. */
  static String ofGroups(Plan plan, Grid grid, String key, int item) {
    int first =
        plan.coffees().stream().limit(item).mapToInt(coffee -> coffee.groups().size()).sum();
    return grid.fullRange(key, first, plan.coffees().get(item).groups().size());
  }

  private void brewed(Line line, CoffeePlan plan, int item) {
    BrewBalance brew = plan.brewed().brew();
    line.formula("brewedDose", ofBatches("dose", item), units.of(brew.dose()))
        .formula("brewedWater", ofBatches("water", item), units.of(brew.water()))
        .formula("brewedBeverage", ofBatches("beverage", item), units.of(brew.beverage()))
        .formula(
            "brewedStrength",
            "IF([brewedBeverage]<=0,0," + ofBatches("solids", item) + "/[brewedBeverage])",
            brew.strength().fraction())
        .formula(
            "drawn",
            "SUMPRODUCT("
                + ofGroups(layout.service(), "concentrateEach", item)
                + ","
                + ofGroups(layout.service(), "fills", item)
                + ")",
            units.of(plan.brewed().drawn()))
        .formula("leftOver", "MAX(0,[brewedBeverage]-[drawn])", units.of(plan.brewed().leftOver()));
  }

  private static String ofBatches(String key, int item) {
    return "SUMIF("
        + BatchesSheet.all("coffeeNumber")
        + ","
        + (item + 1)
        + ","
        + BatchesSheet.all(key)
        + ")";
  }

  private void finish(int coffees) {
    Grid grid = layout.coffees();
    for (String key : NAMED) {
      book.name(all(key), grid.fullRange(key, 0, coffees));
    }
    validate(
        "ratio", Validation.decimal(0.1, 1000, "A brew ratio: grams of water per gram"), coffees);
    validate("wanted", Validation.percent(0.1, 30, "A strength"), coffees);
    validate("given", Validation.percent(0, 100, "An extraction"), coffees);
    validate("absorption", Validation.decimal(0, 20, "An absorption: from 0 to 20"), coffees);
    validate("steam", Validation.percent(0, 99, "A steam loss"), coffees);
    validate(
        "reading", Validation.percent(0.01, 30, "A strength, as the refractometer reads"), coffees);
    int row = grid.row("check", 0);
    page.markChecks(
        new CellRangeAddress(row, row, grid.firstColumn(), grid.firstColumn() + coffees - 1));
  }

  private void validate(String key, Validation validation, int coffees) {
    validation.on(page.sheet(), layout.coffees(), key, 0, coffees);
  }
}
