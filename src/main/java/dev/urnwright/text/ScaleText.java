package dev.urnwright.text;

import dev.urnwright.brew.BrewBalance;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Note;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.scale.Recipe;
import dev.urnwright.scale.Scaled;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Writes a scaled brew for reading on a terminal. */
public final class ScaleText {
  private final Palette palette;

  /** Text with that emphasis. */
  public ScaleText(Palette palette) {
    this.palette = palette;
  }

  /** Writes all of it, and the day of its menu if there is one, in lines of 80 columns. */
  public void write(Scaled scaled, Optional<Plan> day, PrintWriter out) {
    Screen screen = new Screen(out, palette, PlanText.COLUMNS);
    Display display = new Display(scaled.request().print().units(), scaled.request().scaleStep());
    screen.title(scaled.request().name());
    recipe(scaled, display, screen);
    scaled.instead().ifPresent(plain -> instead(scaled, plain, display, screen));
    advice(scaled, screen);
    if (!scaled.trials().isEmpty()) {
      trials(scaled, display, screen);
    }
    day.ifPresent(plan -> new MenuText(screen, display).write(scaled, plan));
    list("Take care", scaled.cautions(), screen, screen::caution);
    list("Assumed and noticed", scaled.notes(), screen, screen::remark);
  }

  private static void recipe(Scaled scaled, Display display, Screen screen) {
    Recipe recipe = scaled.recipe();
    BrewBalance brew = recipe.brew();
    ReferenceBrew reference = scaled.request().reference().brew();
    String where = scaled.request().target().brewer().name();
    paragraph(
        recipe.batches() == 1
            ? "Brew one batch on the " + where + "."
            : "Brew " + recipe.batches() + " batches on the " + where + ", all alike.",
        screen);
    Table table = new Table(List.of("", "reference", "each batch"));
    row(table, "Dose, dry ground coffee", mass(reference.dose(), display), brew.dose(), display);
    row(table, "Brew water", mass(reference.water(), display), brew.water(), display);
    row(
        table,
        "Beverage",
        reference.beverage().map(mass -> mass(mass, display)).orElse(""),
        brew.beverage(),
        display);
    Mass bypass = recipe.cup().bypass();
    if (!bypass.isZero()) {
      table.row(
          List.of("Strength of the concentrate", "", display.strength(brew.strength()).toString()),
          "");
      row(table, "Bypass, water added after brewing", "", bypass, display);
      row(table, "Finished beverage", "", recipe.cup().finished(), display);
    }
    table.sum(
        List.of(
            "Strength in the cup",
            display.strength(reference.strength()).toString(),
            display.strength(recipe.strength().strength()).toString()));
    table.row(
        List.of(
            "  likely between (k = 2)",
            "",
            display.strength(recipe.strength().low())
                + " and "
                + display.strength(recipe.strength().high())),
        "");
    table.row(
        List.of(
            "Extraction",
            display.extraction(scaled.referenceExtraction()).toString(),
            display.extraction(brew.extraction()).toString()),
        "");
    table.row(
        List.of(
            "Brew ratio, brew water to coffee",
            display.ratio(scaled.referenceRatio()),
            display.ratio(brew.ratio())),
        "");
    if (!bypass.isZero()) {
      table.row(
          List.of(
              "Total water to coffee, with bypass", "", display.ratio(recipe.totalWaterToCoffee())),
          "");
    }
    recipe
        .bed()
        .ifPresent(
            bed ->
                table.row(
                    List.of(
                        "Depth of the dry bed",
                        scaled
                            .referenceDepth()
                            .map(depth -> display.length(depth).toString())
                            .orElse(""),
                        display.length(bed.depth()).toString()),
                    ""));
    recipe
        .contact()
        .ifPresent(
            contact ->
                table.row(
                    List.of(
                        "Contact, first water to last drop",
                        scaled
                            .request()
                            .reference()
                            .contact()
                            .map(time -> display.duration(time).toString())
                            .orElse(""),
                        "about " + display.duration(contact.expected())),
                    ""));
    table.print(screen);
    Recipe.Pours pours = recipe.pours();
    paragraph(
        "Pour "
            + display.mass(pours.bloom())
            + " over all the grounds, wait "
            + display.duration(pours.pause())
            + ", then the other "
            + display.mass(pours.rest())
            + ".",
        screen);
  }

  private static void instead(Scaled scaled, Recipe plain, Display display, Screen screen) {
    paragraph(
        "Water round the bed: at "
            + display.ratio(plain.brew().ratio())
            + " without bypass a batch would be "
            + display.mass(plain.brew().dose())
            + plain.bed().map(bed -> ", a bed of " + display.length(bed.depth())).orElse("")
            + plain
                .contact()
                .map(contact -> ", and take about " + display.duration(contact.expected()))
                .orElse("")
            + ". So it is brewed stronger, and "
            + display.share(scaled.recipe().bypassShare())
            + " of the cup is added afterwards.",
        screen);
  }

  private static void advice(Scaled scaled, Screen screen) {
    screen.heading("What to change first");
    for (Scaled.Advice advice : scaled.advice()) {
      screen.remark(advice.text());
      Paragraph.hang(Screen.INDENT + "  ", advice.basis(), screen.columns())
          .forEach(line -> screen.line(screen.palette().quiet().apply(line)));
    }
  }

  private static void trials(Scaled scaled, Display display, Screen screen) {
    screen.heading("Trials, as forecast from the reference and as brewed");
    Table table =
        new Table(List.of("trial", "dose", "ratio", "beverage", "strength", "extraction"));
    int number = 0;
    for (Scaled.TrialResult result : scaled.trials()) {
      number++;
      String dose = mass(result.trial().brew().dose(), display);
      table.row(row(number + ", forecast", dose, result, result.forecast(), display), "");
      table.row(row(number + ", brewed", "", result, result.brewed(), display), "");
    }
    table.print(screen);
  }

  private static List<String> row(
      String name,
      String dose,
      Scaled.TrialResult result,
      Scaled.Outcome outcome,
      Display display) {
    return List.of(
        name,
        dose,
        dose.isEmpty() ? "" : display.ratio(result.ratio()),
        outcome.beverage().map(mass -> mass(mass, display)).orElse("not weighed"),
        display.strength(outcome.strength()).toString(),
        display.extraction(outcome.extraction()).toString());
  }

  private static void row(Table table, String label, String was, Mass is, Display display) {
    table.row(List.of(label, was, mass(is, display)), "");
  }

  private static String mass(Mass mass, Display display) {
    return display.mass(mass).toString();
  }

  private static void paragraph(String text, Screen screen) {
    Paragraph.wrap(text, screen.columns()).forEach(screen::line);
  }

  private static void list(String title, List<Note> notes, Screen screen, Consumer<String> item) {
    if (!notes.isEmpty()) {
      screen.gap();
      screen.title(title);
      notes.stream().map(Note::text).forEach(item);
    }
  }
}
