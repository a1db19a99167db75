package dev.urnwright.quantity;

import java.math.BigDecimal;
import java.util.Currency;

/**
 * An amount of money in one currency.
 *
 * @param amount 0 or more
 * @param currency an ISO 4217 currency
 */
public record Money(BigDecimal amount, Currency currency) {
  /** Refuses a negative amount. */
  public Money {
    if (amount.signum() < 0) {
      throw new IllegalArgumentException("a price must be 0 or more: " + amount);
    }
  }

  /** This amount so many times over, exact. */
  public Money times(long count) {
    return new Money(amount.multiply(BigDecimal.valueOf(count)), currency);
  }

  @Override
  public String toString() {
    return amount.toPlainString() + " " + currency.getCurrencyCode();
  }
}
