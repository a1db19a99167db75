package dev.urnwright.plan;

import dev.urnwright.brew.Heat;
import dev.urnwright.event.Event;
import dev.urnwright.event.Kitchen.Heater;
import dev.urnwright.plan.Run.HeaterTime;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.HotWater;
import dev.urnwright.schedule.HotWater.Draw;
import dev.urnwright.schedule.HotWater.Supply;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Heaters against the hot water that a run draws: bypass, rinsing, preheating. */
record HotWaterPlan(Event event, List<Draw> draws) {
  private static final int MOST_MORE = 9;

  /** When each heater is switched on; none when nothing is drawn or no heaters are listed. */
  List<HeaterTime> heaters(RunClock clock) {
    if (!isAsked()) {
      return List.of();
    }
    Supply supply = tank(event.kitchen().heaters()).supply(draws);
    List<HeaterTime> times = new ArrayList<>();
    for (Heater heater : event.kitchen().heaters()) {
      Duration toHeat = toHeat(heater);
      int on = Math.min(supply.switchOn(), supply.firstDraw() - Timetable.minutesUp(toHeat));
      for (int n = 1; n <= heater.count(); n++) {
        times.add(
            new HeaterTime(
                heater.count() == 1 ? heater.name() : heater.name() + " " + n,
                clock.at(on),
                clock.at(supply.firstDraw()),
                toHeat));
      }
    }
    return times;
  }

  /** Whether heaters that are switched on at these times give the water in time. */
  boolean isServedBy(List<HeaterTime> planned, RunClock clock) {
    if (!isAsked()) {
      return true;
    }
    List<HeaterTime> needed = heaters(clock);
    return tank(event.kitchen().heaters()).supply(draws).keepsAhead()
        && IntStream.range(0, needed.size())
            .noneMatch(i -> needed.get(i).on().isBefore(planned.get(i).on()));
  }

  /** Hot water that can't be had in time, and what would do. */
  Optional<Problem> problem(RunClock clock, Display display) {
    if (!isAsked()) {
      return Optional.empty();
    }
    Supply supply = tank(event.kitchen().heaters()).supply(draws);
    if (supply.keepsAhead()) {
      return Optional.empty();
    }
    return Optional.of(
        new Problem(
            event.kitchen().heaters().get(0).location(),
            "the heaters run "
                + display.volume(Volume.ofLitres(supply.shortLitres()))
                + " short of hot water at "
                + clock.at(supply.shortAt()).toLocalTime(),
            cures()));
  }

  /** Whether anything is drawn, out of any heater. */
  private boolean isAsked() {
    return !draws.isEmpty() && !event.kitchen().heaters().isEmpty();
  }

  private String cures() {
    List<String> cures = new ArrayList<>();
    for (Heater heater : event.kitchen().heaters()) {
      for (int more = 1; more <= MOST_MORE; more++) {
        List<Heater> heaters = new ArrayList<>(event.kitchen().heaters());
        for (int n = 0; n < more; n++) {
          heaters.add(one(heater));
        }
        if (tank(heaters).supply(draws).keepsAhead()) {
          cures.add(more + " more " + heater.name());
          break;
        }
      }
    }
    return cures.isEmpty()
        ? "larger heaters, or bypass drawn from the brewers' own taps"
        : String.join(", or ", cures);
  }

  private static Heater one(Heater heater) {
    return new Heater(
        heater.name(),
        1,
        heater.capacity(),
        heater.power(),
        heater.efficiency(),
        heater.circuit(),
        heater.location());
  }

  private HotWater tank(List<Heater> heaters) {
    double litres = 0;
    double perMinute = 0;
    for (Heater heater : heaters) {
      double capacity = heater.count() * heater.capacity().litres();
      litres += capacity;
      perMinute += capacity / Math.max(1, toHeat(heater).toSeconds()) * 60;
    }
    return new HotWater(litres, perMinute);
  }

  private Duration toHeat(Heater heater) {
    Temperature hot = event.serving().bypassTemperature();
    Mass full = heater.capacity().massOfWaterAt(hot);
    return Heat.heating(
        full, event.kitchen().water().tap(), hot, heater.power(), heater.efficiency());
  }
}
