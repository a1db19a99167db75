package dev.urnwright.xlsx;

import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.quantity.Volume;
import dev.urnwright.quantity.Water;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The units that the whole workbook is written and calculated in: grams, millilitres and °C, or
 * ounces, fluid ounces and °F. No formula converts; what depends on the unit (densities, the
 * melting of ice) stands in the reference sheet in these units.
 *
 * @param system the event's unit system
 * @param scaleStep sets the decimals of what is weighed
 */
record Units(UnitSystem system, Mass scaleStep) {
  private static final double FAHRENHEIT_PER_KELVIN = 1.8;

  static Units of(Plan plan) {
    return new Units(plan.event().print().units(), plan.event().equipment().scaleStep());
  }

  private boolean metric() {
    return system == UnitSystem.METRIC;
  }

  String mass() {
    return metric() ? "g" : "oz";
  }

  String volume() {
    return metric() ? "ml" : "fl oz";
  }

  String temperature() {
    return metric() ? "°C" : "°F";
  }

  double of(Mass mass) {
    return metric() ? mass.grams() : mass.ounces();
  }

  double of(Volume volume) {
    return metric() ? volume.millilitres() : volume.fluidOunces();
  }

  double of(Temperature temperature) {
    return metric() ? temperature.celsius() : temperature.fahrenheit();
  }

  /** The mass of one unit of volume of water. */
  double waterDensityAt(Temperature temperature) {
    Volume one = metric() ? Volume.ofMillilitres(1) : Volume.ofFluidOunces(1);
    return of(one.massOfWaterAt(temperature));
  }

  /** How many degrees water cools when it melts its own mass of ice. */
  double meltingDegrees() {
    double kelvins =
        Water.MELTING_HEAT_JOULES_PER_GRAM / Water.SPECIFIC_HEAT_JOULES_PER_GRAM_KELVIN;
    return metric() ? kelvins : kelvins * FAHRENHEIT_PER_KELVIN;
  }

  double freezing() {
    return of(Temperature.ofCelsius(0));
  }

  double milligramsPerMass() {
    return 1000 * (metric() ? 1 : Mass.ofOunces(1).grams());
  }

  /** A mass as weighed: the decimals of the scale's step. */
  Format weighed() {
    return Format.decimals(decimals());
  }

  /** A calculated mass: one decimal more than the scale shows. */
  Format exact() {
    return Format.decimals(Math.min(3, decimals() + 1));
  }

  Format volumes() {
    return Format.decimals(metric() ? 0 : 1);
  }

  /** The volume of a cup, to the millilitre or the hundredth of a fluid ounce. */
  Format cups() {
    return Format.decimals(metric() ? 0 : 2);
  }

  Format temperatures() {
    return new Format("0.#");
  }

  private int decimals() {
    int ofStep =
        BigDecimal.valueOf(of(scaleStep))
            .setScale(4, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .scale();
    return Math.min(2, Math.max(metric() ? 0 : 1, ofStep));
  }
}
