package dev.urnwright.plan;

import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Coffee;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.util.Optional;

/**
 * Whether a reference brew can have been: no more out than in, no more dissolved than there was.
 */
record ReferenceCheck(Coffee coffee, ReferenceBrew brew, Display display) {
  private static final double LEAST_RATIO = 1;
  private static final double GREATEST_RATIO = 200;

  /** More than any grounds hold; then some of the beverage was not weighed. */
  private static final double MOST_KEPT = 10;

  /** What can't have been, if anything. */
  Optional<Problem> problem() {
    double dose = brew.dose().grams();
    double ratio = brew.water().grams() / dose;
    if (!(ratio >= LEAST_RATIO && ratio <= GREATEST_RATIO)) {
      return wrong(
          "has " + display.mass(brew.water()) + " of water for " + display.mass(brew.dose()),
          "from 1 to 200 times the dose");
    }
    double left = brew.water().grams() * (1 - coffee.profile().steamLoss().fraction());
    double beverage = brew.beverage().map(Mass::grams).orElse(left);
    if (beverage > left) {
      return wrong(
          "gave "
              + display.mass(brew.beverage().orElseThrow())
              + " of beverage from "
              + display.mass(Mass.ofGrams(left))
              + " of water left after steam",
          "less beverage than water; did you weigh the vessel with it?");
    }
    if (left - beverage > MOST_KEPT * dose) {
      return wrong(
          "gave only "
              + display.mass(brew.beverage().orElseThrow())
              + " of beverage from "
              + display.mass(brew.water())
              + " of water",
          display.mass(Mass.ofGrams(left - MOST_KEPT * dose))
              + " or more, for no grounds keep more than ten times their mass");
    }
    return dissolved(left, beverage);
  }

  private Optional<Problem> dissolved(double left, double beverage) {
    double dose = brew.dose().grams();
    double strength = brew.strength().fraction();
    // What steeped has spread through all the liquid, the solids' own mass too.
    boolean steeped = coffee.profile().method() == Method.IMMERSION;
    boolean possible =
        steeped ? strength * left <= dose * (1 - strength) : strength * beverage <= dose;
    if (possible) {
      return Optional.empty();
    }
    double most = steeped ? dose / (left + dose) : dose / beverage;
    return wrong(
        "dissolved more than its whole dose",
        "a strength below "
            + display.strength(Strength.ofPercent(Math.floor(most * 10_000) / 100))
            + ", or a larger dose");
  }

  private Optional<Problem> wrong(String what, String expected) {
    return Optional.of(
        new Problem(
            coffee.location(), "the reference brew of " + coffee.name() + " " + what, expected));
  }
}
