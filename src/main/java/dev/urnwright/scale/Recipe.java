package dev.urnwright.scale;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewBalance;
import dev.urnwright.brew.Estimate;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Length;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import java.time.Duration;
import java.util.Optional;

/**
 * What to do for one batch, rounded to the scale; all batches are alike.
 *
 * @param batches how many
 * @param brew through the bed: dose, brew water, beverage
 * @param cup that beverage with its bypass
 * @param strength how strong the cup is, and how surely
 * @param pours how the brew water goes in
 * @param bed how deep it lies, when the basket is known
 * @param contact how long water touches coffee, when that can be told
 */
public record Recipe(
    int batches,
    BrewBalance brew,
    Blend cup,
    Estimate strength,
    Pours pours,
    Optional<Bed> bed,
    Optional<Contact> contact) {
  /** Bypass over everything finished. */
  public Share bypassShare() {
    return Share.ofFraction(cup.bypass().grams() / cup.finished().grams());
  }

  /** All water of the cup over dose, which compares it with an ordinary brew. */
  public BrewRatio totalWaterToCoffee() {
    return BrewRatio.of(brew.water().plus(cup.bypass()), brew.dose());
  }

  /** Everything finished, all batches together. */
  public Mass finished() {
    return cup.finished().times(batches);
  }

  /**
   * How the brew water goes in.
   *
   * @param bloom first, over all the grounds
   * @param pause before the rest
   * @param rest of the brew water
   */
  public record Pours(Mass bloom, Duration pause, Mass rest) {}

  /**
   * The bed.
   *
   * @param depth dry
   * @param needed height of the basket, with room for swelling
   * @param verdict against the guide
   */
  public record Bed(Length depth, Length needed, Verdict verdict) {
    /** The published guide: 2.5 to 5.0 cm gives the best uniformity (certification, 2014). */
    public static final Length LEAST = Length.ofMillimetres(25);

    /** See {@link #LEAST}. */
    public static final Length MOST = Length.ofMillimetres(50);

    /** How a bed lies to the guide. */
    public enum Verdict {
      /** Thinner than the guide. */
      SHALLOW,
      /** Within it. */
      WITHIN,
      /** Deeper. */
      DEEP,
      /** In a cone, for which there is no guide. */
      NOT_GUIDED
    }
  }

  /**
   * How long water touches coffee.
   *
   * @param expected to the ten seconds
   * @param grind that goes with it; empty where the guide has none
   */
  public record Contact(Duration expected, Optional<Grind> grind) {
    /** No brew is to take longer (certification of brewers, 2014). */
    public static final Duration MOST = Duration.ofMinutes(8);
  }
}
