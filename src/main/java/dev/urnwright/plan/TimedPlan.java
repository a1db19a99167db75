package dev.urnwright.plan;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.plan.DispenserShortage.Out;
import dev.urnwright.plan.TimedDraft.Slot;
import dev.urnwright.quantity.Mass;
import dev.urnwright.schedule.BrewerUnit;
import dev.urnwright.schedule.DispenserTimes;
import dev.urnwright.schedule.DispenserTimes.Use;
import dev.urnwright.schedule.RunSolution;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A solved draft: which batches on which brewers, when each fill gets its concentrate, and which
 * dispenser it goes into.
 *
 * @param draft what was asked of the clock
 * @param solution of its problem
 * @param batches of each coffee, in order of being ready
 * @param filling of each coffee, for each of its slots in order
 * @param shortOf kinds of dispensers of which there are too few
 */
record TimedPlan(
    TimedDraft draft,
    RunSolution solution,
    List<List<TimedBatch>> batches,
    List<List<Filling>> filling,
    List<DispenserShortage> shortOf) {
  /**
   * When a fill gets its concentrate.
   *
   * @param firstReady its first batch
   * @param lastReady its last batch
   * @param drawn grams of each of the coffee's batches, by index
   * @param unit the dispenser, such as {@code Airpot 3}; empty when the event lists none
   */
  record Filling(
      int firstReady, int lastReady, Map<Integer, Double> drawn, Optional<String> unit) {}

  static TimedPlan of(
      Event event,
      Timetable timetable,
      List<CoffeeDraft> drafts,
      TimedDraft draft,
      RunSolution solution) {
    List<List<TimedBatch>> batches = new ArrayList<>();
    List<List<Filling>> filling = new ArrayList<>();
    for (int coffee = 0; coffee < drafts.size(); coffee++) {
      int which = coffee;
      List<TimedBatch> ofCoffee =
          solution.batches().stream().filter(batch -> batch.coffee() == which).toList();
      List<Map<Integer, Double>> draws =
          new ConcentrateShares(draft.problem().coffees().get(coffee), ofCoffee)
              .of(grams(draft.slots().get(coffee)));
      batches.add(dosed(ofCoffee, draws, draft.problem().coffees().get(coffee).gramsPerStep()));
      filling.add(filling(draws, ofCoffee));
    }
    List<DispenserShortage> shortOf =
        event.equipment().dispensers().stream()
            .map(dispenser -> name(dispenser, timetable, drafts, draft, filling))
            .filter(shortage -> shortage.more() > 0)
            .toList();
    return new TimedPlan(draft, solution, batches, filling, shortOf);
  }

  /** The batches of one coffee as orders to its draft. */
  List<BrewOrder> orders(Event event, int coffee) {
    double stepGrams = event.equipment().scaleStep().grams();
    return batches.get(coffee).stream()
        .map(
            batch ->
                new BrewOrder(
                    Optional.of(unit(event, batch)), Mass.ofGrams(batch.doseSteps() * stepGrams)))
        .toList();
  }

  private static BrewerUnit unit(Event event, TimedBatch batch) {
    Brewer brewer = event.equipment().brewers().get(batch.kind());
    return new BrewerUnit(brewer, batch.unit() + 1);
  }

  private static List<Double> grams(List<Slot> slots) {
    return slots.stream().map(slot -> slot.order().grams()).toList();
  }

  /** Batches whose doses are raised where they give a little more than was planned. */
  private static List<TimedBatch> dosed(
      List<TimedBatch> batches, List<Map<Integer, Double>> draws, double gramsPerStep) {
    double[] sums = new double[batches.size()];
    draws.forEach(of -> of.forEach((batch, grams) -> sums[batch] += grams));
    return IntStream.range(0, sums.length)
        .mapToObj(
            i ->
                batches
                    .get(i)
                    .withDose(
                        Math.max(
                            batches.get(i).doseSteps(),
                            (long) Math.ceil(sums[i] / gramsPerStep - 1e-9))))
        .toList();
  }

  private static List<Filling> filling(List<Map<Integer, Double>> draws, List<TimedBatch> batches) {
    List<Filling> filling = new ArrayList<>();
    for (Map<Integer, Double> drawn : draws) {
      int first = drawn.keySet().stream().mapToInt(b -> batches.get(b).ready()).min().orElseThrow();
      int last = drawn.keySet().stream().mapToInt(b -> batches.get(b).ready()).max().orElseThrow();
      filling.add(new Filling(first, last, drawn, Optional.empty()));
    }
    return filling;
  }

  /** Names the dispensers of one kind, and tells how many are wanted at once. */
  private static DispenserShortage name(
      Dispenser dispenser,
      Timetable timetable,
      List<CoffeeDraft> drafts,
      TimedDraft draft,
      List<List<Filling>> filling) {
    List<int[]> places = new ArrayList<>();
    List<Use> uses = new ArrayList<>();
    List<Out> out = new ArrayList<>();
    for (int coffee = 0; coffee < drafts.size(); coffee++) {
      for (int s = 0; s < draft.slots().get(coffee).size(); s++) {
        Slot slot = draft.slots().get(coffee).get(s);
        FillRounding.Share share = drafts.get(coffee).shares().get(slot.share());
        if (share.dispenser().filter(dispenser::equals).isPresent()) {
          int from = filling.get(coffee).get(s).firstReady();
          int until = slot.window().lastPour() + slot.window().carry() + timetable.cleaning();
          places.add(new int[] {coffee, s});
          uses.add(new Use(from, until, coffee));
          out.add(new Out(share.need(), from, until));
        }
      }
    }
    DispenserTimes times = DispenserTimes.of(uses, dispenser.count());
    IntStream.range(0, places.size())
        .forEach(
            i -> {
              List<Filling> ofCoffee = filling.get(places.get(i)[0]);
              Filling bare = ofCoffee.get(places.get(i)[1]);
              String unit =
                  dispenser.count() == 1 && times.most() <= 1
                      ? dispenser.name()
                      : dispenser.name() + " " + (times.units().get(i) + 1);
              ofCoffee.set(
                  places.get(i)[1],
                  new Filling(
                      bare.firstReady(), bare.lastReady(), bare.drawn(), Optional.of(unit)));
            });
    return DispenserShortage.of(dispenser, out);
  }
}
