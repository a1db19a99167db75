package dev.urnwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.Readings;
import dev.urnwright.brew.Readings.Reading;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.journal.BrewEntry;
import dev.urnwright.journal.BrewEntry.Occasion;
import dev.urnwright.learn.JournalFits;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnitSystem;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class FitTextTest {
  @Test
  void saysWhatWasLearnedAndWhatItWasBefore() {
    // 2.5 g/g weighed, 2.1 g/g usual: 2.44 ± 0.26; 18.9 % read, 20 % usual: 19.0 ± 1.3
    assertEquals(
        """

          House on Tall, 2 batches
                                learned   95 % interval           usual     batches
          kept by the grounds   2.44 g/g  2.19 g/g to 2.70 g/g    2.10 g/g        1
          extraction at 1:16.0  19.0 %    17.7 % to 20.3 %        20.0 %          1
          - Supper, house-2: its readings don't stand, so they say nothing of the
            extraction; it was left out
        """
            .replaceAll(" +", " "),
        text().replace('\u00a0', ' ').replaceAll(" +", " "));
  }

  private static String text() {
    StringWriter out = new StringWriter();
    new FitText(Palette.PLAIN)
        .write(
            JournalFits.of(
                List.of(
                    entry("house-1", Optional.of(810.0), 3), entry("house-2", Optional.empty(), 1)),
                new Display(UnitSystem.METRIC, Mass.ofGrams(1))),
            new PrintWriter(out, true));
    return out.toString().replace(System.lineSeparator(), "\n");
  }

  private static BrewEntry entry(String batch, Optional<Double> beverage, int readings) {
    Reading reading = new Reading(Strength.ofPercent(1.40), Optional.empty());
    return new BrewEntry(
        UUID.randomUUID(),
        Instant.parse("2027-06-05T06:30:00Z"),
        new Occasion("Supper", Optional.empty()),
        batch,
        "House",
        Optional.of("Tall"),
        BrewMethod.PERCOLATION,
        Share.ofFraction(0),
        new WeighedBatch(
            Mass.ofGrams(60),
            Mass.ofGrams(960),
            beverage.map(Mass::ofGrams),
            new Readings(Collections.nCopies(readings, reading))));
  }
}
