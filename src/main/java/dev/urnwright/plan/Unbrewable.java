package dev.urnwright.plan;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Event;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.schedule.BatchSplit;
import dev.urnwright.schedule.DoseRange;
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
    List<DoseRange> usable =
        BatchSplit.ranges(
                ratio,
                model.brewing().beveragePerDose(ratio),
                event.equipment(),
                event.serving().bypassTemperature())
            .stream()
            .filter(DoseRange::usable)
            .toList();
    if (usable.isEmpty()) {
      return tooLittleRoom();
    }
    DoseRange smallest =
        usable.stream().min(Comparator.comparingLong(DoseRange::least)).orElseThrow();
    return smallest.least() * step().grams() > dose.roundUpTo(step()).grams()
        ? tooSmall(smallest)
        : tooMany();
  }

  private Problem tooSmall(DoseRange range) {
    Mass least = step().times(range.least());
    // Without the heels and the rounding, which do not grow with the cups.
    double drinks =
        needs.stream().mapToDouble(n -> n.drinks().grams() * n.group().strength().fraction()).sum();
    Mass concentrate = Mass.ofGrams(drinks / model.brewing().strengthAt(ratio).fraction());
    double times = least.grams() / model.brewing().doseFor(concentrate, ratio).grams();
    long cups =
        Math.round(Math.ceil(needs.stream().mapToLong(n -> n.demand().cups()).sum() * times));
    return new Problem(
        needs.get(0).group().location(),
        groupsNeed()
            + " only "
            + display.mass(dose)
            + " of "
            + model.coffee().name()
            + ", but the least dose of "
            + range.brewer().name()
            + " is "
            + display.mass(least),
        "a brewer with a least dose of "
            + display.mass(dose.roundUpTo(step()))
            + " or less, or about "
            + cups
            + " cups to make a full batch of it");
  }

  private Problem tooMany() {
    return new Problem(
        model.coffee().location(),
        groupsNeed()
            + " "
            + display.mass(dose)
            + " of "
            + model.coffee().name()
            + ", which is more than "
            + BatchSplit.MOST_BATCHES
            + " batches on the brewers listed",
        "a brewer that takes "
            + display.mass(dose.times(1.0 / BatchSplit.MOST_BATCHES).roundUpTo(step()))
            + " or more a batch at "
            + display.ratio(ratio));
  }

  /** At this ratio no brewer takes even its least dose: the water or the vessel is too little. */
  private Problem tooLittleRoom() {
    Brewer brewer =
        event.equipment().brewers().stream()
            .max(Comparator.comparingDouble(this::weakestRatio))
            .orElseThrow();
    Mass least = leastWeighed(brewer);
    boolean basket = least.compareTo(brewer.greatestDose()) > 0;
    double weakest = Math.floor(weakestRatio(brewer) * 10) / 10;
    boolean stronger =
        !basket && weakest > 0 && model.brewing().brewsAt(BrewRatio.ofGramsPerGram(weakest));
    return new Problem(
        brewer.location(),
        basket
            ? "the scale can't weigh a dose for "
                + brewer.name()
                + ", which takes up to "
                + display.mass(brewer.greatestDose())
            : "at "
                + display.ratio(ratio)
                + " a dose of "
                + display.mass(least)
                + ", the least for "
                + brewer.name()
                + ", needs more than its "
                + display.mass(brewer.greatestWater())
                + " of water"
                + brewer
                    .vessel()
                    .map(v -> " or gives more than its vessel of " + display.volume(v) + " takes")
                    .orElse(""),
        stronger
            ? "a ratio of " + display.perGram(weakest) + " or stronger"
            : "a larger brewer or a finer scale");
  }

  /** The weakest ratio at which water and vessel do for the least dose that can be weighed. */
  private double weakestRatio(Brewer brewer) {
    double least = leastWeighed(brewer).grams();
    double byWater = brewer.greatestWater().roundDownTo(step()).grams() / least;
    double byVessel =
        brewer
            .vessel()
            .map(v -> v.massOfWaterAt(event.serving().bypassTemperature()).grams())
            .map(held -> model.brewing().ratioGiving((held - step().grams()) / least))
            .orElse(byWater);
    return Math.min(byWater, byVessel);
  }

  private Mass leastWeighed(Brewer brewer) {
    return brewer.leastDose().roundUpTo(step()).max(step());
  }

  private Mass step() {
    return event.equipment().scaleStep();
  }

  private String groupsNeed() {
    return groups() + (needs.size() == 1 ? " needs" : " need");
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
