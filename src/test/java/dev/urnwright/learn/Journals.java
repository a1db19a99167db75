package dev.urnwright.learn;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.Readings;
import dev.urnwright.brew.Readings.Reading;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.journal.BrewEntry;
import dev.urnwright.journal.BrewEntry.Occasion;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnitSystem;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Journal entries for tests. */
final class Journals {
  static final Display DISPLAY = new Display(UnitSystem.METRIC, Mass.ofGrams(1));
  static final Share NO_STEAM = Share.ofFraction(0);
  static final Starting USUAL = Starting.usual(BrewMethod.PERCOLATION, NO_STEAM);

  private Journals() {}

  static Readings thrice(double percent) {
    Reading reading = new Reading(Strength.ofPercent(percent), Optional.empty());
    return new Readings(List.of(reading, reading, reading));
  }

  static BrewEntry brew(double dose, double water, Optional<Double> beverage, Readings readings) {
    return brew(BrewMethod.PERCOLATION, dose, water, beverage, readings);
  }

  static BrewEntry brew(
      BrewMethod method, double dose, double water, Optional<Double> beverage, Readings readings) {
    return new BrewEntry(
        UUID.randomUUID(),
        Instant.parse("2027-06-05T06:30:00Z"),
        new Occasion("Event", Optional.empty()),
        "coffee-1",
        "Coffee",
        Optional.empty(),
        method,
        NO_STEAM,
        new WeighedBatch(
            Mass.ofGrams(dose), Mass.ofGrams(water), beverage.map(Mass::ofGrams), readings));
  }
}
