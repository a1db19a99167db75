package dev.urnwright.xlsx;

import dev.urnwright.event.Dispenser;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;

/** Which dispensers serve each coffee of each group, and how often they are filled. */
final class ServiceSheet {
  private static final String ONE_VESSEL = "One vessel of your own";

  private ServiceSheet() {}

  static Grid grid(Units units) {
    return Grid.down(
        Layout.SERVICE,
        Page.FIRST_ITEM,
        List.of(
            new Column("name", "Group", Format.TEXT, 26),
            new Column("coffee", "Coffee", Format.TEXT, 24),
            new Column("dispenser", "Dispenser", Format.TEXT, 22),
            new Column("capacity", "Capacity, " + units.volume(), units.volumes(), 10),
            new Column("heel", "Heel, " + units.volume(), units.volumes(), 8),
            new Column("filledAt", "Filled at, " + units.temperature(), units.temperatures(), 8),
            new Column("drawn", "Drawn, " + units.volume(), units.volumes(), 10),
            new Column("least", "Fills at least, by the hold, as planned", Format.COUNT, 11),
            new Column("taps", "Side by side, as planned", Format.COUNT, 10),
            new Column("fills", "Fills", Format.COUNT, 7),
            new Column("heelMass", "Heel of one, " + units.mass(), units.exact(), 10),
            new Column(
                "concentrateEach", "Concentrate in each, " + units.mass(), units.weighed(), 12),
            new Column(
                "finishedEach", "Finished in each, exact, " + units.mass(), units.exact(), 12),
            new Column("check", "Check", Format.TEXT, 24)));
  }

  /** The named range of one figure of all groups. */
  static String all(String key) {
    return "Service_" + key;
  }

  static void write(Book book) {
    Grid grid = book.layout().service();
    int groups = book.plan().groups().size();
    Page page =
        Page.of(book, Layout.SERVICE, true)
            .widths(grid.columns().stream().map(Column::width).toList())
            .title(
                "Dispensers",
                "How many fills follows from what is drawn, the capacity, the heel and room for"
                    + " rounding. Which kind serves whom stays as planned, unless you choose"
                    + " another; whether enough of them are free is for the planner to check."
                    + (book.isTimed()
                        ? " There are as many fills at least as keep any from being held too long, and"
                            + " as many side by side as the guests need: these numbers follow"
                            + " neither the dispenser nor the hours."
                        : ""))
            .header(grid)
            .freeze(1, Page.FIRST_ITEM);
    List<Integer> least = book.plan().leastFills();
    for (int i = 0; i < groups; i++) {
      write(book, page, i, least.get(i));
    }
    if (!book.plan().event().equipment().dispensers().isEmpty()) {
      Validation.listed(ReferenceSheet.DISPENSERS, "A dispenser of the Equipment sheet")
          .on(page.sheet(), grid, "dispenser", 0, groups);
    }
    page.markChecks(
        new CellRangeAddress(
            grid.firstRow(),
            grid.row("check", groups - 1),
            grid.columnNumber("check", 0),
            grid.columnNumber("check", 0)));
    for (String key :
        List.of(
            "name",
            "dispenser",
            "capacity",
            "filledAt",
            "heelMass",
            "concentrateEach",
            "finishedEach",
            "check")) {
      book.name(all(key), grid.fullRange(key, 0, groups));
    }
    page.finish();
  }

  private static void write(Book book, Page page, int item, int least) {
    Layout layout = book.layout();
    Units units = book.units();
    GroupPlan plan = book.plan().groups().get(item);
    Fill fill = plan.fills().get(0);
    Temperature filledAt =
        plan.group()
            .ice()
            .map(GuestGroup.OverIce::pouredAt)
            .orElse(book.plan().event().serving().bypassTemperature());
    Line line =
        page.line(layout.service().entry(item))
            .with("group", layout.groups().entry(item))
            .with("dilution", layout.dilution().entry(item))
            .text("name", plan.group().name())
            .text("coffee", Words.coffee(plan.coffee()));
    dispenser(book, line, fill.dispenser());
    Mass heel = fill.dispenser().map(d -> d.heel().massOfWaterAt(filledAt)).orElse(Mass.ZERO);
    double fills = plan.fills().size();
    double iceShare = plan.cup().blend().ice().grams() / plan.cup().blend().finished().grams();
    double drawn =
        (units.of(plan.needed().finished()) - units.of(heel) * fills / (1 - iceShare))
            * (1 - iceShare)
            / units.waterDensityAt(filledAt);
    String density = WaterTable.densityAt("[filledAt]");
    line.number("least", least)
        .number("taps", plan.taps())
        .formula(
            "filledAt",
            "IF([group.pouredAt]=\"\"," + Inputs.BYPASS_TEMPERATURE + ",[group.pouredAt])",
            units.of(filledAt))
        .formula("drawn", "[dilution.drinks]*(1-[dilution.iceShare])/" + density, drawn)
        .formula("heelMass", "[heel]*" + density, units.of(heel))
        .formula(
            "fills",
            fill.dispenser().isEmpty()
                ? "IF([drawn]<=0,0,1)"
                : "IF(OR([drawn]<=0,"
                    + usable(density)
                    + "<=0),0,MAX([least],"
                    + "[taps]*("
                    + Formulas.ceiling("[drawn]/" + usable(density) + "/[taps]")
                    + ")))",
            fills)
        .formula(
            "concentrateEach",
            "IF([fills]=0,0,"
                + Formulas.up("[dilution.concentrate]/[fills]", Inputs.SCALE_STEP)
                + ")",
            units.of(fill.blend().concentrate()))
        .formula(
            "finishedEach",
            "IF([fills]=0,0,[dilution.finished]/[fills])",
            units.of(plan.needed().finished()) / fills)
        .check(
            "check",
            fill.dispenser().isEmpty()
                ? "\"" + Page.OK + "\""
                : "IF("
                    + usable(density)
                    + "<=1E-6,\"Too small for its heel\","
                    + held(book, fill.dispenser().get())
                    + "\""
                    + Page.OK
                    + "\""
                    + (book.isTimed() ? "))" : ")"));
  }

  private static void dispenser(Book book, Line line, Optional<Dispenser> dispenser) {
    Units units = book.units();
    if (dispenser.isEmpty()) {
      line.text("dispenser", ONE_VESSEL).blank("capacity").number("heel", 0);
      return;
    }
    Grid grid = book.layout().dispensers();
    int kinds = book.plan().event().equipment().dispensers().size();
    line.inputText("dispenser", dispenser.get().name())
        .formula("capacity", found(grid, "capacity", kinds), units.of(dispenser.get().capacity()))
        .formula("heel", found(grid, "heel", kinds), units.of(dispenser.get().heel()));
  }

  /** By an exact comparison, since a lookup would take * and ? in a name for wildcards. */
  private static String found(Grid grid, String key, int kinds) {
    StringBuilder formula = new StringBuilder("0");
    for (int i = kinds - 1; i >= 0; i--) {
      formula.insert(
          0,
          "IF([dispenser]=" + grid.fullAddress("name", i) + "," + grid.fullAddress(key, i) + ",");
      formula.append(')');
    }
    return formula.toString();
  }

  /** On a clock, only the planned kind is known to hold long enough. */
  private static String held(Book book, Dispenser planned) {
    int kind = book.plan().event().equipment().dispensers().indexOf(planned);
    return book.isTimed()
        ? "IF([dispenser]<>"
            + book.layout().dispensers().fullAddress("name", kind)
            + ",\"Not the planned kind: plan again\","
        : "";
  }

  /** What can be drawn from one fill: rounding may add two steps. */
  private static String usable(String density) {
    return "([capacity]-[heel]-2*" + Inputs.SCALE_STEP + "/" + density + ")";
  }
}
