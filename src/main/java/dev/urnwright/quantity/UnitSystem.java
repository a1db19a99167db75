package dev.urnwright.quantity;

/** Which units the sheets print. What is read may mix both. */
public enum UnitSystem {
  /** Grams, millilitres and litres, °C. */
  METRIC,
  /** US customary: ounces and pounds avoirdupois, US fluid ounces, quarts and gallons, °F. */
  US
}
