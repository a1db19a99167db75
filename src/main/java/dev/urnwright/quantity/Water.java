package dev.urnwright.quantity;

import com.hummeling.if97.IF97;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Water at the pressure of one standard atmosphere.
 *
 * <p>Filter coffee is taken for water: at 1.3 % of dissolved solids it is about half a percent
 * denser.
 */
public final class Water {
  private static final double ATMOSPHERE_MEGAPASCALS = 0.101325;
  private static final double CELSIUS_TO_KELVIN = 273.15;

  /** The warmest liquid water at one atmosphere. */
  private static final double BOILING_CELSIUS = 99.97;

  /** Melting heat of ice at 0 °C, J/g (brew model, iced groups). */
  public static final double MELTING_HEAT_JOULES_PER_GRAM = 333.55;

  /** Specific heat of liquid water, J/(g·K): its mean over the range of brewing. */
  public static final double SPECIFIC_HEAT_JOULES_PER_GRAM_KELVIN = 4.186;

  private Water() {}

  /** Whether water is liquid at a temperature, so that it has a {@link #densityAt density}. */
  public static boolean isLiquidAt(Temperature temperature) {
    return temperature.celsius() >= 0 && temperature.celsius() <= BOILING_CELSIUS;
  }

  /**
   * The density of liquid water, g/l (the same number as kg/m³).
   *
   * <p>IAPWS Industrial Formulation 1997 for the thermodynamic properties of water and steam,
   * region 1, at 0.101325 MPa. Cold and warm ends beyond the liquid are not extrapolated.
   *
   * @param temperature from 0 to 99.97 °C
   * @throws IllegalArgumentException if water isn't liquid at that temperature
   */
  public static double densityAt(Temperature temperature) {
    double celsius = temperature.celsius();
    if (!isLiquidAt(temperature)) {
      throw new IllegalArgumentException(
          "liquid water has a temperature from 0 to 99.97 °C: " + celsius + " °C");
    }
    Double known = Formulation.KNOWN.get(celsius);
    return known != null ? known : Formulation.density(celsius);
  }

  /**
   * The library's tables, held until they are first wanted, and the densities already worked out: a
   * plan asks for those of a handful of temperatures many thousand times, 10 µs each.
   */
  private static final class Formulation {
    static final IF97 STEAM_TABLES = new IF97(IF97.UnitSystem.DEFAULT);
    static final Map<Double, Double> KNOWN = new ConcurrentHashMap<>();
    static final int MOST_KNOWN = 1_000;

    static double density(double celsius) {
      double density = STEAM_TABLES.densityPT(ATMOSPHERE_MEGAPASCALS, celsius + CELSIUS_TO_KELVIN);
      if (KNOWN.size() < MOST_KNOWN) {
        KNOWN.put(celsius, density);
      }
      return density;
    }
  }
}
