package dev.urnwright.cli;

import dev.urnwright.brew.Readings.Reading;
import dev.urnwright.quantity.Dimension;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Measure;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.quantity.UnreadableException;
import dev.urnwright.quantity.Wanted;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Reads what somebody by the brewers types: a unit may be left out where only one is likely, a
 * decimal comma is as good as a point.
 *
 * @param units whose scale and thermometer are in use
 */
record Spoken(UnitSystem units) {
  private static final BigDecimal MOST_PERCENT = BigDecimal.valueOf(30);

  /** A mass; a bare number is in grams, or in ounces with US units. */
  Mass mass(String text) {
    String example = isMetric() ? "1065 g" : "37.5 oz";
    Mass mass =
        Measure.parse(withUnit(text, isMetric() ? " g" : " oz"), Wanted.of(Dimension.MASS, example))
            .mass();
    if (mass.isZero()) {
      throw new UnreadableException(text + " is nothing", "expected a mass such as " + example);
    }
    return mass;
  }

  /** A strength in percent, from above 0 to 30; the sign may be left out. */
  Strength strength(String text) {
    String expected = "expected a percentage such as 1.81 %";
    BigDecimal percent = Measure.number(text.strip().replaceFirst("\\s*%$", ""), expected);
    if (percent.signum() <= 0 || percent.compareTo(MOST_PERCENT) > 0) {
      throw new UnreadableException(
          text + " is out of range", "expected a percentage above 0 %, up to 30 %");
    }
    return Strength.ofPercent(percent.doubleValue());
  }

  /** A temperature of liquid water; a bare number is in °C, or in °F with US units. */
  Temperature temperature(String text) {
    String example = isMetric() ? "21 °C" : "70 °F";
    Temperature temperature =
        Measure.parse(
                withUnit(text, isMetric() ? " °C" : " °F"),
                Wanted.of(Dimension.TEMPERATURE, example))
            .temperature();
    if (temperature.celsius() < 0 || temperature.celsius() > 99) {
      throw new UnreadableException(
          text + " is out of range", "expected a temperature such as " + example);
    }
    return temperature;
  }

  Reading reading(String text, Optional<Temperature> sample) {
    return new Reading(strength(text), sample);
  }

  private boolean isMetric() {
    return units == UnitSystem.METRIC;
  }

  private static String withUnit(String text, String unit) {
    return text.strip().matches("[0-9., ]+|[0-9]+ [0-9]+/[0-9]+") ? text.strip() + unit : text;
  }
}
