package dev.urnwright.xlsx;

import dev.urnwright.brew.Blend;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;

/** Concentrate, bypass and ice of each coffee of each group, exact. */
final class DilutionSheet {
  private static final String CHECK =
      "IF([coffee.strength]*(1-[iceShare])>=[strength]*(1-1E-9),\""
          + Page.OK
          + "\",IF([coffee.strength]>=[strength],\"Ice outweighs the bypass: pour cooler or brew"
          + " stronger\",\"Stronger than the concentrate: lower the ratio\"))";

  private DilutionSheet() {}

  static Grid grid(Units units) {
    String mass = ", " + units.mass();
    return Grid.down(
        Layout.DILUTION,
        Page.FIRST_ITEM,
        List.of(
            new Column("name", "Group", Format.TEXT, 26),
            new Column("coffee", "Coffee", Format.TEXT, 24),
            new Column("cups", "Cups", Format.COUNT, 7),
            new Column("cupMass", "One cup" + mass, units.exact(), 9),
            new Column("drinks", "All cups and spill" + mass, units.exact(), 11),
            new Column("finished", "With heels: finished" + mass, units.exact(), 11),
            new Column("strength", "Wanted strength", Format.STRENGTH, 9),
            new Column("concentrate", "Concentrate" + mass, units.exact(), 13),
            new Column("bypass", "Bypass water" + mass, units.exact(), 11),
            new Column("iceShare", "Ice, of the cup", Format.EXTRACTION, 8),
            new Column("ice", "Ice that melts" + mass, units.exact(), 10),
            new Column("totalWater", "Total water to coffee", Format.PER_COFFEE, 9),
            new Column("caffeineLow", "Caffeine a cup, mg from", Format.COUNT, 11),
            new Column("caffeineHigh", "Caffeine a cup, mg to", Format.COUNT, 11),
            new Column("check", "Check", Format.TEXT, 30)));
  }

  static void write(Book book) {
    Grid grid = book.layout().dilution();
    Page page =
        Page.of(book, Layout.DILUTION, true)
            .widths(grid.columns().stream().map(Column::width).toList())
            .title(
                "Dilution",
                "What each group's beverage is made of, exact. What to weigh stands in Fills,"
                    + " rounded to the scale. Ice counts as bypass; total water to coffee compares"
                    + " the cup with an ordinary brew. Caffeine is information, not advice.")
            .header(grid)
            .freeze(1, Page.FIRST_ITEM);
    Plan plan = book.plan();
    for (int i = 0; i < plan.groups().size(); i++) {
      write(book, page, i);
    }
    page.markChecks(
        new CellRangeAddress(
            grid.firstRow(),
            grid.row("check", plan.groups().size() - 1),
            grid.columnNumber("check", 0),
            grid.columnNumber("check", 0)));
    for (String key : List.of("iceShare", "strength", "cupMass", "check")) {
      book.name(all(key), grid.fullRange(key, 0, plan.groups().size()));
    }
    page.finish();
  }

  /** The named range of one figure of all groups. */
  static String all(String key) {
    return "Group_" + key;
  }

  private static void write(Book book, Page page, int item) {
    Layout layout = book.layout();
    Units units = book.units();
    GroupPlan plan = book.plan().groups().get(item);
    Blend needed = plan.needed();
    Blend cup = plan.cup().blend();
    GuestGroup group = plan.group();
    double iceShare = cup.ice().grams() / cup.finished().grams();
    double drinks =
        units.of(cup.finished())
            * plan.demand().cups()
            * (1 + book.plan().event().serving().spill().fraction());
    page.line(layout.dilution().entry(item))
        .with("group", layout.groups().entry(item))
        .with("service", layout.service().entry(item))
        .with("coffee", layout.coffees().entry(FillOrder.coffee(book.plan(), item)))
        .text("name", group.name())
        .text("coffee", Words.coffee(plan.coffee()))
        .formula("cups", "[group.cups]", plan.demand().cups())
        .formula(
            "cupMass",
            "([group.cup]-[group.room])*" + WaterTable.densityAt("[group.servedAt]"),
            units.of(cup.finished()))
        .formula("drinks", "[cups]*[cupMass]*(1+" + Inputs.SPILL + ")", drinks)
        .formula(
            "finished",
            "[drinks]+[service.heelMass]*[service.fills]/(1-[iceShare])",
            units.of(needed.finished()))
        .formula("strength", "MAX(0.0001,[group.strength])", group.strength().fraction())
        .formula(
            "concentrate",
            "IF([coffee.strength]<=0,0,MIN([finished]*[strength]/[coffee.strength],[finished]*(1-[iceShare])))",
            units.of(needed.concentrate()))
        .formula("bypass", "[finished]*(1-[iceShare])-[concentrate]", units.of(needed.bypass()))
        .formula(
            "iceShare",
            "IF([group.pouredAt]=\"\",0,MAX(0,([group.pouredAt]-[group.servedAt])/("
                + ReferenceSheet.MELTING
                + "+[group.pouredAt]-"
                + WaterTable.FREEZING
                + ")))",
            iceShare)
        .formula("ice", "[finished]*[iceShare]", units.of(needed.ice()))
        .formula(
            "totalWater",
            "IF(OR([concentrate]<=0,[coffee.perDose]<=0),0,[coffee.ratio]+([bypass]+[ice])/[concentrate]*[coffee.perDose])",
            plan.cup().totalWaterToCoffee().gramsPerGram())
        .formula(
            "caffeineLow",
            caffeine(plan.coffee().caffeine().low().fraction() * LEAST_EXTRACTED),
            plan.cup().caffeine().lowMilligrams())
        .formula(
            "caffeineHigh",
            caffeine(plan.coffee().caffeine().high().fraction()),
            plan.cup().caffeine().highMilligrams())
        .check("check", CHECK);
  }

  /** The planner's: of the caffeine in the grounds, drip coffee extracts at least so much. */
  private static final double LEAST_EXTRACTED = 0.8;

  private static String caffeine(double content) {
    return "IF(OR([finished]<=0,[coffee.perDose]<=0),0,[cupMass]*[concentrate]/[finished]/[coffee.perDose]*"
        + ReferenceSheet.MILLIGRAMS
        + "*"
        + content
        + ")";
  }
}
