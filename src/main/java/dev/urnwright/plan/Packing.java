package dev.urnwright.plan;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Circuit;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.event.Kitchen.Heater;
import dev.urnwright.event.Supply;
import dev.urnwright.plan.PackingLine.Part;
import dev.urnwright.quantity.Amount;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Power;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

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
    plan.shopping().forEach(line -> add(Part.USED_UP, line.item(), line.amount(), ""));
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
            brewer.name(),
            Amount.ofPieces(used),
            supply(brewer.supply().power(), brewer.supply().circuit()));
        if (!suppliedPerBatch(brewer)) {
          add(
              Part.BREWING,
              "Filters for " + brewer.name(),
              Amount.ofPieces(batches.size()),
              "one a batch, and some to spare");
        }
      }
    }
    add(Part.BREWING, "Grinder, unless the coffee comes ground", "");
    for (Heater heater : event.kitchen().heaters()) {
      add(
          Part.BREWING,
          heater.name(),
          Amount.ofPieces(heater.count()),
          supply(Optional.of(heater.power()), heater.circuit()));
    }
    for (Circuit circuit : event.equipment().circuits()) {
      add(
          Part.BREWING,
          "Sockets on " + circuit.name(),
          String.format(
              Locale.ROOT,
              "%.0f\u00a0V, %.0f\u00a0A: what leads may be used on it, a licensed electrician says",
              circuit.volts(),
              circuit.breakerAmperes()));
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

  private static String supply(Optional<Power> power, Optional<String> circuit) {
    List<String> parts = new ArrayList<>();
    power.ifPresent(
        each -> parts.add(String.format(Locale.ROOT, "%.1f\u00a0kW each", each.watts() / 1000)));
    circuit.ifPresent(name -> parts.add("on " + name));
    return String.join(", ", parts);
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
              dispenser.name(),
              Amount.ofPieces(Math.min(fills, dispenser.count())),
              "");
        }
      }
    }
    add(Part.SERVING, "Labels, printed", Amount.ofPieces(plan.fills().size()), "one for each fill");
    for (CoffeePlan coffee : plan.coffees()) {
      add(
          Part.SERVING,
          "Signs for " + coffee.coffee().name(),
          coffee.coffee().decaf() ? "decaf, in large letters, at each of its stations" : "");
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
        add(Part.SERVING, kind.name(), Amount.ofPieces(seen.size()), places(kind, stations));
      }
    }
  }

  private static int number(String unit, Dispenser kind) {
    return kind.count() == 1 ? 1 : Integer.parseInt(unit.substring(kind.name().length()).strip());
  }

  private static String places(Dispenser kind, Map<String, TreeSet<Integer>> stations) {
    return stations.entrySet().stream()
        .map(
            entry -> {
              String numbers =
                  kind.count() == 1
                      ? ""
                      : "no. "
                          + entry.getValue().stream()
                              .map(number -> Integer.toString(number))
                              .collect(Collectors.joining(", "));
              return entry.getKey().isEmpty()
                  ? numbers
                  : numbers.isEmpty() ? entry.getKey() : entry.getKey() + ": " + numbers;
            })
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private void measuring() {
    add(
        Part.MEASURING,
        "Scale",
        "reads to " + display.mass(event.equipment().scaleStep()) + ", with batteries");
    add(Part.MEASURING, "Jug", "marked every " + display.volume(event.equipment().jugMark()));
    add(Part.MEASURING, "Refractometer, or the sheet with the taste ladder", "");
    add(Part.MEASURING, "Thermometer", "");
    add(Part.MEASURING, "Clock or timer that everybody sees", "");
  }

  private void besides() {
    Mass grounds =
        plan.batches().stream()
            .map(batch -> batch.brew().dose().plus(batch.brew().absorbed()))
            .reduce(Mass.ZERO, Mass::plus);
    add(
        Part.BESIDES,
        "Bin for wet grounds",
        "takes about " + display.mass(grounds) + " in all; let them cool, lift small bags");
    add(Part.BESIDES, "Bins for cups and rubbish, bags", "");
    add(Part.BESIDES, "Gloves against heat, aprons, cloths", "");
    add(Part.BESIDES, "First-aid kit with something for burns", "");
    add(Part.BESIDES, "These sheets, pens, tape", "");
    event.purchases().bring().forEach(item -> add(Part.BESIDES, item, ""));
  }

  private void add(Part part, String item, Amount amount, String detail) {
    lines.add(new PackingLine(part, item, Optional.of(amount), detail));
  }

  private void add(Part part, String item, String detail) {
    lines.add(new PackingLine(part, item, Optional.empty(), detail));
  }
}
