package dev.urnwright.xlsx;

import dev.urnwright.event.GuestGroup.Guests;
import dev.urnwright.event.Provision;
import dev.urnwright.plan.GroupPlan;
import java.util.ArrayList;
import java.util.List;

/**
 * How many cups are enough at the service level, exactly.
 *
 * <p>Drinkers are Binomial(n, p). Each takes ⌊c⌋ cups, and one more with probability c − ⌊c⌋. When
 * c is whole, or below 1, the answer is a binomial quantile. Otherwise the sheet climbs: starting
 * below all possible numbers of cups, it adds 2^m, …, 4, 2, 1 whenever the cups are still not
 * enough after that step, where the chance that x cups are enough is
 *
 * <p>Σ over k drinkers of P(k of n drink) · P(at most x − ⌊c⌋·k of them take one more).
 *
 * <p>Drinkers more than nine standard deviations (and 30) from the mean are left out; they change
 * no probability by 1e-15.
 */
final class OddsSheet {
  /** A formula's condition: cups are counted by service level. */
  static final String COUNTED =
      Inputs.PROVISION + "=\"" + InputsSheet.Rule.SERVICE_LEVEL.words + "\"";

  /** As the planner: cups each that differ by less from a whole number are whole. */
  private static final double NOISE = 1e-9;

  private static final int FEWEST_STEPS = 12;
  private static final int MOST_STEPS = 20;
  private static final int ROOM_TO_GROW = 8;

  private OddsSheet() {}

  static Grid grid(List<GroupPlan> groups) {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("name", "Group", Format.TEXT, 24));
    columns.add(new Column("guests", "Guests", Format.COUNT, 9));
    columns.add(new Column("drinks", "Drink this coffee", Format.SHARE, 9));
    columns.add(new Column("whole", "Whole cups each", Format.WHOLE, 8));
    columns.add(new Column("more", "Chance of one more", new Format("0.###"), 9));
    columns.add(new Column("most", "Cups at most", Format.COUNT, 9));
    columns.add(new Column("climb", "Counted here: 1", Format.WHOLE, 9));
    columns.add(new Column("fewest", "Drinkers counted from", Format.COUNT, 10));
    columns.add(new Column("last", "Drinkers counted to", Format.COUNT, 10));
    for (int step = 1 << (steps(groups) - 1); step >= 1; step /= 2) {
      columns.add(new Column("step" + step, "+" + step, Format.COUNT, 8));
    }
    columns.add(new Column("cups", "Cups that are enough", Format.COUNT, 9));
    return Grid.down(Layout.ODDS, Page.FIRST_ITEM, columns);
  }

  static void write(Book book) {
    Grid grid = book.layout().odds();
    Page page =
        Page.of(book, Layout.ODDS, true)
            .widths(grid.columns().stream().map(Column::width).toList())
            .title(
                "How many cups are enough",
                "For counting cups by service level. Each guest drinks with the probability shown,"
                    + " takes the whole cups, and one more with the chance shown. When cups each is"
                    + " neither whole nor below 1, the columns +… climb to the smallest number of"
                    + " cups that is enough with the wanted probability.")
            .header(grid)
            .freeze(1, Page.FIRST_ITEM);
    List<GroupPlan> groups = book.plan().groups();
    for (int i = 0; i < groups.size(); i++) {
      write(
          book,
          page.line(grid.entry(i)).with("group", book.layout().groups().entry(i)),
          groups.get(i));
    }
    page.finish();
  }

  private static void write(Book book, Line line, GroupPlan plan) {
    Guests guests = plan.group().guests();
    double drinks = guests.drinkers().fraction() * GroupsSheet.share(plan).fraction();
    double whole = Math.floor(guests.cupsEach() + NOISE);
    double more = guests.cupsEach() - whole < NOISE ? 0 : guests.cupsEach() - whole;
    boolean counted = book.plan().event().serving().provision() instanceof Provision.ServiceLevel;
    boolean climbs = counted && more > 0 && whole > 0;
    int n = guests.headcount();
    double spread = Math.sqrt(n * drinks * (1 - drinks));
    line.text("name", plan.group().name())
        .formula("guests", "[group.headcount]", n)
        .formula("drinks", "[group.drinkers]*[group.share]", drinks)
        .formula("whole", "INT([group.cupsEach]+1E-9)", whole)
        .formula("more", "IF([group.cupsEach]-[whole]<1E-9,0,[group.cupsEach]-[whole])", more)
        .formula("most", "[guests]*([whole]+([more]>0))", n * (whole + (more > 0 ? 1 : 0)))
        .formula(
            "climb", "IF(AND(" + COUNTED + ",[guests]>0,[more]>0,[whole]>0),1,0)", climbs ? 1 : 0)
        .formula(
            "fewest",
            "MAX(1,INT([guests]*[drinks]-9*SQRT([guests]*[drinks]*(1-[drinks])))-30)",
            Math.max(1, Math.floor(n * drinks - 9 * spread) - 30))
        .formula(
            "last",
            "MIN([guests],INT([guests]*[drinks]+9*SQRT([guests]*[drinks]*(1-[drinks])))+31)",
            Math.min(n, Math.floor(n * drinks + 9 * spread) + 31));
    String enough = climb(line, plan.demand().cups(), climbs);
    Cached cups =
        new Cached(line)
            .formula(
                "cups",
                "IF(NOT("
                    + COUNTED
                    + "),\"\",IF([climb]=1,"
                    + enough
                    + "+1,IF([more]=0,[whole]*"
                    + quantile("[drinks]")
                    + ","
                    + quantile("([drinks]*[more])")
                    + ")))");
    if (counted) {
      cups.number("cups", plan.demand().cups());
    } else {
      cups.text("cups", "");
    }
  }

  /** Writes the steps; returns the cell that holds the greatest number that is not enough. */
  private static String climb(Line line, int cups, boolean climbs) {
    String before = "-1";
    double planned = -1;
    for (Column column : line.entry().grid().columns()) {
      if (!column.key().startsWith("step")) {
        continue;
      }
      int step = Integer.parseInt(column.key().substring("step".length()));
      String there = "(" + before + "+" + step + ")";
      Cached cached =
          new Cached(line)
              .formula(
                  column.key(),
                  "IF([climb]=0,\"\","
                      + before
                      + "+IF("
                      + there
                      + ">[most],0,"
                      + step
                      + "*("
                      + chance(there)
                      + "<"
                      + Inputs.SERVICE_LEVEL
                      + ")))");
      planned += planned + step < cups ? step : 0;
      if (climbs) {
        cached.number(column.key(), planned);
      } else {
        cached.text(column.key(), "");
      }
      before = "[" + column.key() + "]";
    }
    return before;
  }

  private static String quantile(String chance) {
    return "IF("
        + chance
        + ">=1,[guests],IF(OR([guests]<=0,"
        + chance
        + "<=0),0,CRITBINOM([guests],"
        + chance
        + ","
        + Inputs.SERVICE_LEVEL
        + ")))";
  }

  /** The probability that no more than that many cups are wanted. */
  private static String chance(String cups) {
    String drinkers = "(ROW(INDEX($A:$A,[fewest]):INDEX($A:$A,[last])))";
    String left = "(" + cups + "-[whole]*" + drinkers + ")";
    String notNegative = "((ABS(" + left + ")+" + left + ")/2)";
    String atMostAll =
        "((" + notNegative + "+" + drinkers + "-ABS(" + notNegative + "-" + drinkers + "))/2)";
    return "(SUMPRODUCT(BINOMDIST("
        + drinkers
        + ",[guests],[drinks],FALSE)*BINOMDIST("
        + atMostAll
        + ","
        + drinkers
        + ",[more],TRUE)*("
        + left
        + ">=0))+IF([fewest]=1,(1-[drinks])^[guests],0))";
  }

  private static int steps(List<GroupPlan> groups) {
    int most =
        groups.stream()
            .mapToInt(
                plan ->
                    (int)
                        Math.ceil(
                            plan.group().guests().headcount() * plan.group().guests().cupsEach()))
            .max()
            .orElse(0);
    int needed = 32 - Integer.numberOfLeadingZeros(Math.max(1, most * ROOM_TO_GROW));
    return Math.min(MOST_STEPS, Math.max(FEWEST_STEPS, needed));
  }
}
