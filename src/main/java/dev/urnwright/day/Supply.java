package dev.urnwright.day;

import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;

/** Concentrate of one batch, while it is shared out. */
final class Supply {
  private final Strength strength;
  private final double grams;
  private double left;

  /**
   * What there is.
   *
   * @param grams not yet drawn, 0 or more
   */
  Supply(double grams, Strength strength) {
    this.strength = strength;
    this.grams = grams;
    this.left = grams;
  }

  /** The same batch after something was drawn for good. */
  Supply without(Mass drawn) {
    return new Supply(Math.max(0, grams - drawn.grams()), strength);
  }

  Strength strength() {
    return strength;
  }

  double grams() {
    return grams;
  }

  /** Takes the wanted amount rounded up to the step, or what whole steps of it are left. */
  double take(double wanted, Mass step) {
    double up = Mass.ofGrams(wanted).roundUpTo(step).grams();
    double there = Mass.ofGrams(Math.max(0, left)).roundDownTo(step).grams();
    double taken = Math.min(up, there);
    left -= taken;
    return taken;
  }
}
