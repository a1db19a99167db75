package dev.urnwright.text;

import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Run;
import dev.urnwright.quantity.Display;
import dev.urnwright.scale.DayBed;
import dev.urnwright.scale.Scaled;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;

/** The part of the text that tells of a day's menu: which batches at which hour, which pots. */
final class MenuText {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final Screen screen;
  private final Display display;

  MenuText(Screen screen, Display display) {
    this.screen = screen;
    this.display = display;
  }

  void write(Scaled scaled, Plan plan) {
    screen.gap();
    screen.title("The day's menu");
    for (CoffeePlan coffee : plan.coffees()) {
      Paragraph.wrap(
              PlanText.counted(coffee.batches().size(), "batch", "batches")
                  + " of one concentrate at "
                  + display.strength(coffee.brewed().brew().strength())
                  + ", brewed at "
                  + display.ratio(coffee.brewed().brew().ratio())
                  + "; "
                  + display.mass(coffee.brewed().brew().dose())
                  + " of coffee in all."
                  + byHour(plan),
              screen.columns())
          .forEach(screen::line);
      batches(scaled, plan, coffee);
      pots(plan, coffee);
    }
  }

  private static String byHour(Plan plan) {
    TreeMap<Integer, Integer> hours = new TreeMap<>();
    plan.run()
        .ifPresent(
            run ->
                run.batches()
                    .forEach(batch -> hours.merge(batch.start().getHour(), 1, Integer::sum)));
    if (hours.isEmpty()) {
      return "";
    }
    StringBuilder text = new StringBuilder(" Batches started by the hour:");
    hours.forEach(
        (hour, count) ->
            text.append(String.format(Locale.ROOT, " %02d:00\u00a0–\u00a0%d", hour, count))
                .append(','));
    return text.substring(0, text.length() - 1) + ".";
  }

  private void batches(Scaled scaled, Plan plan, CoffeePlan coffee) {
    screen.heading("Batches");
    Table table = new Table(List.of("batch", "start", "ready", "dose", "brew water", "bed"));
    coffee
        .batches()
        .forEach(
            batch -> {
              Optional<Run.BatchTime> time = plan.run().flatMap(run -> run.timeOf(batch));
              table.row(
                  List.of(
                      batch.id(),
                      time.map(t -> CLOCK.format(t.start())).orElse(""),
                      time.map(t -> CLOCK.format(t.ready())).orElse(""),
                      display.mass(batch.brew().dose()).toString(),
                      display.mass(batch.brew().water()).toString(),
                      DayBed.of(scaled, batch.brew().dose()).map(this::bed).orElse("")),
                  "");
            });
    table.print(screen);
  }

  private String bed(DayBed bed) {
    return display.length(bed.depth())
        + switch (bed.verdict()) {
          case SHALLOW -> ", shallow";
          case DEEP -> ", deep";
          case WITHIN, NOT_GUIDED -> "";
        };
  }

  private void pots(Plan plan, CoffeePlan coffee) {
    screen.heading("Pots");
    Table table =
        new Table(
            List.of("product", "fill", "filled", "use by", "concentrate", "water", "strength"));
    for (Fill fill : coffee.fills()) {
      Optional<Run.FillTime> time = plan.run().flatMap(run -> run.timeOf(fill));
      table.row(
          List.of(
              fill.groupName(),
              fill.id(),
              time.map(t -> CLOCK.format(t.filled())).orElse(""),
              time.map(t -> CLOCK.format(t.useBy())).orElse(""),
              display.mass(fill.blend().concentrate()).toString(),
              display.mass(fill.blend().bypass()).toString(),
              display.strength(fill.blend().strength()).toString()),
          "");
    }
    table.print(screen);
  }
}
