package dev.urnwright.xlsx;

import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The order in which dispensers are filled: coffee by coffee, then as the fills are numbered. */
final class FillOrder {
  private FillOrder() {}

  /** The rows of the groups, counted from 0, in the order in which they are filled. */
  static List<Integer> of(Plan plan) {
    List<GroupPlan> groups = plan.groups();
    List<Integer> order = new ArrayList<>();
    IntStream.range(0, groups.size())
        .boxed()
        .sorted(
            Comparator.comparingInt((Integer i) -> coffee(plan, i))
                .thenComparingInt(i -> number(groups.get(i).fills().get(0))))
        .forEach(order::add);
    return order;
  }

  /** The coffee of a row of the groups, both counted from 0. */
  static int coffee(Plan plan, int group) {
    int last = 0;
    for (int i = 0; i < plan.coffees().size(); i++) {
      last += plan.coffees().get(i).groups().size();
      if (group < last) {
        return i;
      }
    }
    throw new IllegalArgumentException("the plan has only " + last + " groups, no " + group);
  }

  /** The number at the end of a fill's id. */
  static int number(Fill fill) {
    return Integer.parseInt(fill.id().substring(fill.id().lastIndexOf("-F") + 2));
  }
}
