package dev.urnwright.quantity;

/**
 * A temperature, kept in °C. Temperatures neither add nor multiply; the difference between two is a
 * plain number of kelvins.
 */
public final class Temperature implements Comparable<Temperature> {
  private static final double ABSOLUTE_ZERO_CELSIUS = -273.15;

  private final double celsius;

  private Temperature(double celsius) {
    this.celsius = Checks.within(celsius, ABSOLUTE_ZERO_CELSIUS, 1000, "a temperature", "°C");
  }

  /**
   * A temperature in °C.
   *
   * @param celsius from -273.15 to 1000
   * @throws IllegalArgumentException if {@code celsius} is outside that range or NaN
   */
  public static Temperature ofCelsius(double celsius) {
    return new Temperature(celsius);
  }

  /**
   * A temperature in °F.
   *
   * @param fahrenheit from -459.67 to 1832
   * @throws IllegalArgumentException if {@code fahrenheit} is outside that range or NaN
   */
  public static Temperature ofFahrenheit(double fahrenheit) {
    return new Temperature((fahrenheit - 32) / 1.8);
  }

  /** This temperature in °C. */
  public double celsius() {
    return celsius;
  }

  /** This temperature in °F. */
  public double fahrenheit() {
    return celsius * 1.8 + 32;
  }

  /** How many kelvins this temperature lies above the other; negative when below. */
  public double kelvinsAbove(Temperature other) {
    return celsius - other.celsius;
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(celsius, other.celsius);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Temperature t && Double.compare(t.celsius, celsius) == 0;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(celsius);
  }

  @Override
  public String toString() {
    return celsius + " °C";
  }
}
