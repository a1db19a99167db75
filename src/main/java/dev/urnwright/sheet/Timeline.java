package dev.urnwright.sheet;

import dev.urnwright.plan.Plan;
import dev.urnwright.wording.Words;
import java.util.List;
import java.util.Optional;

/**
 * A part of the run as lanes across a page: brewers above, dispensers below, time to the right, in
 * minutes from where the part begins. All parts of a run have the same width, so that equal times
 * look equal.
 *
 * @param width minutes that the whole width stands for
 * @param minutes where this part ends, {@code width} at most
 * @param ticks marks of time, from 0 on
 * @param lanes one for each unit that has something to do in this part
 */
public record Timeline(int width, int minutes, List<Tick> ticks, List<Lane> lanes) {
  /** Copies the lists. */
  public Timeline {
    ticks = List.copyOf(ticks);
    lanes = List.copyOf(lanes);
  }

  /**
   * The parts of a plan's run, in order of time; where there are more lanes than a page has room
   * for, a part is split into several. None without a run.
   */
  public static List<Timeline> of(Plan plan, Words words) {
    return plan.run()
        .map(run -> new TimelineParts(new Lanes(plan, run, words).lanes()).timelines())
        .orElse(List.of());
  }

  /** Where a minute lies: 0 at the left edge, 1 at the right. */
  public double share(int minute) {
    return (double) minute / width;
  }

  /**
   * A mark of time.
   *
   * @param minute where
   * @param label the time
   * @param hour whether it is a full hour
   */
  public record Tick(int minute, String label, boolean hour) {}

  /** What a lane stands for. */
  public enum Kind {
    /** A brewer: boxes are batches. */
    BREWER,
    /** A dispenser: boxes are fills. */
    DISPENSER
  }

  /**
   * One unit.
   *
   * @param kind what it is
   * @param unit its name
   * @param boxes in order of time
   */
  public record Lane(Kind kind, Name unit, List<Box> boxes) {
    /** Copies the list. */
    public Lane {
      boxes = List.copyOf(boxes);
    }
  }

  /**
   * A batch from start to ready, or a fill from filled to last pour; what lies in another part of
   * the run is cut off.
   *
   * @param id of the batch or fill
   * @param group whom a fill serves
   * @param decaf whether it is decaffeinated
   * @param stretch from where to where
   * @param cut which of its ends are cut off
   */
  public record Box(String id, Optional<Name> group, boolean decaf, Stretch stretch, Cut cut) {
    /** The same seen from a later minute, without what lies outside 0 to {@code end}. */
    Box within(int start, int end) {
      return new Box(
          id,
          group,
          decaf,
          new Stretch(
              clamp(stretch.from() - start, end),
              clamp(stretch.service() - start, end),
              clamp(stretch.to() - start, end)),
          new Cut(stretch.from() < start, stretch.to() > start + end));
    }

    private static int clamp(int minute, int end) {
      return Math.max(0, Math.min(end, minute));
    }
  }

  /**
   * From where to where, in minutes.
   *
   * @param from the left edge
   * @param service where pouring begins; {@code to} for a batch
   * @param to the right edge
   */
  public record Stretch(int from, int service, int to) {}

  /**
   * Which ends of a box are cut off.
   *
   * @param left when it began in an earlier part
   * @param right when it goes on in a later one
   */
  public record Cut(boolean left, boolean right) {}
}
