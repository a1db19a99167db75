package dev.urnwright.plan;

import static java.util.stream.Collectors.joining;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Circuit;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.event.Kitchen.Heater;
import dev.urnwright.event.Supply;
import dev.urnwright.plan.PackingLine.Part;
import dev.urnwright.quantity.Amount;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Power;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** What to take along: what the plan uses, counted, and the short rest that every event needs. */
final class Packing {
  private final Plan plan;
  private final Event event;
  private final Display display;
  private final List<PackingLine> lines = new ArrayList<>();

  Packing(Plan plan) {
    this.plan = plan;
    this.event = plan.event();
    this.display = new Display(event.print().units(), event.equipment().scaleStep());
  }

  List<PackingLine> lines() {
    brewing();
    serving();
    measuring();
    plan.shopping().forEach(line -> add(Part.USED_UP, line.what(), line.amount()));
    besides();
    return List.copyOf(lines);
  }

  private void brewing() {
    for (Brewer brewer : event.equipment().brewers()) {
      List<Batch> batches =
          plan.batches().stream()
              .filter(batch -> batch.unit().filter(u -> u.brewer().equals(brewer)).isPresent())
              .toList();
      long used = batches.stream().map(Batch::unit).distinct().count();
      if (used > 0) {
        add(
            Part.BREWING,
            Saying.verbatim(brewer.name()),
            Amount.ofPieces(used),
            supply(brewer.supply().power(), brewer.supply().circuit()));
        if (!suppliedPerBatch(brewer)) {
          add(
              Part.BREWING,
              Saying.of("pack.filters").with("brewer", brewer.name()),
              Amount.ofPieces(batches.size()),
              Saying.of("pack.filters.how"));
        }
      }
    }
    add(Part.BREWING, "grinder");
    for (Heater heater : event.kitchen().heaters()) {
      add(
          Part.BREWING,
          Saying.verbatim(heater.name()),
          Amount.ofPieces(heater.count()),
          supply(Optional.of(heater.power()), heater.circuit()));
    }
    for (Circuit circuit : event.equipment().circuits()) {
      add(
          Part.BREWING,
          Saying.of("pack.sockets").with("circuit", circuit.name()),
          Saying.of("pack.sockets.how")
              .with("volts", whole(circuit.volts(), "V"))
              .with("amperes", whole(circuit.breakerAmperes(), "A")));
    }
  }

  /** Whether the user lists what one of its batches uses up: filters, most likely. */
  private boolean suppliedPerBatch(Brewer brewer) {
    return event.purchases().supplies().stream()
        .anyMatch(
            supply ->
                supply.use() instanceof Supply.Use.Each each
                    && each.per() == Supply.Per.BATCH
                    && supply.takers().brewer().map(brewer.name()::equals).orElse(true));
  }

  private static Figure whole(double value, String unit) {
    return new Figure(String.format(Locale.ROOT, "%.0f", value), unit);
  }

  private static Saying supply(Optional<Power> power, Optional<String> circuit) {
    Optional<Figure> each =
        power.map(p -> new Figure(String.format(Locale.ROOT, "%.1f", p.watts() / 1000), "kW"));
    return Saying.of("pack.supply")
        .with("powered", each.isPresent())
        .with("power", each.orElse(Figure.bare("")))
        .with("both", each.isPresent() && circuit.isPresent())
        .with("wired", circuit.isPresent())
        .with("circuit", circuit.orElse(""));
  }

  private void serving() {
    if (plan.run().isPresent()) {
      dispensersOf(plan.run().get());
    } else {
      for (Dispenser dispenser : event.equipment().dispensers()) {
        long fills =
            plan.fills().stream().filter(f -> f.dispenser().equals(Optional.of(dispenser))).count();
        if (fills > 0) {
          add(
              Part.SERVING,
              Saying.verbatim(dispenser.name()),
              Amount.ofPieces(Math.min(fills, dispenser.count())));
        }
      }
    }
    add(
        Part.SERVING,
        Saying.of("pack.labels"),
        Amount.ofPieces(plan.fills().size()),
        Saying.of("pack.labels.how"));
    for (CoffeePlan coffee : plan.coffees()) {
      Saying sign = Saying.of("pack.signs").with("coffee", coffee.coffee().name());
      if (coffee.coffee().decaf()) {
        add(Part.SERVING, sign, Saying.of("pack.signs.decaf"));
      } else {
        lines.add(new PackingLine(Part.SERVING, sign, Optional.empty(), Optional.empty()));
      }
    }
  }

  /** Each kind with the numbers in use, by the station where they are first poured. */
  private void dispensersOf(Run run) {
    for (Dispenser kind : event.equipment().dispensers()) {
      Map<String, TreeSet<Integer>> stations = new LinkedHashMap<>();
      TreeSet<Integer> seen = new TreeSet<>();
      for (Run.FillTime time : run.fills()) {
        if (time.fill().dispenser().equals(Optional.of(kind))) {
          int number = number(time.unit(), kind);
          if (seen.add(number)) {
            stations
                .computeIfAbsent(time.station().orElse(""), station -> new TreeSet<>())
                .add(number);
          }
        }
      }
      if (!seen.isEmpty()) {
        add(
            Part.SERVING,
            Saying.verbatim(kind.name()),
            Amount.ofPieces(seen.size()),
            places(kind, stations));
      }
    }
  }

  private static int number(String unit, Dispenser kind) {
    return kind.count() == 1 ? 1 : Integer.parseInt(unit.substring(kind.name().length()).strip());
  }

  private static Saying places(Dispenser kind, Map<String, TreeSet<Integer>> stations) {
    return Saying.of("pack.places")
        .with(
            "places",
            stations.entrySet().stream()
                .map(entry -> place(kind, entry.getKey(), entry.getValue()))
                .toList());
  }

  private static Saying place(Dispenser kind, String station, TreeSet<Integer> numbers) {
    if (kind.count() == 1) {
      return Saying.verbatim(station);
    }
    return Saying.of(station.isEmpty() ? "pack.numbers" : "pack.numbers.at")
        .with("station", station)
        .with(
            "numbers",
            numbers.stream().map(number -> Integer.toString(number)).collect(joining(", ")));
  }

  private void measuring() {
    add(
        Part.MEASURING,
        Saying.of("pack.scale"),
        Saying.of("pack.scale.how").with("step", display.mass(event.equipment().scaleStep())));
    add(
        Part.MEASURING,
        Saying.of("pack.jug"),
        Saying.of("pack.jug.how").with("mark", display.volume(event.equipment().jugMark())));
    add(Part.MEASURING, "refractometer");
    add(Part.MEASURING, "thermometer");
    add(Part.MEASURING, "clock");
  }

  private void besides() {
    Mass grounds =
        plan.batches().stream()
            .map(batch -> batch.brew().dose().plus(batch.brew().absorbed()))
            .reduce(Mass.ZERO, Mass::plus);
    add(
        Part.BESIDES,
        Saying.of("pack.grounds"),
        Saying.of("pack.grounds.how").with("grounds", display.mass(grounds)));
    add(Part.BESIDES, "rubbish");
    add(Part.BESIDES, "gloves");
    add(Part.BESIDES, "first-aid");
    add(Part.BESIDES, "sheets");
    event
        .purchases()
        .bring()
        .forEach(
            item ->
                lines.add(
                    new PackingLine(
                        Part.BESIDES, Saying.verbatim(item), Optional.empty(), Optional.empty())));
  }

  private void add(Part part, Saying what, Amount amount, Saying how) {
    lines.add(new PackingLine(part, what, Optional.of(amount), Optional.of(how)));
  }

  private void add(Part part, Saying what, Amount amount) {
    lines.add(new PackingLine(part, what, Optional.of(amount), Optional.empty()));
  }

  private void add(Part part, Saying what, Saying how) {
    lines.add(new PackingLine(part, what, Optional.empty(), Optional.of(how)));
  }

  /** Something that every event needs. */
  private void add(Part part, String thing) {
    lines.add(
        new PackingLine(part, Saying.of("pack." + thing), Optional.empty(), Optional.empty()));
  }
}
