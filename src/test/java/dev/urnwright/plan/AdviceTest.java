package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.brew.Estimate;
import dev.urnwright.plan.StrengthAccount.Entry;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** What is advised for surer cups: a cup of 1.25 % that is sure to ± 0.06 %, at k = 2. */
class AdviceTest {
  private static final String CURE =
      " A better scale would narrow it, at best from ±0.06 % to ±0.02 %.";
  private static final String READING =
      " Reading every batch when it is ready, and correcting for it, leaves ±0.04 % instead of"
          + " ±0.06 %.";

  @Test
  void beforeTheDayAndOnIt() {
    String scale = "Most of it comes from: " + Source.SCALE.words() + " (60 %).";
    assertEquals(scale + CURE + READING, advice(Source.SCALE, 0.02));
    // what makes it no surer isn't advised
    assertEquals(scale + CURE, advice(Source.SCALE, 0.03));
    assertEquals(scale + CURE, advice(Source.SCALE, 0.04));
    // only a reading tells what this batch did
    String batch = "Most of it comes from: " + Source.EXTRACTION.words() + " (60 %).";
    assertEquals(batch + READING, advice(Source.EXTRACTION, 0.02));
    assertEquals(
        batch + " Reading the batches makes it no surer.", advice(Source.EXTRACTION, 0.03));
  }

  private static String advice(Source source, double afterPercent) {
    return new Advice(
            new Entry(source, 1, Strength.ofPercent(0.02), Share.ofPercent(60), cup(0.01)),
            cup(0.03),
            cup(afterPercent),
            new Display(UnitSystem.METRIC, Mass.ofGrams(5)))
        .saying()
        .toString()
        .replace('\u00a0', ' ');
  }

  private static Estimate cup(double percent) {
    return new Estimate(Strength.ofPercent(1.25), percent / 100);
  }
}
