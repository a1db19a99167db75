package dev.urnwright.sheet;

import dev.urnwright.plan.Plan;
import dev.urnwright.wording.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawn part of the run.
 *
 * @param number counted from 0
 * @param timeline what to draw
 */
public record TimelineView(int number, Timeline timeline) {
  static List<TimelineView> of(Plan plan, Words words) {
    List<TimelineView> views = new ArrayList<>();
    for (Timeline timeline : Timeline.of(plan, words)) {
      views.add(new TimelineView(views.size(), timeline));
    }
    return views;
  }
}
