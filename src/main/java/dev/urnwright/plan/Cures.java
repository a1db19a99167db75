package dev.urnwright.plan;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Brewer.Supply;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.schedule.Effort;
import dev.urnwright.wording.Saying;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * The smallest single changes that cure a run which can't be made, each tried by planning the
 * changed event. Trying ends when the effort for it is spent, and then what was not tried is told.
 */
final class Cures {
  private static final int MOST_UNITS = 4;
  private static final int MINUTES_STEP = 5;
  private static final int MOST_MINUTES = 120;

  private final Event event;
  private final Effort effort;
  private final Predicate<Event> works;

  /**
   * Cures.
   *
   * @param event that can't be served as it is
   * @param effort that trying may take
   * @param works whether an event is seen to work, at the cost of some effort
   */
  Cures(Event event, Effort effort, Predicate<Event> works) {
    this.event = event;
    this.effort = effort;
    this.works = works;
  }

  /** A change of which there can be more or less, between two numbers. */
  private record Change(int least, int most, IntFunction<Saying> words, IntFunction<Event> made) {}

  /** What came of trying. */
  private static final class Tried {
    private final List<Saying> cures = new ArrayList<>();
    private final List<Saying> tooLittle = new ArrayList<>();
    private final List<Saying> untried = new ArrayList<>();
  }

  /** The least of each change that alone lets a run be made in time. */
  List<Saying> alone() {
    return List.copyOf(singly().cures);
  }

  private Tried singly() {
    List<Change> changes = new ArrayList<>();
    event.equipment().brewers().forEach(brewer -> changes.add(moreUnits(brewer)));
    event.equipment().brewers().stream()
        .filter(brewer -> brewer.supply().circuit().isPresent())
        .forEach(brewer -> changes.add(otherCircuit(brewer)));
    event
        .kitchen()
        .opens()
        .map(this::earlier)
        .filter(change -> change.most() > 0)
        .ifPresent(changes::add);
    if (!event.equipment().dispensers().isEmpty()) {
      changes.add(longerHold());
    }
    Tried tried = new Tried();
    changes.forEach(change -> least(change, tried));
    return tried;
  }

  /** What cures a run that can't be made in time. */
  String ofRun() {
    Tried tried = singly();
    String untried =
        tried.untried.isEmpty() ? "" : " (not tried to the end: " + listed(tried.untried) + ")";
    if (!tried.cures.isEmpty()) {
      return "any one of these cures it: " + listed(tried.cures) + untried;
    }
    return "fewer guests at a time: no single change that was tried cures it"
        + (tried.tooLittle.isEmpty() ? "" : ", not even " + listed(tried.tooLittle))
        + untried;
  }

  /**
   * What cures a run for which too few dispensers of a kind are there.
   *
   * @param all kinds of which there are too few; the others are cured besides
   */
  String of(DispenserShortage shortage, List<DispenserShortage> all) {
    Tried tried = new Tried();
    least(moreOf(shortage, shortage.more(), shortage.more(), all), tried);
    if (tried.cures.isEmpty()) { // of more that there are, more may be out
      least(moreOf(shortage, shortage.more() + 1, 3 * shortage.more(), all), tried);
    }
    return (tried.cures.isEmpty() ? "" : listed(tried.cures) + ", or ")
        + "larger ones, or serving times further apart";
  }

  /** Finds the least of a change that is enough; more of it is never worse. */
  private void least(Change change, Tried tried) {
    boolean enough = !effort.isSpent() && works.test(change.made().apply(change.most()));
    if (!enough) {
      // What was not found when the effort was spent may yet be there.
      (effort.isSpent() ? tried.untried : tried.tooLittle).add(change.words().apply(change.most()));
      return;
    }
    int low = change.least() - 1;
    int high = change.most();
    while (high - low > 1 && !effort.isSpent()) {
      int middle = (low + high) / 2;
      if (works.test(change.made().apply(middle))) {
        high = middle;
      } else {
        low = middle;
      }
    }
    tried.cures.add(change.words().apply(high));
  }

  private Change moreUnits(Brewer brewer) {
    return new Change(
        1,
        MOST_UNITS,
        more -> Saying.of("cure.more").with("count", more).with("what", brewer.name()),
        more ->
            brewers(
                each ->
                    each.equals(brewer) ? each.with(each.count() + more, each.supply()) : each));
  }

  private Change otherCircuit(Brewer brewer) {
    Supply other = new Supply(brewer.supply().power(), Optional.empty());
    return new Change(
        1,
        1,
        one -> Saying.of("cure.circuit").with("brewer", brewer.name()),
        one -> brewers(each -> each.equals(brewer) ? each.with(each.count(), other) : each));
  }

  private Change earlier(LocalTime opens) {
    int most = Math.min(MOST_MINUTES, Timetable.minuteOf(opens)) / MINUTES_STEP;
    return new Change(
        1,
        most,
        steps -> Saying.of("cure.earlier").with("minutes", steps * MINUTES_STEP),
        steps ->
            event.with(
                event.equipment(),
                event.kitchen().opening(opens.minusMinutes((long) steps * MINUTES_STEP))));
  }

  private Change longerHold() {
    return new Change(
        1,
        MOST_MINUTES / MINUTES_STEP,
        steps -> Saying.of("cure.hold").with("minutes", steps * MINUTES_STEP),
        steps ->
            dispensers(
                each ->
                    each.with(
                        each.count(),
                        Optional.of(
                            each.hold()
                                .orElse(Timetable.USUAL_HOLD)
                                .plusMinutes((long) steps * MINUTES_STEP)))));
  }

  private Change moreOf(
      DispenserShortage shortage, int least, int most, List<DispenserShortage> all) {
    return new Change(
        least,
        most,
        more -> Saying.verbatim(more + " more"),
        more ->
            dispensers(
                each ->
                    each.with(
                        each.count()
                            + all.stream()
                                .filter(other -> other.dispenser().equals(each))
                                .mapToInt(other -> other.equals(shortage) ? more : other.more())
                                .sum(),
                        each.hold())));
  }

  private Event brewers(UnaryOperator<Brewer> other) {
    List<Brewer> brewers = event.equipment().brewers().stream().map(other).toList();
    return event.with(
        event.equipment().with(brewers, event.equipment().dispensers()), event.kitchen());
  }

  private Event dispensers(UnaryOperator<Dispenser> other) {
    List<Dispenser> dispensers = event.equipment().dispensers().stream().map(other).toList();
    return event.with(
        event.equipment().with(event.equipment().brewers(), dispensers), event.kitchen());
  }

  private static String listed(List<Saying> words) {
    return words.stream().map(Saying::toString).collect(Collectors.joining("; "));
  }
}
