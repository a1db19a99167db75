package dev.urnwright.input;

import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Measure;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Span;
import dev.urnwright.quantity.Spelling;
import dev.urnwright.quantity.UnreadableException;
import java.math.BigDecimal;

/** Kinds of values that are numbers without a unit of measure: counts, ratios, prices. */
final class Numbers {
  private Numbers() {}

  static Scalar<Integer> count(String example, int least, int greatest) {
    String expected = "expected a whole number such as " + example;
    return new Scalar<>(
        Shape.Value.number(Spelling.number(), expected),
        text -> {
          BigDecimal number = Measure.number(text, expected);
          if (number.stripTrailingZeros().scale() > 0) {
            throw new UnreadableException(Words.quoted(text) + " is not a whole number", expected);
          }
          Amounts.within(
              text, "a number", number, BigDecimal.valueOf(least), BigDecimal.valueOf(greatest));
          return number.intValueExact();
        });
  }

  static Scalar<Double> number(String example, String least, String greatest) {
    String expected = "expected a number such as " + example;
    return new Scalar<>(
        Shape.Value.number(Spelling.number(), expected),
        text -> {
          BigDecimal number = Measure.number(text, expected);
          Amounts.within(text, "a number", number, new BigDecimal(least), new BigDecimal(greatest));
          return number.doubleValue();
        });
  }

  static Scalar<BrewRatio> ratio() {
    return Slip.asked(
        new Scalar<>(
            Shape.Value.number(
                Spelling.ratio(), "expected a ratio of water to coffee such as 13 or 1:13"),
            BrewRatio::parse),
        ratio -> ratio.gramsPerGram() >= 5 && ratio.gramsPerGram() <= 22);
  }

  static Scalar<Money> money() {
    return new Scalar<>(
        Shape.Value.of(Spelling.money(), "expected a price such as 26.50 EUR"), Money::parse);
  }

  /** Two ratios, the lesser first. */
  static Span ratios(String text) {
    return Span.of(text)
        .orElseThrow(
            () ->
                new UnreadableException(
                    Words.quoted(text) + " is not a range", "expected a range such as 12 to 16"));
  }
}
