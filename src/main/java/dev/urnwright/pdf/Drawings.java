package dev.urnwright.pdf;

import dev.urnwright.sheet.ChartView;
import dev.urnwright.sheet.PrepView;
import dev.urnwright.sheet.Timeline;
import dev.urnwright.sheet.TimelineView;
import dev.urnwright.wording.Words;
import java.util.List;

/**
 * What templates may have drawn, by its number.
 *
 * @param charts strength against extraction
 * @param timelines parts of the run
 * @param words for their axes
 */
record Drawings(List<ChartView> charts, List<Timeline> timelines, Words words) {
  static final Drawings NONE = new Drawings(List.of(), List.of(), Words.ENGLISH);

  static Drawings of(PrepView view, Words words) {
    return new Drawings(
        view.onTheDay().charts(),
        view.timelines().stream().map(TimelineView::timeline).toList(),
        words);
  }
}
