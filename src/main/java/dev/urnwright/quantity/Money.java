package dev.urnwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount of money in one currency.
 *
 * @param amount 0 or more
 * @param currency an ISO 4217 currency
 */
public record Money(BigDecimal amount, Currency currency) {
  private static final String EXPECTED =
      "expected an amount and the three letters of its currency, such as 26.50 EUR";

  private static final Pattern WRITTEN = Pattern.compile("(.+?) ?([A-Za-z]{3})");

  /** Refuses a negative amount. */
  public Money {
    if (amount.signum() < 0) {
      throw new IllegalArgumentException("a price must be 0 or more: " + amount);
    }
  }

  /**
   * Reads an amount and its currency, {@code 26.50 EUR}.
   *
   * @throws UnreadableException if it isn't 0 or more of an ISO 4217 currency
   */
  public static Money parse(String text) {
    String plain = Plain.quantity(text, EXPECTED);
    Matcher money = WRITTEN.matcher(plain);
    if (!money.matches()) {
      throw new UnreadableException("'" + plain + "' is not an amount of money", EXPECTED);
    }
    BigDecimal amount = Measure.number(money.group(1), EXPECTED);
    if (amount.signum() < 0 || amount.scale() > 4) {
      throw new UnreadableException("'" + plain + "' is not a price", EXPECTED);
    }
    return new Money(amount, currency(money.group(2).toUpperCase(Locale.ROOT)));
  }

  private static Currency currency(String code) {
    try {
      return Currency.getInstance(code);
    } catch (IllegalArgumentException unknown) {
      throw new UnreadableException("'" + code + "' is not an ISO 4217 currency", EXPECTED);
    }
  }

  /** This amount so many times over, exact. */
  public Money times(long count) {
    return new Money(amount.multiply(BigDecimal.valueOf(count)), currency);
  }

  /**
   * This amount in the currency's smallest coin, a half rounded up: two decimals for EUR, none for
   * JPY, three for KWD (ISO 4217). A pseudo-currency without one has two decimals.
   */
  public Money rounded() {
    return new Money(amount.setScale(decimals(), RoundingMode.HALF_UP), currency);
  }

  private int decimals() {
    return currency.getDefaultFractionDigits() < 0 ? 2 : currency.getDefaultFractionDigits();
  }

  /**
   * The sum of both, exact.
   *
   * @throws IllegalArgumentException if the currencies differ
   */
  public Money plus(Money other) {
    return new Money(amount.add(other.sameCurrency(this)), currency);
  }

  /**
   * What is left of this without the other, exact.
   *
   * @throws IllegalArgumentException if the other is more, or the currencies differ
   */
  public Money minus(Money other) {
    return new Money(amount.subtract(other.sameCurrency(this)), currency);
  }

  /** This amount times a factor of 0 or more, rounded to the smallest coin. */
  public Money times(BigDecimal factor) {
    return new Money(amount.multiply(factor), currency).rounded();
  }

  /**
   * This amount over a number, rounded to the smallest coin.
   *
   * @param divisor above 0
   */
  public Money dividedBy(BigDecimal divisor) {
    return new Money(amount.divide(divisor, decimals(), RoundingMode.HALF_UP), currency);
  }

  private BigDecimal sameCurrency(Money other) {
    if (!currency.equals(other.currency)) {
      throw new IllegalArgumentException(this + " and " + other + " don't add");
    }
    return amount;
  }

  @Override
  public String toString() {
    return amount.toPlainString() + " " + currency.getCurrencyCode();
  }
}
