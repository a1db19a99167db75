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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A group that a concentrate can't serve, and what would work. Each figure is rounded to the side
 * on which it works as printed.
 *
 * @param model the coffee
 * @param need the group
 * @param ratio the planned ratio
 * @param display the user's units
 */
record Unreached(CoffeeModel model, GroupNeed need, BrewRatio ratio, Display display) {
  private static final double NOISE = 1e-9;

  Problem problem() {
    boolean strongEnoughWithoutIce = need.group().strength().fraction() <= concentrate().fraction();
    List<String> ways = new ArrayList<>();
    if (strongEnoughWithoutIce) {
      cooler().ifPresent(ways::add);
    }
    stronger().ifPresent(ways::add);
    weaker().ifPresent(ways::add);
    return new Problem(
        need.group().location(),
        strongEnoughWithoutIce ? tooMuchIce() : tooStrong(),
        ways.isEmpty()
            ? "a group that is served weaker, or a coffee that extracts more"
            : String.join(", or ", ways));
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
    return "group '"
        + need.group().name()
        + "' needs "
        + display.mass(need.cupMass().times(need.ice().fraction()))
        + " of ice a cup, but at "
        + display.strength(need.group().strength())
        + " there is room for "
        + display.mass(Mass.ofGrams(need.cupMass().grams() * roomForWater()))
        + " of water";
  }

  private double roomForWater() {
    return Math.max(0, 1 - need.group().strength().fraction() / concentrate().fraction());
  }

  private Optional<String> cooler() {
    Temperature served = need.group().cup().servedAt();
    Temperature pour = floor(Melting.pouringTemperature(Share.ofFraction(roomForWater()), served));
    return pour.compareTo(served) > 0
        ? Optional.of("pour it at " + display.temperature(pour) + " or cooler")
        : Optional.empty();
  }

  /** Down to the whole degree that is printed. */
  private Temperature floor(Temperature exact) {
    return switch (display.system()) {
      case METRIC -> Temperature.ofCelsius(Math.floor(exact.celsius()));
      case US -> Temperature.ofFahrenheit(Math.floor(exact.fahrenheit()));
    };
  }

  private Optional<String> stronger() {
    BrewModel brewing = model.brewing();
    // Up to the hundredth that is printed, then down to the tenth of a ratio.
    Strength strength =
        Strength.ofPercent(
            Math.min(100, Math.ceil((need.leastConcentrate().percent() - NOISE) * 100) / 100));
    if (!brewing.reaches(strength)) {
      return Optional.empty();
    }
    double tenths = Math.floor(brewing.ratioFor(strength).gramsPerGram() * 10 + NOISE) / 10;
    BrewRatio printed = BrewRatio.ofGramsPerGram(Math.max(0.1, tenths));
    return brewing.brewsAt(printed) && need.isReachedBy(brewing.strengthAt(printed))
        ? Optional.of(
            "brew it at "
                + display.ratio(printed)
                + " or stronger, which gives "
                + display.strength(strength)
                + " or more")
        : Optional.empty();
  }

  /** Down to the hundredth that is printed; nothing where that would hardly be coffee. */
  private Optional<String> weaker() {
    double percent = concentrate().percent() * (1 - need.ice().fraction());
    Strength most = Strength.ofPercent(Math.floor(percent * 100 + NOISE) / 100);
    return most.percent() >= 0.1
        ? Optional.of("ask for at most " + display.strength(most))
        : Optional.empty();
  }
}
