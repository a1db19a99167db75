package dev.urnwright.xlsx;

import dev.urnwright.quantity.Temperature;
import java.util.List;

/**
 * The density of water as a table on the reference sheet, between whose degrees formulas
 * interpolate. From one degree Celsius to the next the straight line stays within 2 millionths of
 * the curve.
 */
final class WaterTable {
  static final String TEMPERATURES = "WaterTemperatures";
  static final String DENSITIES = "WaterDensities";
  static final String SLOPES = "WaterSlopes";
  static final String FREEZING = "FreezingPoint";
  static final int DEGREES = 100;

  private static final double WARMEST_CELSIUS = 99.97;

  private WaterTable() {}

  /** A formula for the density at a temperature, itself a formula; one factor. */
  static String densityAt(String temperature) {
    String row = "MATCH(MAX(" + temperature + "," + FREEZING + ")," + TEMPERATURES + ")";
    return "(INDEX("
        + DENSITIES
        + ","
        + row
        + ")+("
        + temperature
        + "-INDEX("
        + TEMPERATURES
        + ","
        + row
        + "))*INDEX("
        + SLOPES
        + ","
        + row
        + "))";
  }

  static Grid grid(Units units) {
    return Grid.down(
        Layout.REFERENCE,
        Page.FIRST_ITEM,
        List.of(
            new Column("temperature", "Water, " + units.temperature(), units.temperatures(), 11),
            new Column(
                "density", "Density, " + units.mass() + " per " + units.volume(), Format.EXACT, 13),
            new Column("slope", "Change per degree", Format.EXACT, 13)));
  }

  static void write(Page page, Grid grid, Units units) {
    for (int degree = 0; degree < DEGREES; degree++) {
      Temperature here = Temperature.ofCelsius(degree);
      Temperature next = Temperature.ofCelsius(Math.min(degree + 1, WARMEST_CELSIUS));
      double density = units.waterDensityAt(here);
      page.line(grid.entry(degree))
          .number("temperature", units.of(here))
          .number("density", density)
          .number(
              "slope", (units.waterDensityAt(next) - density) / (units.of(next) - units.of(here)));
    }
  }

  static void name(Book book, Grid grid) {
    book.name(TEMPERATURES, grid.fullRange("temperature", 0, DEGREES));
    book.name(DENSITIES, grid.fullRange("density", 0, DEGREES));
    book.name(SLOPES, grid.fullRange("slope", 0, DEGREES));
  }
}
