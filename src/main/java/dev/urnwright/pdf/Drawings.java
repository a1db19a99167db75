package dev.urnwright.pdf;

import dev.urnwright.sheet.ChartView;
import dev.urnwright.sheet.PrepView;
import dev.urnwright.sheet.Timeline;
import dev.urnwright.sheet.TimelineView;
import java.util.List;

/**
 * What templates may have drawn, by its number.
 *
 * @param charts strength against extraction
 * @param timelines parts of the run
 */
record Drawings(List<ChartView> charts, List<Timeline> timelines) {
  static final Drawings NONE = new Drawings(List.of(), List.of());

  static Drawings of(PrepView view) {
    return new Drawings(
        view.onTheDay().charts(), view.timelines().stream().map(TimelineView::timeline).toList());
  }
}
