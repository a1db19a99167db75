package dev.urnwright.xlsx;

import static java.util.Objects.requireNonNull;

import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Serving;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Temperature;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;

/**
 * Who drinks how much of what, one row for each coffee of a group. What a group's coffees share is
 * an input in its first row, and the last coffee gets the share that the others leave.
 */
final class GroupsSheet {
  /** The named range of its checks. */
  static final String CHECKS = "Guests_check";

  private static final double WARMEST_CELSIUS = 99.9;

  private final Book book;
  private final Page page;
  private final Grid grid;
  private final List<GroupPlan> groups;
  private final Map<String, Integer> firstRows = new HashMap<>();
  private final Map<String, List<Integer>> rows = new HashMap<>();

  private GroupsSheet(Book book, Page page) {
    this.book = book;
    this.page = page;
    this.grid = book.layout().groups();
    this.groups = book.plan().groups();
    for (int i = 0; i < groups.size(); i++) {
      String name = groups.get(i).group().name();
      firstRows.putIfAbsent(name, i);
      rows.computeIfAbsent(name, ignored -> new ArrayList<>()).add(i);
    }
  }

  static Grid grid(Units units) {
    return Grid.down(
        Layout.GROUPS,
        Page.FIRST_ITEM,
        List.of(
            new Column("name", "Group", Format.TEXT, 26),
            new Column("coffee", "Coffee", Format.TEXT, 24),
            new Column("headcount", "Guests", Format.COUNT, 9),
            new Column("drinkers", "Coffee drinkers", Format.SHARE, 10),
            new Column("share", "Of them this coffee", Format.SHARE, 10),
            new Column("cupsEach", "Cups each", Format.CUPS, 8),
            new Column("cup", "Cup, " + units.volume(), units.cups(), 8),
            new Column("room", "Room for milk, " + units.volume(), units.cups(), 9),
            new Column("servedAt", "Served at, " + units.temperature(), units.temperatures(), 9),
            new Column(
                "pouredAt", "Poured over ice at, " + units.temperature(), units.temperatures(), 10),
            new Column("strength", "Strength", Format.STRENGTH, 10),
            new Column("mean", "Cups on average", new Format("#,##0.0"), 9),
            new Column("cups", "Cups planned", Format.COUNT, 9),
            new Column("check", "Check", Format.TEXT, 26)));
  }

  /** The share of a group's drinkers who drink the coffee of this plan. */
  static Share share(GroupPlan plan) {
    return plan.group().coffees().stream()
        .filter(share -> share.coffee().equals(plan.coffee().key()))
        .findFirst()
        .orElseThrow()
        .share();
  }

  static void write(Book book) {
    Grid grid = book.layout().groups();
    Page page =
        Page.of(book, Layout.GROUPS, true)
            .widths(grid.columns().stream().map(Column::width).toList())
            .title(
                "Groups",
                "Who drinks how much of what, and the cups planned for them. Leave the pouring"
                    + " temperature empty for groups served hot.")
            .header(grid)
            .freeze(1, Page.FIRST_ITEM);
    GroupsSheet sheet = new GroupsSheet(book, page);
    for (int i = 0; i < sheet.groups.size(); i++) {
      sheet.write(i);
    }
    sheet.validate();
    page.finish();
  }

  private void write(int item) {
    GroupPlan plan = groups.get(item);
    GuestGroup group = plan.group();
    Units units = book.units();
    int first = requireNonNull(firstRows.get(group.name()));
    Line line =
        page.line(grid.entry(item))
            .with("first", grid.entry(first))
            .with("odds", book.layout().odds().entry(item))
            .text("name", group.name())
            .text("coffee", Words.coffee(plan.coffee()));
    shared(line, item == first, "headcount", group.guests().headcount());
    shared(line, item == first, "drinkers", group.guests().drinkers().fraction());
    shared(line, item == first, "cupsEach", group.guests().cupsEach());
    shared(line, item == first, "cup", units.of(group.cup().size()));
    shared(line, item == first, "room", units.of(group.cup().room()));
    shared(line, item == first, "strength", group.strength().fraction());
    share(line, item);
    temperatures(line, item == first, group);
    line.formula("mean", "[headcount]*[drinkers]*[share]*[cupsEach]", plan.demand().mean())
        .formula("cups", CUPS, plan.demand().cups())
        .check("check", CHECK);
  }

  private static final String CUPS =
      "IF("
          + OddsSheet.COUNTED
          + ",[odds.cups],-INT(1E-9-[mean]*(1+IF("
          + Inputs.PROVISION
          + "=\""
          + InputsSheet.Rule.OVERAGE.words
          + "\","
          + Inputs.OVERAGE
          + ",0))*(1-1E-9)))";

  private static final String CHECK =
      "IF([room]>=[cup],\"No room for coffee\",IF([strength]<=0,\"No strength\",IF([share]<0,\"Shares above 100 %\","
          + "IF(AND([pouredAt]<>\"\",[pouredAt]<[servedAt]),\"Ice can't warm it\",\"ok\"))))";

  private void shared(Line line, boolean isFirst, String key, double value) {
    if (isFirst) {
      line.input(key, value);
    } else {
      line.formula(key, "[first." + key + "]", value);
    }
  }

  private void share(Line line, int item) {
    List<Integer> others = requireNonNull(rows.get(groups.get(item).group().name()));
    double share = share(groups.get(item)).fraction();
    boolean isLast = others.get(others.size() - 1) == item;
    if (!isLast) {
      line.input("share", share);
    } else {
      StringBuilder rest = new StringBuilder("1");
      others.stream()
          .filter(other -> other != item)
          .forEach(other -> rest.append('-').append(grid.address("share", other)));
      line.formula("share", rest.toString(), share);
    }
  }

  private void temperatures(Line line, boolean isFirst, GuestGroup group) {
    Units units = book.units();
    Serving serving = book.plan().event().serving();
    double servedAt = units.of(group.cup().servedAt());
    if (!isFirst) {
      line.formula("servedAt", "[first.servedAt]", servedAt);
    } else if (group.cup().servedAt().equals(serving.serviceTemperature())) {
      line.inputFormula("servedAt", Inputs.SERVICE_TEMPERATURE, servedAt);
    } else {
      line.input("servedAt", servedAt);
    }
    if (!isFirst) {
      String template = "IF([first.pouredAt]=\"\",\"\",[first.pouredAt])";
      if (group.ice().isPresent()) {
        line.formula("pouredAt", template, units.of(group.ice().get().pouredAt()));
      } else {
        line.emptyFormula("pouredAt", template);
      }
    } else if (group.ice().isPresent()) {
      line.input("pouredAt", units.of(group.ice().get().pouredAt()));
    } else {
      line.blankInput("pouredAt");
    }
  }

  private void validate() {
    Units units = book.units();
    int n = groups.size();
    if (n == 0) {
      return;
    }
    double freezing = units.freezing();
    double warmest = units.of(Temperature.ofCelsius(WARMEST_CELSIUS));
    Validation temperature =
        Validation.decimal(
            freezing, warmest, "A temperature of liquid water in " + units.temperature());
    on("headcount", Validation.whole(0, 1_000_000, "Guests"));
    on("drinkers", Validation.percent(0, 100, "A share of the guests"));
    on("share", Validation.percent(0, 100, "A share of the coffee drinkers"));
    on("cupsEach", Validation.decimal(0, 1000, "Cups each: from 0 to 1000"));
    on("cup", Validation.amount(100_000, "A cup", units.volume()));
    on("room", Validation.amount(100_000, "Room in the cup", units.volume()));
    on("servedAt", temperature);
    on("pouredAt", temperature);
    on("strength", Validation.percent(0.01, 30, "A strength"));
    book.name(CHECKS, grid.fullRange("check", 0, n));
    page.markChecks(
        new CellRangeAddress(
            grid.firstRow(),
            grid.row("check", n - 1),
            grid.columnNumber("check", 0),
            grid.columnNumber("check", 0)));
  }

  private void on(String key, Validation validation) {
    validation.on(page.sheet(), grid, key, 0, groups.size());
  }
}
