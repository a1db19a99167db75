package dev.urnwright.text;

import dev.urnwright.day.Adjustment;
import dev.urnwright.day.Adjustment.BatchChange;
import dev.urnwright.day.Adjustment.CoffeeDay;
import dev.urnwright.day.Adjustment.FillChange;
import dev.urnwright.day.Adjustment.Judged;
import dev.urnwright.day.Adjustment.Remedy;
import dev.urnwright.day.Dilution;
import dev.urnwright.day.MeasuredBatch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;

/** Writes what to do now for reading on a terminal. */
public final class AdjustmentText {
  private final Palette palette;

  /** Text with that emphasis. */
  public AdjustmentText(Palette palette) {
    this.palette = palette;
  }

  /** Writes it in lines of at most {@link PlanText#COLUMNS}. */
  public void write(Adjustment adjustment, PrintWriter out) {
    Screen screen = new Screen(out, palette, PlanText.COLUMNS);
    Display display =
        new Display(
            adjustment.plan().event().print().units(),
            adjustment.plan().event().equipment().scaleStep());
    boolean first = true;
    for (CoffeeDay day : adjustment.coffees()) {
      if (!first) {
        screen.gap();
      }
      first = false;
      new OneCoffee(screen, display, planOf(adjustment, day)).write(day);
    }
    if (adjustment.coffees().isEmpty()) {
      screen.line("Nothing was measured yet: the plan stands.");
    }
  }

  private static CoffeePlan planOf(Adjustment adjustment, CoffeeDay day) {
    return adjustment.plan().coffees().stream()
        .filter(coffee -> coffee.coffee().equals(day.coffee()))
        .findFirst()
        .orElseThrow();
  }

  /** The part of one coffee. */
  private record OneCoffee(Screen screen, Display display, CoffeePlan plan) {
    void write(CoffeeDay day) {
      screen.title((day.coffee().decaf() ? "DECAF: " : "") + day.coffee().name());
      day.measured().forEach(judged -> measured(judged));
      if (!day.readAgain().isEmpty()) {
        screen.remark("Nothing is changed until the readings stand.");
        return;
      }
      fills(day);
      standing(day);
      batches(day);
    }

    private void measured(Judged judged) {
      MeasuredBatch batch = judged.batch();
      String id = batch.planned().id();
      screen.heading(id + ", as it came out");
      Table table = new Table(List.of("", "measured", "planned"));
      table.row(
          List.of(
              "Dose",
              display.mass(batch.weighed().dose()).toString(),
              display.mass(batch.planned().brew().dose()).toString()),
          "");
      table.row(
          List.of(
              "Brew water",
              display.mass(batch.weighed().brewWater()).toString(),
              display.mass(batch.planned().brew().water()).toString()),
          "");
      table.row(
          List.of(
              batch.isBeverageWeighed() ? "Beverage" : "Beverage, not weighed: expected",
              display.mass(batch.beverage()).toString(),
              display.mass(batch.planned().brew().beverage()).toString()),
          "");
      table.row(
          List.of(
              batch.isRead() ? "Strength" : "Strength, not read: expected",
              display.strength(batch.strength()).toString(),
              display.strength(batch.planned().brew().strength()).toString()),
          "");
      table.row(
          List.of(
              "Extraction",
              display.extraction(batch.extraction()).toString(),
              display.extraction(batch.planned().brew().extraction()).toString()),
          "");
      table.row(
          List.of(
              "Absorption",
              display.absorption(batch.absorption()).toString(),
              display.absorption(batch.planned().brew().absorption()).toString()),
          "");
      table.print(screen);
      judged.verdict().remarks().forEach(screen::caution);
    }

    private void fills(CoffeeDay day) {
      if (day.fills().isEmpty()) {
        return;
      }
      screen.heading("Fill now and later");
      Table table =
          new Table(List.of("dispenser", "concentrate", "from", "water", "gives", "wanted"));
      for (FillChange change : day.fills()) {
        Fill now = change.now();
        table.row(
            List.of(
                now.id() + ", " + now.groupName(),
                display.mass(now.blend().concentrate()).toString(),
                String.join(", ", now.draws().stream().map(Fill.Draw::batchId).toList()),
                display.mass(now.blend().bypass()).toString(),
                display.strength(now.blend().strength()).toString(),
                display.strength(change.wanted()).toString()),
            was(change));
      }
      table.print(screen);
      if (day.cupsShort() > 0) {
        screen.caution(
            PlanText.counted(day.cupsShort(), "cup", "cups")
                + " fewer than planned. Pour a little less into each, or brew one more batch.");
      }
    }

    private String was(FillChange change) {
      if (!change.isChanged()) {
        return "as planned";
      }
      Fill planned = change.planned();
      String was =
          "was "
              + display.mass(planned.blend().concentrate())
              + " and "
              + display.mass(planned.blend().bypass());
      return change.cupsShort() == 0
          ? was
          : was + "; " + PlanText.counted(change.cupsShort(), "cup", "cups") + " fewer";
    }

    private void standing(CoffeeDay day) {
      if (day.standing().isEmpty()) {
        return;
      }
      screen.heading("Put right what is diluted already");
      for (Remedy remedy : day.standing()) {
        screen.remark(
            remedy.fill().id()
                + ", "
                + display.mass(remedy.holds())
                + " at "
                + display.strength(remedy.strength())
                + ", wanted "
                + display.strength(remedy.wanted())
                + ": "
                + remedy
                    .dilution()
                    .map(dilution -> toDo(dilution, remedy.batchId()))
                    .orElse(tooWeak()));
      }
      if (day.standing().stream()
          .flatMap(remedy -> remedy.dilution().stream())
          .anyMatch(dilution -> !dilution.drawOff().isZero())) {
        screen.caution("What is drawn off is hot: two hands, a steady jug, lid back on.");
      }
    }

    private static String tooWeak() {
      return "too weak, and no concentrate brewed so far can help. Leave it; the batches to come are"
          + " corrected.";
    }

    private String toDo(Dilution dilution, Optional<String> batch) {
      Mass in = dilution.water().max(dilution.concentrate());
      if (in.isZero()) {
        return "right as it is.";
      }
      String off =
          dilution.drawOff().isZero()
              ? ""
              : "draw off " + display.mass(dilution.drawOff()) + " first (keep it to drink), then ";
      return off
          + "add "
          + display.mass(in)
          + (dilution.water().isZero()
              ? " of concentrate" + batch.map(id -> " of " + id).orElse("")
              : " of water")
          + "; that gives "
          + display.strength(dilution.strength())
          + ". Stir and read.";
    }

    private void batches(CoffeeDay day) {
      if (day.batches().isEmpty()) {
        return;
      }
      screen.heading("Brew from now on");
      Table table = new Table(List.of("batch", "dose", "brew water", "ratio", "expect", "at"));
      for (BatchChange change : day.batches()) {
        table.row(
            List.of(
                change.now().id()
                    + change.now().unit().map(unit -> " on " + unit.label()).orElse(""),
                display.mass(change.now().brew().dose()).toString(),
                display.mass(change.now().brew().water()).toString(),
                display.ratio(change.now().brew().ratio()),
                display.mass(change.now().brew().beverage()).toString(),
                display.strength(change.now().brew().strength()).toString()),
            change.isChanged()
                ? "was "
                    + display.mass(change.planned().brew().dose())
                    + " with "
                    + display.mass(change.planned().brew().water())
                : "as planned");
      }
      table.print(screen);
      day.batches().stream().flatMap(change -> change.limit().stream()).forEach(screen::caution);
    }
  }
}
