package dev.urnwright.xlsx;

/**
 * Pieces of formulas that many sheets use. All round as the planner does: what lies within a
 * billionth of a step of a whole step is that step, so that binary noise never calls for another.
 */
final class Formulas {
  private static final String NOISE = "1E-9";

  private Formulas() {}

  /** The next whole number of steps, as an amount. */
  static String up(String amount, String step) {
    return "(" + stepsUp(amount, step) + "*" + step + ")";
  }

  /** The last whole number of steps at or below an amount, as a number of steps. */
  static String stepsDown(String amount, String step) {
    return "INT((" + amount + ")/" + step + "+" + NOISE + ")";
  }

  /** The next whole number of steps, as a number of steps. */
  static String stepsUp(String amount, String step) {
    return ceiling("(" + amount + ")/" + step);
  }

  /** The nearest whole number of steps, as an amount; a half goes up. */
  static String nearest(String amount, String step) {
    return "(INT((" + amount + ")/" + step + "+0.5+" + NOISE + ")*" + step + ")";
  }

  /** The smallest whole number at or above a number; rounding up would take 0 less noise to -1. */
  static String ceiling(String number) {
    return "-INT(" + NOISE + "-(" + number + "))";
  }
}
