package dev.urnwright.event;

import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;

/**
 * How far from the truth what is weighed, filled and read may be. All of them are standard
 * uncertainties (JCGM 100:2008): two times out of three the truth is nearer than that.
 *
 * @param scales of what is weighed
 * @param refractometer of what is read, in points of strength
 * @param brewWater of the water filled into a brewer, as a part of it
 * @param absorption of what the grounds of one batch keep, beside what the profile says
 * @param extraction of what one batch extracts, beside what the profile says, in points
 * @param cup of what is poured into a cup, as a part of it
 */
public record Uncertainties(
    Scales scales,
    Strength refractometer,
    Share brewWater,
    Absorption absorption,
    Extraction extraction,
    Share cup) {
  /** A scale that shows whole grams, tared and read; see {@link #ofStep}. */
  private static final Mass SHOWS_GRAMS = Mass.ofGrams(1);

  /**
   * Scales, each read twice for a weighing.
   *
   * @param kitchen that weighs dose, concentrate and bypass
   * @param reference that the reference brew was weighed on
   */
  public record Scales(Mass kitchen, Mass reference) {}

  /**
   * What is taken where nothing is said.
   *
   * @param scaleStep what the kitchen's scale can tell apart
   */
  public static Uncertainties usual(Mass scaleStep) {
    return new Uncertainties(
        new Scales(ofStep(scaleStep), ofStep(scaleStep.min(SHOWS_GRAMS))),
        Strength.ofPercent(0.03),
        Share.ofPercent(1),
        Absorption.ofGramsPerGram(0.15),
        Extraction.ofPercent(0.4),
        Share.ofPercent(3));
  }

  /**
   * A weighing is the difference of two readings, each off by up to half a step either way: {@code
   * step / √6} (JCGM 100:2008, 4.3.7 and F.2.2.1).
   */
  private static Mass ofStep(Mass step) {
    return step.times(1 / Math.sqrt(6));
  }
}
