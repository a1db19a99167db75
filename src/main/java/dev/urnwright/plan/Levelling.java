package dev.urnwright.plan;

import dev.urnwright.plan.Run.ActionKind;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Spreads work over time so that no more people are busy at once than there are: what has the least
 * time first, of equals what must be done sooner, each at the minute nearest to its own at which
 * there is somebody for it. What finds nobody is done where it makes the crew the least too busy.
 * Then everything once more, now that all the rest has its place: what came first didn't know what
 * was still to come.
 */
final class Levelling {
  private final List<Work> works;
  private final int people;
  private final int[] at;
  private final int[] latest;
  private final int from;
  private final int[] busy;

  /**
   * One thing to do.
   *
   * @param kind what kind
   * @param at its minute
   * @param before minutes that it takes before that
   * @param minutes that it takes from then on
   * @param earliest minute that it can be moved to; {@code at} when it can't
   * @param latest likewise
   * @param after other works, by their index, that must have begun for some time; these follow none
   * @param gap for how long
   */
  record Work(
      ActionKind kind,
      int at,
      int before,
      int minutes,
      int earliest,
      int latest,
      List<Integer> after,
      int gap) {
    Work {
      after = List.copyOf(after);
    }
  }

  private Levelling(List<Work> works, int people) {
    this.works = works;
    this.people = people;
    this.at = works.stream().mapToInt(Work::at).toArray();
    this.latest = works.stream().mapToInt(Work::latest).toArray();
    this.from = works.stream().mapToInt(w -> w.earliest() - w.before()).min().orElse(0);
    int until = works.stream().mapToInt(w -> w.latest() + w.minutes()).max().orElse(0);
    this.busy = new int[Math.max(0, until - from)];
  }

  /** All works at their own minutes. */
  static Levelling none(List<Work> works) {
    Levelling none = new Levelling(works, Integer.MAX_VALUE);
    for (int i = 0; i < works.size(); i++) {
      none.add(i, 1);
    }
    return none;
  }

  /** Works spread so that so many people are enough, as far as that can be. */
  static Levelling to(int people, List<Work> works) {
    Levelling levelling = new Levelling(works, people);
    levelling.level();
    return levelling;
  }

  /** The minute of a work. */
  int at(int work) {
    return at[work];
  }

  /** The first minute of all. */
  int from() {
    return from;
  }

  /** How many are busy in each minute from the first on. */
  int[] busy() {
    return busy.clone();
  }

  /** How many are busy at once at the most. */
  int most() {
    int most = 0;
    for (int each : busy) {
      most = Math.max(most, each);
    }
    return most;
  }

  private void level() {
    List<Integer> order =
        IntStream.range(0, at.length)
            .boxed()
            .sorted(
                Comparator.comparingInt((Integer i) -> works.get(i).after().isEmpty() ? 0 : 1)
                    .thenComparingInt(i -> works.get(i).latest() - works.get(i).earliest())
                    .thenComparingInt(i -> works.get(i).latest()))
            .toList();
    for (int work : order) {
      place(work);
      add(work, 1);
    }
    for (int i = 0; i < at.length; i++) {
      for (int before : works.get(i).after()) {
        latest[before] = Math.min(latest[before], at[i] - works.get(i).gap());
      }
    }
    for (int work : order) {
      add(work, -1);
      place(work);
      add(work, 1);
    }
  }

  /** Where there is somebody for it, or the fewest are missing, as near to its own minute. */
  private void place(int work) {
    Work w = works.get(work);
    int earliest = w.earliest();
    for (int before : w.after()) {
      earliest = Math.max(earliest, at[before] + w.gap());
    }
    int best = Math.min(latest[work], Math.max(earliest, at[work]));
    int least = missing(w, best);
    int farthest = w.latest() - w.earliest();
    for (int away = 1; away <= farthest; away++) {
      if (least == 0) {
        break;
      }
      for (int minute : new int[] {w.at() - away, w.at() + away}) {
        int here =
            minute < earliest || minute > latest[work] ? Integer.MAX_VALUE : missing(w, minute);
        if (here < least) {
          least = here;
          best = minute;
        }
      }
    }
    at[work] = best;
  }

  /** Minutes for which a work would find nobody. */
  private int missing(Work w, int minute) {
    int missing = 0;
    for (int i = minute - w.before() - from; i < minute + w.minutes() - from; i++) {
      missing += Math.max(0, busy[i] + 1 - people);
    }
    return missing;
  }

  private void add(int work, int by) {
    Work w = works.get(work);
    for (int i = at[work] - w.before() - from; i < at[work] + w.minutes() - from; i++) {
      busy[i] += by;
    }
  }
}
