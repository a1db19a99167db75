package dev.urnwright.plan;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Circuit;
import dev.urnwright.event.Event;
import dev.urnwright.event.Kitchen.Heater;
import dev.urnwright.plan.Timetable.FillWindow;
import dev.urnwright.quantity.Power;
import dev.urnwright.schedule.DoseRange;
import dev.urnwright.schedule.Order;
import dev.urnwright.schedule.RunProblem;
import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunProblem.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * An event's drafts put to the clock: each fill an order with its window, each brewer with its
 * circuit.
 *
 * @param slots the fills of every coffee, in the order in which their concentrate is drawn
 * @param problem for the scheduler; its orders are the slots'
 */
record TimedDraft(List<List<Slot>> slots, RunProblem problem) {
  /** Circuits carry this share of their breaker for hours: NEC 210.20(A), the 125 % rule. */
  private static final double CONTINUOUS = 0.8;

  /** Brewers are switched on so long before their first batch. */
  static final int WARM_UP = 15;

  /** Without an opening time, work may begin so long before the first order. */
  private static final int LONG_BEFORE = 12 * 60;

  /** A brewer whose cycle isn't given. */
  static final int USUAL_CYCLE = 10;

  /**
   * One fill.
   *
   * @param share index in the coffee's draft
   * @param number of the fill within the share, from 0
   * @param taps how many of the share stand side by side
   * @param window when it is wanted
   * @param order its concentrate
   */
  record Slot(int share, int number, int taps, FillWindow window, Order order) {}

  static TimedDraft of(Event event, Timetable timetable, List<CoffeeDraft> drafts) {
    List<List<Slot>> slots = drafts.stream().map(draft -> slots(timetable, draft)).toList();
    List<CoffeeOrders> coffees =
        IntStream.range(0, drafts.size())
            .mapToObj(
                i ->
                    new CoffeeOrders(
                        slots.get(i).stream().map(Slot::order).toList(),
                        drafts.get(i).beveragePerDose() * event.equipment().scaleStep().grams(),
                        ranges(event, drafts.get(i))))
            .toList();
    List<Kind> kinds =
        event.equipment().brewers().stream().map(brewer -> kind(event, timetable, brewer)).toList();
    List<Double> circuits =
        event.equipment().circuits().stream().map(circuit -> watts(event, circuit)).toList();
    return new TimedDraft(slots, new RunProblem(coffees, kinds, circuits, earliest(event, slots)));
  }

  private static List<Slot> slots(Timetable timetable, CoffeeDraft draft) {
    List<Slot> slots = new ArrayList<>();
    for (int s = 0; s < draft.shares().size(); s++) {
      FillRounding.Share share = draft.shares().get(s);
      List<FillWindow> windows =
          timetable.windows(share.need().group(), share.dispenser(), share.fills(), share.taps());
      for (int n = 0; n < windows.size(); n++) {
        FillWindow window = windows.get(n);
        slots.add(
            new Slot(
                s,
                n,
                share.taps(),
                window,
                new Order(
                    s + "/" + n,
                    share.concentrate().grams(),
                    window.earliestReady(),
                    window.latestReady())));
      }
    }
    slots.sort((a, b) -> Order.DUE.compare(a.order(), b.order()));
    return slots;
  }

  private static List<DoseRange> ranges(Event event, CoffeeDraft draft) {
    return event.equipment().brewers().stream()
        .map(
            brewer ->
                DoseRange.of(
                    brewer,
                    draft.ratio(),
                    draft.beveragePerDose(),
                    brewer.vessel().map(v -> v.massOfWaterAt(event.serving().bypassTemperature())),
                    event.equipment().scaleStep()))
        .toList();
  }

  private static Kind kind(Event event, Timetable timetable, Brewer brewer) {
    List<Circuit> circuits = event.equipment().circuits();
    int circuit =
        IntStream.range(0, circuits.size())
            .filter(
                i -> brewer.supply().circuit().filter(circuits.get(i).name()::equals).isPresent())
            .findFirst()
            .orElse(-1);
    return new Kind(
        brewer.count(),
        brewer.cycle().map(Timetable::minutesUp).orElse(USUAL_CYCLE),
        timetable.turnaround(),
        brewer.supply().power().map(Power::watts).orElse(0.0),
        circuit);
  }

  /** What is left for brewers: heaters are counted at full power all the time. */
  private static double watts(Event event, Circuit circuit) {
    double heaters =
        event.kitchen().heaters().stream()
            .filter(heater -> heater.circuit().filter(circuit.name()::equals).isPresent())
            .mapToDouble((Heater heater) -> heater.count() * heater.power().watts())
            .sum();
    return circuit.volts() * circuit.breakerAmperes() * CONTINUOUS - heaters;
  }

  private static int earliest(Event event, List<List<Slot>> slots) {
    int first =
        slots.stream()
            .flatMap(List::stream)
            .mapToInt(slot -> slot.order().latestReady())
            .min()
            .orElseThrow();
    return event
        .kitchen()
        .opens()
        .map(opens -> Timetable.minuteOf(opens) + WARM_UP)
        .orElse(first - LONG_BEFORE);
  }
}
