package dev.urnwright.sheet;

import static java.util.Objects.requireNonNull;

import dev.urnwright.event.Event;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Run;
import dev.urnwright.wording.Words;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * When each batch and each fill has its turn, for the sheets that list them; nothing is found when
 * the plan has no run.
 *
 * @param event on whose day the times are
 * @param batches by their ids
 * @param fills by their ids
 * @param words for what has no name
 */
record RunTimes(
    Event event, Map<String, Run.BatchTime> batches, Map<String, Run.FillTime> fills, Words words) {
  static RunTimes of(Plan plan, Words words) {
    return new RunTimes(
        plan.event(),
        plan.run().stream()
            .flatMap(run -> run.batches().stream())
            .collect(Collectors.toMap(time -> time.batch().id(), Function.identity())),
        plan.run().stream()
            .flatMap(run -> run.fills().stream())
            .collect(Collectors.toMap(time -> time.fill().id(), Function.identity())),
        words);
  }

  Optional<Brewing> of(Batch batch) {
    return Optional.ofNullable(batches.get(batch.id()))
        .map(time -> new Brewing(clock(time.start()), clock(time.ready())));
  }

  Optional<Pouring> of(Fill fill) {
    return Optional.ofNullable(fills.get(fill.id()))
        .map(
            time ->
                new Pouring(
                    new Name(words.text(time.called())),
                    oldest(fill),
                    clock(time.filled()),
                    clock(time.due()),
                    clock(time.useBy()),
                    Optional.of(time.tap())
                        .filter(Run.Tap::hasOthers)
                        .map(Run.Tap::saying)
                        .map(words::text)));
  }

  /** Coffee of several batches is as old as its oldest. */
  private ClockTime oldest(Fill fill) {
    return clock(
        fill.draws().stream()
            .map(draw -> requireNonNull(batches.get(draw.batchId())).ready())
            .min(Comparator.naturalOrder())
            .orElseThrow());
  }

  private ClockTime clock(LocalDateTime at) {
    return ClockTime.of(event, at, words);
  }

  /**
   * When a batch is brewed.
   *
   * @param start when it begins
   * @param ready the last drop
   */
  record Brewing(ClockTime start, ClockTime ready) {}

  /**
   * When a dispenser has its turn.
   *
   * @param unit which of the dispensers
   * @param brewed when the oldest coffee in it left the brewer
   * @param filled when the last of it goes in
   * @param due its first cup
   * @param useBy when what is left is poured away
   * @param tap its place, when others stand open beside it
   */
  record Pouring(
      Name unit,
      ClockTime brewed,
      ClockTime filled,
      ClockTime due,
      ClockTime useBy,
      Optional<String> tap) {}
}
