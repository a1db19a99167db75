package dev.urnwright.plan;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.brew.Melting;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;

/**
 * A group that a concentrate can't serve, and what would work.
 *
 * @param model the coffee
 * @param need the group
 * @param ratio the planned ratio
 * @param display the user's units
 */
record Unreached(CoffeeModel model, GroupNeed need, BrewRatio ratio, Display display) {
  Problem problem() {
    boolean strongEnoughWithoutIce = need.group().strength().fraction() <= concentrate().fraction();
    return new Problem(
        need.group().location(),
        strongEnoughWithoutIce ? tooMuchIce() : tooStrong(),
        strongEnoughWithoutIce ? coolerOr() + stronger() : stronger() + ", or ask for " + atMost());
  }

  private Strength concentrate() {
    return model.brewing().strengthAt(ratio);
  }

  private String tooStrong() {
    return "group '"
        + need.group().name()
        + "' wants "
        + display.strength(need.group().strength())
        + ", but the concentrate of "
        + model.coffee().name()
        + " at "
        + display.ratio(ratio)
        + " reaches "
        + display.strength(concentrate());
  }

  private String tooMuchIce() {
    double cup = need.cupMass().grams();
    double water = cup * (1 - need.group().strength().fraction() / concentrate().fraction());
    return "group '"
        + need.group().name()
        + "' needs "
        + display.mass(need.cupMass().times(need.ice().fraction()))
        + " of ice a cup, but at "
        + display.strength(need.group().strength())
        + " there is room for "
        + display.mass(Mass.ofGrams(Math.max(0, water)))
        + " of water";
  }

  private String coolerOr() {
    Share room =
        Share.ofFraction(
            Math.max(0, 1 - need.group().strength().fraction() / concentrate().fraction()));
    Temperature pour = Melting.pouringTemperature(room, need.group().cup().servedAt());
    return "pour it at " + display.temperature(floor(pour)) + " or cooler, or ";
  }

  /** Down to the whole degree that is printed, so that the advice holds as printed. */
  private Temperature floor(Temperature exact) {
    return switch (display.system()) {
      case METRIC -> Temperature.ofCelsius(Math.floor(exact.celsius()));
      case US -> Temperature.ofFahrenheit(Math.floor(exact.fahrenheit()));
    };
  }

  private String stronger() {
    BrewModel brewing = model.brewing();
    if (!brewing.reaches(need.leastConcentrate())) {
      return "use less ice: no brew is as strong as " + display.strength(need.leastConcentrate());
    }
    BrewRatio exact = brewing.ratioFor(need.leastConcentrate());
    // Down to the tenth that is printed, so that the advice holds as printed.
    BrewRatio printed = BrewRatio.ofGramsPerGram(Math.floor(exact.gramsPerGram() * 10) / 10);
    return "brew it at "
        + display.ratio(printed)
        + " or stronger, which gives "
        + display.strength(need.leastConcentrate())
        + " or more";
  }

  private String atMost() {
    return "at most "
        + display.strength(
            Strength.ofPercent(
                Math.floor(concentrate().percent() * (1 - need.ice().fraction()) * 100) / 100));
  }
}
