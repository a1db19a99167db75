package dev.urnwright.plan;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Event;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A dose that no listed brewer can brew, and what would work.
 *
 * @param needs of the groups that drink it
 * @param dose what they need
 */
record Unbrewable(
    Event event,
    CoffeeModel model,
    List<GroupNeed> needs,
    Mass dose,
    BrewRatio ratio,
    Display display) {
  private static final int NAMES = 3;

  Problem problem() {
    List<Brewer> wateredEnough =
        event.equipment().brewers().stream()
            .filter(b -> ratio.waterFor(b.leastDose()).compareTo(b.greatestWater()) <= 0)
            .toList();
    return wateredEnough.isEmpty() ? tooLittleWater() : tooSmall(smallest(wateredEnough));
  }

  private static Brewer smallest(List<Brewer> brewers) {
    return brewers.stream().min(Comparator.comparing(Brewer::leastDose)).orElseThrow();
  }

  private Problem tooSmall(Brewer brewer) {
    double times = brewer.leastDose().grams() / dose.grams();
    long cups =
        Math.round(Math.ceil(needs.stream().mapToLong(n -> n.demand().cups()).sum() * times));
    return new Problem(
        needs.get(0).group().location(),
        groups()
            + " need only "
            + display.mass(dose)
            + " of "
            + model.coffee().name()
            + ", but the least dose of "
            + brewer.name()
            + " is "
            + display.mass(brewer.leastDose()),
        "a brewer with a least dose of "
            + display.mass(dose.roundDownTo(event.equipment().scaleStep()))
            + " or less, or about "
            + cups
            + " cups to make a full batch of it");
  }

  private Problem tooLittleWater() {
    Brewer brewer = smallest(event.equipment().brewers());
    double strongest = brewer.greatestWater().grams() / Math.max(1e-9, brewer.leastDose().grams());
    return new Problem(
        brewer.location(),
        "at "
            + display.ratio(ratio)
            + " the least dose of "
            + brewer.name()
            + ", "
            + display.mass(brewer.leastDose())
            + ", needs more than its "
            + display.mass(brewer.greatestWater())
            + " of water",
        "a ratio of " + display.perGram(Math.floor(strongest * 10) / 10) + " or stronger");
  }

  private String groups() {
    String names =
        needs.stream()
            .limit(NAMES)
            .map(need -> "'" + need.group().name() + "'")
            .collect(Collectors.joining(", "));
    int more = needs.size() - NAMES;
    return (needs.size() == 1 ? "group " : "groups ")
        + names
        + (more > 0 ? " and " + more + " more" : "");
  }
}
