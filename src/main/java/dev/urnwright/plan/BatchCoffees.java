package dev.urnwright.plan;

import dev.urnwright.event.Coffee;
import dev.urnwright.event.Event;
import dev.urnwright.plan.Run.BatchTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which coffee a batch or a fill is of, by its id.
 *
 * @param event whose coffees
 */
public record BatchCoffees(Event event) {
  /** The coffee of a batch or a fill; the longest key that its id begins with is meant. */
  public Optional<Coffee> of(String id) {
    return event.coffees().stream()
        .filter(coffee -> id.startsWith(coffee.key() + "-"))
        .max(Comparator.comparingInt(coffee -> coffee.key().length()));
  }

  /**
   * What the brewer is to be rinsed clean of before a batch of decaf: the coffee that it made just
   * before, unless that was decaf, too.
   *
   * @param batch any
   * @param all batches of the run
   */
  public Optional<Coffee> toRinse(BatchTime batch, List<BatchTime> all) {
    if (!isDecaf(batch.batch().id())) {
      return Optional.empty();
    }
    return all.stream()
        .filter(other -> other.batch().unit().equals(batch.batch().unit()))
        .filter(other -> other.start().isBefore(batch.start()))
        .max(Comparator.comparing(BatchTime::start))
        .map(other -> other.batch().id())
        .filter(id -> !isDecaf(id))
        .flatMap(this::of);
  }

  private boolean isDecaf(String id) {
    return of(id).filter(Coffee::decaf).isPresent();
  }
}
