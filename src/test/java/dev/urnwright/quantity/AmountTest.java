package dev.urnwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountTest {
  /** By hand: whole packs, rounded up, and one that is just full takes no other. */
  @ParameterizedTest
  @CsvSource({
    "135, 50, 3",
    "150, 50, 3",
    "151, 50, 4",
    "0, 50, 0",
    "0.3 l, 100 ml, 3",
    "2.61 l, 1 l, 3",
    "3.1 kg, 1 lb, 7",
    "1 gal, 1 qt, 4"
  })
  void packsHoldWhatIsNeeded(String needed, String pack, long packs) {
    assertEquals(packs, Amount.parse(needed).packsOf(Amount.parse(pack)));
  }

  @Test
  void packsAreEnoughAndNoneIsTooMany() {
    Random random = new Random(20270918);
    for (int i = 0; i < 20_000; i++) {
      Amount needed = Amount.ofPieces(random.nextDouble() * Math.pow(10, random.nextInt(7)));
      Amount pack = Amount.ofPieces(0.01 + random.nextDouble() * Math.pow(10, random.nextInt(4)));
      long packs = needed.packsOf(pack);
      double slack = 1e-8 * Math.max(1, needed.value());
      assertTrue(packs * pack.value() >= needed.value() - slack, needed + " in " + pack);
      assertTrue((packs - 1) * pack.value() < needed.value(), needed + " in " + pack);
    }
  }

  @Test
  void whatIsOnHandIsNeverSoldBack() {
    assertEquals(Amount.ofPieces(0), Amount.ofPieces(10).beyond(Amount.ofPieces(12)));
    assertEquals(Amount.ofPieces(3), Amount.ofPieces(15).beyond(Amount.ofPieces(12)));
  }

  @Test
  void amountsOfOneKindAlone() {
    Amount litre = Amount.parse("1 l");
    assertThrows(IllegalArgumentException.class, () -> litre.packsOf(Amount.parse("1 kg")));
    assertThrows(IllegalArgumentException.class, () -> litre.beyond(Amount.parse("1")));
    assertThrows(IllegalArgumentException.class, () -> litre.packsOf(Amount.parse("0 l")));
    assertThrows(UnreadableException.class, () -> Amount.parse("3 boxes"));
    assertThrows(UnreadableException.class, () -> Amount.parse("-3"));
    assertThrows(UnreadableException.class, () -> Amount.parse("90 °C"));
  }
}
