package dev.urnwright.xlsx;

import dev.urnwright.brew.ExtractionCurve;

/**
 * Extraction against ratio as a formula: the cubic between two measured points, whose values and
 * slopes stand on the reference sheet.
 */
final class Extractions {
  private Extractions() {}

  /** The named range of one figure of the measured points. */
  static String name(String key) {
    return switch (key) {
      case "ratio" -> "KnotRatios";
      case "at" -> "KnotPlaces";
      case "extraction" -> "KnotExtractions";
      case "slope" -> "KnotSlopes";
      default -> throw new IllegalArgumentException("the measured points have no " + key);
    };
  }

  /**
   * The row of the measured point at or before a ratio, but the last one of its coffee never.
   *
   * @param coffee the coffee's number, a formula
   * @param ratio a formula
   * @param points how many points the coffee has, a formula
   * @param first the row of its first point, a formula
   */
  static String row(String coffee, String ratio, String points, String first) {
    String place = coffee + "*" + ReferenceSheet.RATIO_REACH + "+" + ratio;
    return "MIN("
        + first
        + "+"
        + points
        + "-2,MATCH(MAX(INDEX(KnotPlaces,"
        + first
        + "),"
        + place
        + "),KnotPlaces))";
  }

  /** How far a ratio is from that point to the next, from 0 to 1, all formulas. */
  static String way(String row, String ratio) {
    return "MIN(1,MAX(0,("
        + ratio
        + "-INDEX(KnotRatios,"
        + row
        + "))/(INDEX(KnotRatios,"
        + row
        + "+1)-INDEX(KnotRatios,"
        + row
        + "))))";
  }

  /** The extraction on that way, given both as cells. */
  static String at(String row, String way) {
    return "INDEX(KnotExtractions,"
        + row
        + ")*(1-"
        + way
        + ")^2*(1+2*"
        + way
        + ")+INDEX(KnotExtractions,"
        + row
        + "+1)*"
        + way
        + "^2*(3-2*"
        + way
        + ")+(INDEX(KnotRatios,"
        + row
        + "+1)-INDEX(KnotRatios,"
        + row
        + "))*"
        + way
        + "*(1-"
        + way
        + ")*(INDEX(KnotSlopes,"
        + row
        + ")*(1-"
        + way
        + ")-INDEX(KnotSlopes,"
        + row
        + "+1)*"
        + way
        + ")";
  }

  /** Which piece of a curve a ratio is on, counted from 0. */
  static int pieceAt(ExtractionCurve curve, double ratio) {
    int piece = 0;
    while (piece + 2 < curve.knots().size()
        && curve.knots().get(piece + 1).ratio().gramsPerGram() <= ratio) {
      piece++;
    }
    return piece;
  }

  /** How far along its piece a ratio is, from 0 to 1; for a constant between the two ends given. */
  static double wayAt(ExtractionCurve curve, double ratio) {
    int piece = pieceAt(curve, ratio);
    boolean constant = curve.knots().size() == 1;
    double from = constant ? 0 : curve.knots().get(piece).ratio().gramsPerGram();
    double to =
        constant
            ? ReferenceSheet.CONSTANT_TO_RATIO
            : curve.knots().get(piece + 1).ratio().gramsPerGram();
    return Math.min(1, Math.max(0, (ratio - from) / (to - from)));
  }
}
