package dev.urnwright.plan;

import dev.urnwright.plan.Run.Quality;
import dev.urnwright.plan.TimedDraft.Slot;
import dev.urnwright.plan.TimedPlan.Filling;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/**
 * How old the coffee of a run is when it is poured, and how much younger it might be.
 *
 * @param coffees finished, in the order of the timed plan's coffees
 */
record CoffeeAge(List<CoffeePlan> coffees, TimedPlan timed) {
  Quality quality() {
    double grams = 0;
    double gramMinutes = 0;
    int greatest = 0;
    for (int c = 0; c < coffees.size(); c++) {
      List<Slot> slots = timed.draft().slots().get(c);
      for (int s = 0; s < slots.size(); s++) {
        Filling filling = timed.filling().get(c).get(s);
        if (coffees.get(c).groups().get(slots.get(s).share()).group().ice().isPresent()) {
          continue; // it is meant to stand and cool
        }
        for (Map.Entry<Integer, Double> drawn : filling.drawn().entrySet()) {
          int ready = timed.batches().get(c).get(drawn.getKey()).ready();
          grams += drawn.getValue();
          gramMinutes += drawn.getValue() * (slots.get(s).window().meanPour() - ready);
          greatest = Math.max(greatest, slots.get(s).window().lastPour() - ready);
        }
      }
    }
    double better = timed.solution().waitGramMinutes() - timed.solution().proof().waitBound();
    double least = Math.max(0, gramMinutes - better);
    return new Quality(
        timed.solution().proof().fewestBatches(),
        timed.solution().proof().leastWait(),
        minutes(each(gramMinutes, grams)),
        minutes(each(least, grams)),
        Duration.ofMinutes(greatest));
  }

  private static double each(double gramMinutes, double grams) {
    return grams == 0 ? 0 : gramMinutes / grams;
  }

  private static Duration minutes(double minutes) {
    return Duration.ofSeconds(Math.round(minutes * 60));
  }
}
