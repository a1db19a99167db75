package dev.urnwright.quantity;

/**
 * The liquid that the grounds keep, grams per gram of dose: brew water less vapour less beverage,
 * over dose.
 */
public final class Absorption implements Comparable<Absorption> {
  private final double gramsPerGram;

  private Absorption(double gramsPerGram) {
    this.gramsPerGram =
        Checks.within(gramsPerGram, 0, 20, "an absorption", "grams per gram of coffee");
  }

  /**
   * An absorption of so many grams for each gram of coffee.
   *
   * @param gramsPerGram from 0 to 20
   * @throws IllegalArgumentException if {@code gramsPerGram} is outside that range or NaN
   */
  public static Absorption ofGramsPerGram(double gramsPerGram) {
    return new Absorption(gramsPerGram);
  }

  /** Grams of liquid kept by each gram of coffee. */
  public double gramsPerGram() {
    return gramsPerGram;
  }

  /** What the grounds of a dose keep. */
  public Mass of(Mass dose) {
    return dose.times(gramsPerGram);
  }

  @Override
  public int compareTo(Absorption other) {
    return Double.compare(gramsPerGram, other.gramsPerGram);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Absorption that && Double.compare(that.gramsPerGram, gramsPerGram) == 0;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(gramsPerGram);
  }

  @Override
  public String toString() {
    return gramsPerGram + " g/g";
  }
}
