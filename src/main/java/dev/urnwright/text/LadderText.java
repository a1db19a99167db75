package dev.urnwright.text;

import dev.urnwright.day.Ladder;
import dev.urnwright.day.Tasting;
import dev.urnwright.day.Tasting.TastedGroup;
import dev.urnwright.event.Coffee;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.OnTheDay.Rung;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** Writes taste ladders, and what a tasting comes to, for reading on a terminal. */
public final class LadderText {
  /** Groups beside each other; more follow in another table. */
  private static final int GROUPS_ACROSS = 4;

  private final Plan plan;
  private final Palette palette;
  private final Display display;

  /** Text about that plan, with that emphasis. */
  public LadderText(Plan plan, Palette palette) {
    this.plan = plan;
    this.palette = palette;
    this.display = new Display(plan.event().print().units(), plan.event().equipment().scaleStep());
  }

  /** Writes one ladder in lines of at most {@link PlanText#COLUMNS}. */
  public void write(Ladder ladder, PrintWriter out) {
    Screen screen = new Screen(out, palette, PlanText.COLUMNS);
    title(ladder, screen);
    screen.remark(howTo(ladder));
    screen.remark(assumed(ladder));
    screen.caution("Coffee fresh from the brewer scalds: let every taste cool first.");
    int groups = ladder.groups().size();
    for (int from = 0; from < groups; from += GROUPS_ACROSS) {
      table(ladder, from, Math.min(groups, from + GROUPS_ACROSS), screen);
    }
    overfull(ladder, screen);
  }

  private void title(Ladder ladder, Screen screen) {
    Coffee coffee = ladder.coffee().coffee();
    screen.title(
        (coffee.decaf() ? "DECAF: " : "")
            + coffee.name()
            + ", by taste"
            + ladder.dispenser().map(fill -> " in " + fill.id()).orElse(""));
  }

  private String howTo(Ladder ladder) {
    String sample = display.mass(ladder.table().sample()).toString();
    String step = display.mass(ladder.table().step()).toString();
    return ladder
        .dispenser()
        .map(
            fill ->
                fill.id()
                    + " has its "
                    + sample
                    + " of concentrate and no water yet. Add "
                    + step
                    + " of water, stir, taste; again until it tastes right.")
        .orElse(
            "Weigh "
                + sample
                + " of concentrate. Add "
                + step
                + " of water, stir, taste; again until it tastes right. That row tells the water"
                + " for each dispenser.");
  }

  private String assumed(Ladder ladder) {
    String strength = display.strength(ladder.from().strength()).toString();
    return ladder.from().read()
        ? "The strengths follow from a concentrate of " + strength + ", as it was read."
        : "The strengths are expected, not known: they take the concentrate for "
            + strength
            + " as planned, an extraction of "
            + display.extraction(ladder.coffee().brewed().brew().extraction())
            + ".";
  }

  private void table(Ladder ladder, int from, int to, Screen screen) {
    screen.gap();
    List<String> headings = new ArrayList<>(List.of("step", "water in", "together", "strength"));
    boolean scaled = ladder.dispenser().isEmpty();
    for (int i = from; i < to && scaled; i++) {
      headings.add(letter(i));
    }
    Table table = new Table(headings);
    List<Rung> rungs = ladder.table().rungs();
    for (int n = 1; n <= rungs.size(); n++) {
      Rung rung = rungs.get(n - 1);
      List<String> cells =
          new ArrayList<>(
              List.of(
                  Integer.toString(n),
                  display.mass(rung.water()).toString(),
                  display.mass(ladder.table().sample().plus(rung.water())).toString(),
                  display.strength(rung.strength()).toString()));
      for (int i = from; i < to && scaled; i++) {
        cells.add(
            ladder.isLessThanItsIce(ladder.groups().get(i), rung)
                ? "-"
                : display.mass(rung.bypass().get(i)).toString());
      }
      table.row(cells, "");
    }
    table.print(screen);
    for (int i = from; i < to; i++) {
      screen.remark(legend(ladder, i));
    }
  }

  private String legend(Ladder ladder, int i) {
    GroupPlan group = ladder.groups().get(i);
    Fill fill = group.fills().get(0);
    String wanted =
        "wanted "
            + display.strength(group.group().strength())
            + ", expected "
            + expected(ladder, group)
            + ".";
    if (ladder.dispenser().isPresent()) {
      return group.group().name() + ": " + wanted;
    }
    return letter(i)
        + ": water to the "
        + display.mass(fill.blend().concentrate())
        + " of concentrate in a dispenser of "
        + group.group().name()
        + (group.group().ice().isPresent()
            ? ", without the ice, which is water too (at - it is too much alone)"
            : "")
        + "; "
        + wanted;
  }

  private static String expected(Ladder ladder, GroupPlan group) {
    long nearest = Math.round(ladder.expectedSteps(group));
    return nearest == 0 ? "undiluted" : "near step " + nearest;
  }

  private void overfull(Ladder ladder, Screen screen) {
    int fit = ladder.stepsThatFit(plan);
    if (fit < ladder.table().rungs().size()) {
      screen.gap();
      screen.caution(
          "It is full after "
              + PlanText.counted(fit, "step", "steps")
              + ". Before the next one draw off some (it scalds: two hands, a steady jug), keep"
              + " it to drink, and from then on tell the strength by a sample.");
    }
  }

  private static String letter(int i) {
    return i < 26 ? String.valueOf((char) ('A' + i)) : "A" + (i - 25);
  }

  /** Writes what was tasted and what it means; what to do about it is {@link AdjustmentText}'s. */
  public void write(Tasting.Outcome outcome, PrintWriter out) {
    Screen screen = new Screen(out, palette, PlanText.COLUMNS);
    Ladder ladder = outcome.ladder();
    title(ladder, screen);
    Table table =
        new Table(
            List.of(
                "group",
                "tasted right",
                "water to " + display.mass(ladder.table().sample()),
                "strength"));
    for (TastedGroup group : outcome.groups()) {
      table.row(
          List.of(
              group.group().group().name(),
              group.steps().isPresent()
                  ? "after " + steps(group.steps().getAsDouble())
                  : ladder.from().read() ? "not tasted" : "in proportion",
              display.mass(ladder.table().sample().times(group.waterPerGram())).toString(),
              display.strength(group.strength()).toString()),
          "");
    }
    table.print(screen);
    if (!ladder.from().read()) {
      screen.remark(
          "The strengths hold if the concentrate is the planned "
              + display.strength(ladder.from().strength())
              + "; the amounts hold in any case.");
    }
    screen.remark(
        "It tastes as a concentrate of "
            + display.strength(outcome.asIfRead())
            + " would, diluted to the strengths that were wanted. A tongue can't tell a stronger"
            + " concentrate from guests who like it weaker.");
    screen.gap();
  }

  private static String steps(double steps) {
    return steps == Math.rint(steps)
        ? PlanText.counted((int) steps, "step", "steps")
        : steps + " steps";
  }
}
