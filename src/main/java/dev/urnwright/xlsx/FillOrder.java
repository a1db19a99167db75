package dev.urnwright.xlsx;

import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The order in which dispensers are filled: coffee by coffee, then as the fills are numbered. On a
 * clock the fills of several groups take turns.
 */
final class FillOrder {
  private FillOrder() {}

  /**
   * Fills of one group that follow each other.
   *
   * @param group row of the group, counted from 0
   * @param first number of the first one within the group, counted from 1
   * @param fills how many
   * @param last whether the group has none after them, so that more than planned go here
   */
  record Stretch(int group, int first, int fills, boolean last) {
    /** The fills themselves, as planned. */
    List<Fill> of(Plan plan) {
      return plan.groups().get(group).fills().subList(first - 1, first - 1 + fills);
    }
  }

  /** One fill, by its group's row and its number within the group from 1. */
  private record Turn(int coffee, int group, int number, int inCoffee) {}

  /** All planned fills in their order. */
  static List<Stretch> of(Plan plan) {
    List<Turn> turns = turns(plan);
    List<Stretch> order = new ArrayList<>();
    for (int from = 0; from < turns.size(); ) {
      int to = from + 1;
      while (to < turns.size() && turns.get(to).group() == turns.get(from).group()) {
        to++;
      }
      Turn first = turns.get(from);
      int fills = plan.groups().get(first.group()).fills().size();
      order.add(
          new Stretch(
              first.group(), first.number(), to - from, first.number() + (to - from) > fills));
      from = to;
    }
    return order;
  }

  private static List<Turn> turns(Plan plan) {
    List<GroupPlan> groups = plan.groups();
    List<Turn> turns = new ArrayList<>();
    for (int group = 0; group < groups.size(); group++) {
      List<Fill> fills = groups.get(group).fills();
      int coffee = coffee(plan, group);
      for (int i = 0; i < fills.size(); i++) {
        turns.add(new Turn(coffee, group, i + 1, number(fills.get(i))));
      }
    }
    turns.sort(Comparator.comparingInt(Turn::coffee).thenComparingInt(Turn::inCoffee));
    return turns;
  }

  /** Where a group's first fill stands in the order, counted from 0. */
  static int place(List<Stretch> order, int group) {
    return IntStream.range(0, order.size())
        .filter(i -> order.get(i).group() == group)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no fill is for group " + group));
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
  private static int number(Fill fill) {
    return Integer.parseInt(fill.id().substring(fill.id().lastIndexOf("-F") + 2));
  }
}
