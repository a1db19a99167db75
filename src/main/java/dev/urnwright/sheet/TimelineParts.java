package dev.urnwright.sheet;

import dev.urnwright.sheet.Timeline.Box;
import dev.urnwright.sheet.Timeline.Lane;
import dev.urnwright.sheet.Timeline.Stretch;
import dev.urnwright.sheet.Timeline.Tick;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/** Cuts a run into parts, wide enough to read and with no more lanes than a page holds. */
final class TimelineParts {
  /** So many are high enough to read, with the title of the page above them. */
  static final int MOST_LANES = 30;

  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;

  /** A part of a run of up to half a day lasts so long, of one up to a day … */
  private static final int USUAL = 3 * HOUR;

  /** … longer, and of one of days still longer. */
  private static final int LONG = 6 * HOUR;

  private static final int ENDLESS = 12 * HOUR;

  private final List<Lane> lanes;
  private final List<Stretch> stretches;
  private final int longest;
  private final int step;

  /** The parts of lanes in minutes of the event's day. */
  TimelineParts(List<Lane> lanes) {
    this.lanes = lanes;
    this.stretches =
        lanes.stream().flatMap(lane -> lane.boxes().stream()).map(Box::stretch).toList();
    int length = last() - first(Integer.MIN_VALUE);
    this.longest = length <= DAY / 2 ? USUAL : length <= DAY ? LONG : ENDLESS;
    this.step = longest / 12;
  }

  List<Timeline> timelines() {
    List<Span> spans = spans();
    int width = spans.stream().mapToInt(span -> span.end() - span.start()).max().orElse(0);
    return spans.stream().flatMap(span -> between(span, width).stream()).toList();
  }

  /**
   * A part of the run.
   *
   * @param start in minutes of the event's day
   * @param end likewise
   */
  private record Span(int start, int end) {}

  private List<Span> spans() {
    List<Span> spans = new ArrayList<>();
    int done = Integer.MIN_VALUE;
    while (spans.isEmpty() || done < last()) {
      int start = down(Math.max(done, first(done)));
      int end = end(start);
      spans.add(new Span(start, end));
      done = end;
    }
    return spans;
  }

  /** Where the first box begins that goes on beyond a minute. */
  private int first(int done) {
    return stretches.stream()
        .filter(stretch -> stretch.to() > done)
        .mapToInt(Stretch::from)
        .min()
        .orElse(0);
  }

  private int last() {
    return stretches.stream().mapToInt(Stretch::to).max().orElse(0);
  }

  /**
   * The last of all; or the mark in the latter half that cuts the fewest boxes, or where the last
   * box before it ends. Rather than cut any, a part takes a third more when that is the last.
   */
  private int end(int start) {
    if (last() <= start + longest) {
      return up(last());
    }
    int best = start + longest;
    long fewest = Long.MAX_VALUE;
    for (int mark = start + longest; mark > start + longest / 2; mark -= step) {
      int at = mark;
      long cut = stretches.stream().filter(s -> s.from() < at && s.to() > at).count();
      if (cut < fewest) {
        fewest = cut;
        best = mark;
      }
    }
    if (fewest > 0 && last() <= start + longest + longest / 3) {
      return up(last());
    }
    int mark = best;
    int used =
        stretches.stream()
            .filter(stretch -> stretch.from() < mark)
            .mapToInt(stretch -> Math.min(mark, stretch.to()))
            .max()
            .orElse(mark);
    return Math.max(start + step, up(used));
  }

  private int down(int minute) {
    return Math.floorDiv(minute, step) * step;
  }

  private int up(int minute) {
    return -Math.floorDiv(-minute, step) * step;
  }

  private List<Timeline> between(Span span, int width) {
    int length = span.end() - span.start();
    List<Lane> busy = new ArrayList<>();
    for (Lane lane : lanes) {
      List<Box> seen =
          lane.boxes().stream()
              .filter(box -> box.stretch().from() < span.end() && box.stretch().to() > span.start())
              .map(box -> box.within(span.start(), length))
              .toList();
      if (!seen.isEmpty()) {
        busy.add(new Lane(lane.kind(), lane.unit(), seen));
      }
    }
    List<Tick> ticks = new ArrayList<>();
    for (int at = span.start(); at <= span.end(); at += step) {
      String time = LocalTime.ofSecondOfDay(Math.floorMod(at, DAY) * 60L).toString();
      ticks.add(new Tick(at - span.start(), time, at % HOUR == 0));
    }
    return Columns.split(busy.size(), MOST_LANES).stream()
        .map(columns -> new Timeline(width, length, ticks, columns.of(busy)))
        .toList();
  }
}
