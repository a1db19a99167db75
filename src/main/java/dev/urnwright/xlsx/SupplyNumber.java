package dev.urnwright.xlsx;

import dev.urnwright.event.Event;
import dev.urnwright.event.Supply;
import dev.urnwright.event.Supply.Use;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Run;
import dev.urnwright.quantity.Volume;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * How many times a supply is used, as a formula that follows the cups, fills and batches. What a
 * run rinses with, and which brewer takes which batch, stay as planned.
 */
final class SupplyNumber {
  private static final Volume SAME_CUP = Volume.ofMillilitres(0.5);

  private final Book book;
  private final Event event;
  private final List<GroupPlan> groups;

  SupplyNumber(Book book) {
    this.book = book;
    this.event = book.plan().event();
    this.groups = book.plan().groups();
  }

  /** The formula; it may call the supply's own {@code [cup]}. */
  String formula(Supply supply) {
    if (supply.use() instanceof Use.AllWater) {
      return "(SUM("
          + book.layout().coffees().fullRange("brewedWater", 0, book.plan().coffees().size())
          + ")+SUM("
          + book.layout().fills().fullRange("bypass", 0, FillsSheet.rows(book.plan()))
          + "))/"
          + WaterTable.densityAt(Inputs.FILLING_TEMPERATURE)
          + "+"
          + book.units().of(rinsing());
    }
    return supply.use() instanceof Use.Each each
        ? number(each.per(), supply.takers())
        : "SUM(" + CoffeesSheet.all("ice") + ")";
  }

  /** In words, {@code per cup}. */
  static String words(Supply supply) {
    if (supply.use() instanceof Use.Each each) {
      return "per " + each.per().name().toLowerCase(Locale.ROOT);
    }
    return supply.use() instanceof Use.AllWater ? "all water" : "all ice";
  }

  private String number(Supply.Per per, Supply.Takers takers) {
    return switch (per) {
      case CUP -> byGroup(book.layout().groups(), "cups", takers, group -> true);
      case FILL -> byGroup(book.layout().service(), "fills", takers, group -> true);
      case GUEST -> {
        // the rows of a group's other coffees repeat its guests
        Set<String> seen = new HashSet<>();
        String sum =
            byGroup(book.layout().groups(), "headcount", takers, g -> seen.add(g.group().name()));
        yield sum + "+" + absent(takers, seen);
      }
      case BATCH -> batches(takers);
      case EVENT -> "1";
    };
  }

  /** The guests of groups for whom no cup is planned, so that they have no row. */
  private int absent(Supply.Takers takers, Set<String> present) {
    return event.groups().stream()
        .filter(takers::include)
        .filter(group -> !present.contains(group.name()))
        .mapToInt(group -> group.guests().headcount())
        .sum();
  }

  private String batches(Supply.Takers takers) {
    boolean all = takers.brewer().isEmpty() || event.equipment().brewers().size() == 1;
    return all
        ? "SUM(" + CoffeesSheet.all("batches") + ")"
        : Long.toString(
            book.plan().batches().stream()
                .filter(
                    batch ->
                        batch
                            .unit()
                            .filter(u -> u.brewer().name().equals(takers.brewer().get()))
                            .isPresent())
                .count());
  }

  /** The sum of a figure of its groups, in as few ranges as their rows allow. */
  private String byGroup(
      Grid grid, String key, Supply.Takers takers, Predicate<GroupPlan> isCounted) {
    List<Integer> rows =
        IntStream.range(0, groups.size())
            .filter(i -> named(takers, groups.get(i)) && isCounted.test(groups.get(i)))
            .boxed()
            .toList();
    if (rows.isEmpty()) {
      return "0";
    }
    StringBuilder sum = new StringBuilder();
    int start = 0;
    for (int i = 1; i <= rows.size(); i++) {
      if (i == rows.size() || rows.get(i) != rows.get(i - 1) + 1) {
        sum.append(sum.length() == 0 ? "" : "+")
            .append(range(grid, key, takers, rows.get(start), i - start));
        start = i;
      }
    }
    return sum.toString();
  }

  private static boolean named(Supply.Takers takers, GroupPlan group) {
    return takers.groups().isEmpty() || takers.groups().contains(group.group().name());
  }

  private String range(Grid grid, String key, Supply.Takers takers, int first, int rows) {
    String figures = grid.fullRange(key, first, rows);
    if (takers.cup().isEmpty()) {
      return "SUM(" + figures + ")";
    }
    String cups = book.layout().groups().fullRange("cup", first, rows);
    double near = book.units().of(SAME_CUP);
    return "SUMIFS(%s,%s,\">\"&([cup]-%s),%s,\"<\"&([cup]+%s))"
        .formatted(figures, cups, near, cups, near);
  }

  private Volume rinsing() {
    return book.plan()
        .run()
        .map(Run::water)
        .map(water -> water.rinsing().plus(water.preheating()))
        .orElseGet(() -> event.kitchen().water().rinse().times(book.plan().batches().size()));
  }
}
