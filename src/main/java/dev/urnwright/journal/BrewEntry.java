package dev.urnwright.journal;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.quantity.Share;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/**
 * One batch as it was weighed.
 *
 * @param id the same wherever the entry travels
 * @param recordedAt when it was entered
 * @param occasion the event it was brewed for
 * @param batch its id in the plan, such as {@code house-3}
 * @param coffee the coffee's name
 * @param brewer the kind of brewer, when known
 * @param method how it was brewed
 * @param steamLoss share of the brew water lost as vapour
 * @param weighed what was weighed and read
 */
public record BrewEntry(
    UUID id,
    Instant recordedAt,
    Occasion occasion,
    String batch,
    String coffee,
    Optional<String> brewer,
    BrewMethod method,
    Share steamLoss,
    WeighedBatch weighed) {
  /**
   * What it was brewed for.
   *
   * @param event its name
   * @param date its day, when known
   */
  public record Occasion(String event, Optional<LocalDate> date) {}
}
