package dev.urnwright.cli;

import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.day.Happened;
import dev.urnwright.event.JournalName;
import dev.urnwright.journal.BrewEntry;
import dev.urnwright.journal.BrewEntry.Occasion;
import dev.urnwright.journal.Journal;
import dev.urnwright.journal.JournalException;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Plan;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * An event's batches in the journal: each has one entry, which is replaced when it is measured
 * again. An event without a date is that of today.
 */
record EventJournal(Plan plan, Clock clock) {
  /** What happened, with the batches of this event that were measured before. */
  Happened withEarlier(Happened now, Journal journal) throws JournalException {
    Map<String, WeighedBatch> batches = new LinkedHashMap<>();
    for (BrewEntry entry : journal.brewsOf(occasion())) {
      boolean planned = plan.batches().stream().anyMatch(batch -> batch.id().equals(entry.batch()));
      if (planned) {
        batches.put(entry.batch(), entry.weighed());
      }
    }
    batches.putAll(now.batches());
    return new Happened(batches, now.gone(), now.standing());
  }

  /** Writes down what was measured now. */
  void write(Happened now, Journal journal) throws JournalException {
    List<BrewEntry> entries = new ArrayList<>();
    for (CoffeePlan coffee : plan.coffees()) {
      for (Batch batch : coffee.batches()) {
        WeighedBatch weighed = now.batches().get(batch.id());
        if (weighed != null) {
          entries.add(entry(coffee, batch, weighed));
        }
      }
    }
    journal.putAll(entries);
  }

  private BrewEntry entry(CoffeePlan coffee, Batch batch, WeighedBatch weighed) {
    String key = occasion() + "|" + batch.id();
    return new BrewEntry(
        UUID.nameUUIDFromBytes(key.getBytes(StandardCharsets.UTF_8)),
        clock.instant(),
        occasion(),
        batch.id(),
        coffee.coffee().nameInJournal(),
        batch
            .unit()
            .map(unit -> unit.brewer().name())
            .or(() -> coffee.coffee().journal().flatMap(JournalName::brewer)),
        plan.brewing(coffee).method(),
        plan.brewing(coffee).steamLoss(),
        weighed);
  }

  /** What its entries stand under. */
  Occasion occasion() {
    return new Occasion(
        plan.event().name(), plan.event().date().or(() -> Optional.of(LocalDate.now(clock))));
  }
}
