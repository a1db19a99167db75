package dev.urnwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoneyTest {
  private static final Display DISPLAY = new Display(UnitSystem.METRIC, Mass.ofGrams(5));

  /** Minor units of ISO 4217, table A.1, as java.util.Currency has them; a half goes up. */
  @ParameterizedTest
  @CsvSource({
    "26.5 EUR, 26.50 EUR",
    "0.125 EUR, 0.13 EUR",
    "0.1249 EUR, 0.12 EUR",
    "1234.5 JPY, 1235 JPY",
    "1234.4999 JPY, 1234 JPY",
    "1.2345 KWD, 1.235 KWD",
    "7 KWD, 7.000 KWD",
    "12345 USD, 12 345.00 USD"
  })
  void moneyIsRoundedToTheSmallestCoin(String written, String shown) {

    assertEquals(shown, DISPLAY.money(Money.parse(written)).toString().replace('\u00a0', ' '));
  }

  @Test
  void sumsAreExactAndNeedOneCurrency() {
    // in binary 0.10 + 0.20 is 0.30000000000000004
    assertEquals(Money.parse("0.30 EUR"), Money.parse("0.10 EUR").plus(Money.parse("0.20 EUR")));
    assertThrows(
        IllegalArgumentException.class, () -> Money.parse("1 EUR").plus(Money.parse("1 USD")));
  }

  @Test
  void aQuotientIsRoundedOnce() {
    assertEquals(
        Money.parse("33.33 EUR"), Money.parse("100.00 EUR").dividedBy(BigDecimal.valueOf(3)));
    assertEquals(Money.parse("67 JPY"), Money.parse("200 JPY").dividedBy(BigDecimal.valueOf(3)));
  }
}
