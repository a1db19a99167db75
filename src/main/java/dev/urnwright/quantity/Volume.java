package dev.urnwright.quantity;

/**
 * A volume, 0 or more, kept in litres.
 *
 * <p>A volume says nothing of a mass until a temperature is known: a litre at 93 °C is about 963 g.
 */
public final class Volume implements Comparable<Volume> {
  private static final double LITRES_PER_FLUID_OUNCE = 0.0295735295625; // exact, US (NIST HB 44)

  private static final double STEP_SLACK = 1e-9;

  private final double litres;

  private Volume(double litres) {
    this.litres = Checks.notNegative(litres, "a volume", "litres");
  }

  /**
   * A volume of so many litres.
   *
   * @param litres 0 or more
   * @throws IllegalArgumentException if {@code litres} is negative, NaN or infinite
   */
  public static Volume ofLitres(double litres) {
    return new Volume(litres);
  }

  /**
   * A volume of so many millilitres.
   *
   * @param millilitres 0 or more
   * @throws IllegalArgumentException if {@code millilitres} is negative, NaN or infinite
   */
  public static Volume ofMillilitres(double millilitres) {
    return new Volume(millilitres / 1000);
  }

  /**
   * A volume of so many US fluid ounces of 29.5735295625 ml.
   *
   * @param fluidOunces 0 or more
   * @throws IllegalArgumentException if {@code fluidOunces} is negative, NaN or infinite
   */
  public static Volume ofFluidOunces(double fluidOunces) {
    return new Volume(fluidOunces * LITRES_PER_FLUID_OUNCE);
  }

  /** This volume in litres. */
  public double litres() {
    return litres;
  }

  /** This volume in millilitres. */
  public double millilitres() {
    return litres * 1000;
  }

  /** This volume in US fluid ounces. */
  public double fluidOunces() {
    return litres / LITRES_PER_FLUID_OUNCE;
  }

  /** This volume in US gallons of 128 fluid ounces. */
  public double gallons() {
    return fluidOunces() / 128;
  }

  /** The sum of both volumes. */
  public Volume plus(Volume other) {
    return new Volume(litres + other.litres);
  }

  /**
   * What is left of this volume without the other.
   *
   * @throws IllegalArgumentException if the other is the larger
   */
  public Volume minus(Volume other) {
    return new Volume(litres - other.litres);
  }

  /**
   * This volume so many times over.
   *
   * @param factor 0 or more
   * @throws IllegalArgumentException if {@code factor} is negative, NaN or infinite
   */
  public Volume times(double factor) {
    return new Volume(litres * factor);
  }

  /** The mass of this volume of water at a temperature. */
  public Mass massOfWaterAt(Temperature temperature) {
    return Mass.ofGrams(litres * Water.densityAt(temperature));
  }

  /** The volume that a mass of water takes at a temperature. */
  public static Volume ofWater(Mass mass, Temperature temperature) {
    return new Volume(mass.grams() / Water.densityAt(temperature));
  }

  /** The nearest whole number of marks; a half goes up. */
  public Volume roundTo(Volume mark) {
    if (mark.litres <= 0) {
      throw new IllegalArgumentException("a jug mark must be above 0 l: " + mark.litres);
    }
    return new Volume(Math.floor(litres / mark.litres + 0.5 + STEP_SLACK) * mark.litres);
  }

  @Override
  public int compareTo(Volume other) {
    return Double.compare(litres, other.litres);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Volume volume && Double.compare(volume.litres, litres) == 0;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(litres);
  }

  @Override
  public String toString() {
    return litres + " l";
  }
}
