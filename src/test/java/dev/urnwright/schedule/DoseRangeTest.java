package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Brewer;
import dev.urnwright.plan.Events;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.DispenserTimes.Use;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a brewer takes, in steps of the scale, at its limits; and who brews what then. */
class DoseRangeTest {
  private static final Mass GRAM = Mass.ofGrams(1);
  private static final BrewRatio RATIO = BrewRatio.ofGramsPerGram(13);

  @Test
  void bothEndsAreTaken() {
    DoseRange range = range(10, 20);
    assertFalse(range.takes(9));
    assertTrue(range.takes(10));
    assertTrue(range.takes(20));
    assertFalse(range.takes(21));
    assertTrue(range(5, 5).usable());
    assertTrue(range(0, 1).usable());
    assertFalse(range(6, 5).usable());
    assertFalse(range(0, 0).usable());
  }

  /**
   * At 1:13, 6500 g of water are 500 g of dose; 6499.9 g are 6499 by the scale, 499.9 g. A vessel
   * of 5000 g takes 4999 g and a last step: 4999 / 10.85 = 460.7 g.
   */
  @Test
  void waterBasketAndVesselLimitADose() {
    assertEquals(500, range(brewer(600, 6500), Optional.empty()).greatest());
    assertEquals(499, range(brewer(600, 6499.9), Optional.empty()).greatest());
    assertEquals(450, range(brewer(450.9, 6500), Optional.empty()).greatest());
    assertEquals(460, range(brewer(600, 6500), Optional.of(5000.0)).greatest());
    assertEquals(500, range(brewer(600, 6500), Optional.of(9000.0)).greatest());
    assertEquals(0, range(brewer(600, 6500), Optional.of(0.5)).greatest());
    // 99.1 g are not less than the least that can be weighed
    assertEquals(100, range(brewer(600, 6500), Optional.empty()).least());
  }

  /** The same through the equipment: a vessel of 5 l at 92 °C holds 4819.8 g, so 444 g. */
  @Test
  void aDoseIsSharedAmongTheEquipmentsBrewers() {
    Brewer small =
        new Brewer(
            "Small",
            1,
            Mass.ofGrams(99.1),
            Mass.ofGrams(600),
            Mass.ofGrams(6500),
            Optional.of(Volume.ofLitres(5)),
            Optional.empty(),
            new Brewer.Supply(Optional.empty(), Optional.empty()),
            Events.SOMEWHERE);
    Temperature hot = Temperature.ofCelsius(92);
    var equipment = Events.equipment(1, List.of(small), List.of());
    DoseRange range = BatchSplit.ranges(RATIO, 10.85, equipment, hot).get(0);
    assertEquals(100, range.least());
    assertEquals(444, range.greatest());
    BatchSplit split = BatchSplit.of(Mass.ofGrams(889), RATIO, 10.85, equipment, hot).orElseThrow();
    assertEquals(3, split.count());
    assertEquals(
        2, BatchSplit.of(Mass.ofGrams(888), RATIO, 10.85, equipment, hot).orElseThrow().count());
  }

  /** Each share names those who can brew it: 300 both, 301 the larger alone. */
  @Test
  void aShareNamesItsBrewers() {
    DoseRange low = new DoseRange(Events.brewer("Low", 1, 0, 300, 9), 1, 300);
    DoseRange high = new DoseRange(Events.brewer("High", 1, 0, 400, 9), 1, 400);
    BatchSplit split = BatchSplit.of(Mass.ofGrams(601), List.of(low, high), GRAM).orElseThrow();
    assertEquals(2, split.count());
    assertEquals(301, split.batches().get(0).dose().grams(), 1e-9);
    assertEquals(List.of("High"), names(split.batches().get(0)));
    assertEquals(300, split.batches().get(1).dose().grams(), 1e-9);
    assertEquals(List.of("Low", "High"), names(split.batches().get(1)));
  }

  private static List<String> names(BatchSplit.Share share) {
    return share.brewers().stream().map(Brewer::name).toList();
  }

  /** Ten thousand batches are the most, and one more is too many. */
  @Test
  void tenThousandBatchesAreTheMost() {
    List<DoseRange> tiny = List.of(range(1, 1));
    assertEquals(10_000, BatchSplit.of(Mass.ofGrams(10_000), tiny, GRAM).orElseThrow().count());
    assertTrue(BatchSplit.of(Mass.ofGrams(10_001), tiny, GRAM).isEmpty());
  }

  /**
   * Of two that are free the one with the same coffee comes first; of two alike, the one that came
   * back earlier. Of two wanted at the same time, the one that is back sooner is first.
   */
  @Test
  void theSameCoffeeComesFirst() {
    List<Use> uses =
        List.of(new Use(0, 10, 0), new Use(0, 12, 1), new Use(20, 30, 1), new Use(21, 30, 0));
    assertEquals(List.of(0, 1, 1, 0), DispenserTimes.of(uses, 2).units());
    List<Use> alike =
        List.of(new Use(0, 15, 0), new Use(1, 10, 0), new Use(20, 30, 0), new Use(21, 30, 0));
    assertEquals(List.of(0, 1, 1, 0), DispenserTimes.of(alike, 2).units());
    // the third coffee takes the one of another that has been back longest
    List<Use> third = List.of(new Use(0, 15, 0), new Use(1, 10, 1), new Use(20, 30, 2));
    assertEquals(List.of(0, 1, 1), DispenserTimes.of(third, 2).units());
    List<Use> together = List.of(new Use(0, 30, 0), new Use(0, 10, 0), new Use(10, 20, 0));
    assertEquals(List.of(1, 0, 0), DispenserTimes.of(together, 2).units());
  }

  private static DoseRange range(Brewer brewer, Optional<Double> vessel) {
    return DoseRange.of(brewer, RATIO, 10.85, vessel.map(Mass::ofGrams), GRAM);
  }

  private static DoseRange range(long least, long greatest) {
    return new DoseRange(Events.brewer("Tall", 1, 0, 1000, 9), least, greatest);
  }

  private static Brewer brewer(double mostGrams, double waterGrams) {
    return Events.brewer("Tall", 1, 99.1, mostGrams, waterGrams / 998.2);
  }
}
