package dev.urnwright.sheet;

import dev.urnwright.event.Dispenser;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.wording.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Labels side by side, to cut out.
 *
 * @param labels one or two
 * @param half whether the second place stays empty
 */
record LabelRow(List<Label> labels, boolean half) {
  private static final int ACROSS = 2;

  static List<LabelRow> of(Plan plan, Certainty certainty, Display display, Words words) {
    RunTimes times = RunTimes.of(plan, words);
    List<Label> labels = new ArrayList<>();
    for (GroupPlan group : plan.groups()) {
      for (Fill fill : group.fills()) {
        labels.add(Label.of(plan, group, fill, certainty, times, display, words));
      }
    }
    List<LabelRow> rows = new ArrayList<>();
    for (int at = 0; at < labels.size(); at += ACROSS) {
      List<Label> row = labels.subList(at, Math.min(at + ACROSS, labels.size()));
      rows.add(new LabelRow(row, row.size() < ACROSS));
    }
    return rows;
  }

  /**
   * One dispenser's label.
   *
   * @param id the fill's name
   * @param group whom it serves
   * @param coffee what is in it
   * @param strength wanted in the cup, and how sure it is
   * @param service where and when
   * @param fresh how long it stays good
   */
  record Label(
      String id,
      Name group,
      CoffeeTag coffee,
      StrengthPair strength,
      ServiceText service,
      Fresh fresh) {
    static Label of(
        Plan plan,
        GroupPlan group,
        Fill fill,
        Certainty certainty,
        RunTimes times,
        Display display,
        Words words) {
      return new Label(
          fill.id(),
          new Name(group.group().name()),
          CoffeeTag.of(group.coffee()),
          StrengthPair.of(group, certainty, display, words),
          ServiceText.of(plan.event(), group.group(), words),
          new Fresh(
              fill.dispenser().flatMap(Dispenser::hold).map(hold -> hold.toMinutes()),
              times.of(fill)));
    }
  }

  /**
   * How long it stays good.
   *
   * @param holdMinutes after brewing, when given
   * @param times which dispenser and when, when the plan has a run
   */
  record Fresh(Optional<Long> holdMinutes, Optional<RunTimes.Pouring> times) {}
}
