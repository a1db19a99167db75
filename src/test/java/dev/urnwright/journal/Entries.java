package dev.urnwright.journal;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.Readings;
import dev.urnwright.brew.Readings.Reading;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.journal.BrewEntry.Occasion;
import dev.urnwright.journal.ServiceEntry.Asked;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Entries for tests. */
public final class Entries {
  public static final Occasion SUPPER =
      new Occasion("Choir supper", Optional.of(LocalDate.of(2027, 6, 5)));

  private Entries() {}

  public static BrewEntry brew(String batch, double dose, double water, double beverage) {
    return new BrewEntry(
        UUID.randomUUID(),
        Instant.parse("2027-06-05T06:30:00Z"),
        SUPPER,
        batch,
        "House",
        Optional.of("Tall"),
        BrewMethod.PERCOLATION,
        Share.ofFraction(0),
        new WeighedBatch(
            Mass.ofGrams(dose),
            Mass.ofGrams(water),
            Optional.of(Mass.ofGrams(beverage)),
            new Readings(
                List.of(
                    new Reading(Strength.ofPercent(1.81), Optional.of(Temperature.ofCelsius(21))),
                    new Reading(Strength.ofPercent(1.80), Optional.empty()),
                    new Reading(Strength.ofPercent(1.81), Optional.empty())))));
  }

  public static ServiceEntry service(String group, double putOut, double cameBack) {
    return new ServiceEntry(
        UUID.randomUUID(),
        Instant.parse("2027-06-05T12:00:00Z"),
        SUPPER,
        Optional.of("supper"),
        group,
        "House",
        new Asked(40, Share.ofPercent(85), 1.5, 58, Mass.ofGrams(214.5)),
        Mass.ofGrams(putOut),
        Mass.ofGrams(cameBack));
  }
}
