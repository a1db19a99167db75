package dev.urnwright.text;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewBalance;
import dev.urnwright.brew.Estimate;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.Brewed;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.PrintedBalance;
import dev.urnwright.plan.StrengthAccount;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** One coffee's part of the text: what it takes, its batches, its dispensers. */
final class CoffeeText {
  /** As many rows as somebody scrolls through; the JSON and the sheets have all. */
  static final int MOST_ROWS = 500;

  private final Screen screen;
  private final Display display;
  private final Event event;
  private final Certainty certainty;

  CoffeeText(Screen screen, Display display, Event event, Certainty certainty) {
    this.screen = screen;
    this.display = display;
    this.event = event;
    this.certainty = certainty;
  }

  void write(CoffeePlan plan) {
    screen.title(title(plan.coffee()));
    balance(plan);
    batches(plan);
    groups(plan);
    howSure(certainty.of(plan));
  }

  private String title(Coffee coffee) {
    String decaf = coffee.decaf() ? "DECAF: " : "";
    String key = event.coffees().size() == 1 ? "" : " (" + coffee.key() + ")";
    return decaf + coffee.name() + key;
  }

  /** What it takes: exactly, and as rounded for the scale. */
  private void balance(CoffeePlan plan) {
    BrewBalance needed = plan.needed().brew();
    BrewBalance brewed = plan.brewed().brew();
    Blend blend = plan.needed().blend();
    PrintedBalance exact = PrintedBalance.of(needed, blend, display);
    PrintedBalance rounded = PrintedBalance.of(brewed, plan.filled(), display);
    Table table = new Table(List.of("altogether", "exactly", "rounded"));
    row(table, "Dose, dry ground coffee", needed.dose(), brewed.dose());
    row(table, "Brew water", exact.water(), rounded.water());
    if (!needed.steam().isZero()) {
      row(table, "Steam, lost while brewing", exact.steam(), rounded.steam());
    }
    row(table, "Absorbed, stays in the grounds", exact.absorbed(), rounded.absorbed());
    row(table, "Beverage, the concentrate", exact.beverage(), rounded.beverage());
    row(table, "Bypass, water added after brewing", exact.bypass(), rounded.bypass());
    if (!blend.ice().isZero()) {
      row(table, "Ice, melts into the cups", exact.ice(), rounded.ice());
    }
    row(table, "Finished beverage", exact.finished(), rounded.finished());
    row(
        table,
        "Strength of the concentrate",
        display.strength(needed.strength()),
        display.strength(brewed.strength()));
    row(table, "that of a batch is likely (k = 2)", "", likely(certainty.of(plan).concentrate()));
    row(
        table,
        "Extraction, the same before and after bypass",
        display.extraction(needed.extraction()),
        display.extraction(brewed.extraction()));
    row(
        table,
        "Brew ratio, brew water to coffee",
        display.ratio(needed.ratio()),
        display.ratio(brewed.ratio()));
    row(
        table,
        "Total water to coffee, with bypass",
        display.perGram(plan.needed().totalWaterToCoffee()),
        "");
    row(
        table,
        "Cup to coffee, which is not a brew ratio",
        display.perGram(plan.needed().cupToCoffee()),
        "");
    table.print(screen);
  }

  private void row(Table table, String label, Mass exact, Mass rounded) {
    row(table, label, display.mass(exact), display.mass(rounded));
  }

  private static void row(Table table, String label, Object exact, Object rounded) {
    table.row(List.of(label, exact.toString(), rounded.toString()), "");
  }

  private void batches(CoffeePlan plan) {
    screen.heading("Brew " + PlanText.counted(plan.batches().size(), "batch", "batches"));
    Table table =
        new Table(List.of("batch", "dose", "brew water", "by volume", "beverage", "strength"));
    List<Mass> expected = plan.printedBeverages(display);
    IntStream.range(0, Math.min(MOST_ROWS, plan.batches().size()))
        .forEach(i -> table.row(cells(plan.batches().get(i), expected.get(i)), ""));
    Brewed brewed = plan.brewed();
    table.sum(
        List.of(
            "together",
            display.mass(brewed.brew().dose()).toString(),
            display.mass(brewed.brew().water()).toString(),
            "",
            display.mass(brewed.brew().beverage()).toString(),
            display.strength(brewed.brew().strength()).toString()));
    table.print(screen);
    more(plan.batches().size(), "batches");
    String filling = display.temperature(event.serving().fillingTemperature()).toString();
    small(
        "Volumes of brew water are measured at "
            + filling
            + ". The dispensers take "
            + display.mass(brewed.drawn())
            + " of the concentrate; "
            + display.mass(brewed.leftOver())
            + " are left over.");
  }

  private List<String> cells(Batch batch, Mass expected) {
    return List.of(
        batch.id() + batch.unit().map(unit -> " on " + unit.label()).orElse(""),
        display.mass(batch.brew().dose()).toString(),
        display.mass(batch.brew().water()).toString(),
        display.volume(batch.waterByVolume()).toString(),
        display.mass(expected).toString(),
        display.strength(batch.brew().strength()).toString());
  }

  private String plusMinus(Estimate estimate) {
    return "±" + display.strength(estimate.plusMinus());
  }

  /** The interval of k = 2. */
  private String likely(Estimate estimate) {
    return display.strengths(estimate.low(), estimate.high()).toString();
  }

  private void groups(CoffeePlan plan) {
    List<GroupPlan> groups = plan.groups();
    screen.heading("Fill " + PlanText.counted(plan.fills().size(), "dispenser", "dispensers"));
    Table table =
        new Table(
            List.of("each dispenser of", "concentrate", "bypass", "ice", "reached", "target"));
    groups.stream().limit(MOST_ROWS).forEach(group -> rows(group, table));
    table.print(screen);
    more(groups.size(), "groups");
    boolean iced = groups.stream().anyMatch(group -> group.group().ice().isPresent());
    small(
        "Bypass water is at "
            + display.temperature(event.serving().bypassTemperature())
            + (iced ? ", for iced groups as cold as they are poured" : "")
            + ". Strengths are those of the finished cup: reached with these rounded amounts, and"
            + " the target.");
  }

  /** Fills that look alike share a row. */
  private void rows(GroupPlan group, Table table) {
    Map<List<String>, List<Fill>> alike =
        group.fills().stream()
            .collect(
                Collectors.groupingBy(
                    fill -> cells(group, fill), LinkedHashMap::new, Collectors.toList()));
    alike.forEach((cells, fills) -> table.row(cells, detail(group, fills)));
  }

  private List<String> cells(GroupPlan group, Fill fill) {
    Blend blend = fill.blend();
    return List.of(
        group.group().name(),
        display.mass(blend.concentrate()).toString(),
        display.mass(blend.bypass()).toString(),
        blend.ice().isZero() ? "" : display.mass(blend.ice()).toString(),
        display.strength(blend.strength()).toString(),
        display.strength(group.group().strength()).toString());
  }

  private String detail(GroupPlan plan, List<Fill> fills) {
    Fill fill = fills.get(0);
    GuestGroup group = plan.group();
    String kind = fill.dispenser().map(Dispenser::name).orElse("container");
    String full =
        fill.level()
            .full()
            .map(share -> " " + Math.round(share.percent()) + "\u00a0% full")
            .orElse("");
    List<String> parts = new ArrayList<>();
    parts.add(fills.size() + " × " + kind + full);
    if (plan.taps() > 1) {
      parts.add(plan.taps() + " side by side");
    }
    parts.add(
        PlanText.counted(plan.demand().cups(), "cup", "cups")
            + " of "
            + display.volume(group.cup().poured()));
    group.ice().ifPresent(ice -> parts.add("poured at " + display.temperature(ice.pouredAt())));
    group.service().station().ifPresent(parts::add);
    group.service().window().ifPresent(window -> parts.add(window.toString()));
    parts.add(caffeine(plan.cup().caffeine()));
    parts.add(
        "strength likely "
            + likely(certainty.of(fill))
            + ", in the window with a chance of "
            + display.chance(certainty.chanceInWindow(plan)));
    return String.join("; ", parts);
  }

  private static String caffeine(GroupPlan.Caffeine caffeine) {
    return Math.round(caffeine.lowMilligrams())
        + "–"
        + Math.round(caffeine.highMilligrams())
        + "\u00a0mg of caffeine a cup";
  }

  /** What makes the strengths unsure, for the group that drinks the most. */
  private void howSure(StrengthAccount account) {
    if (account.entries().isEmpty()) {
      return;
    }
    screen.heading("How sure");
    Table table = new Table(List.of("what is unsure", "uncertainty", "part", "without it"));
    for (StrengthAccount.Entry entry : account.entries()) {
      table.row(
          List.of(
              entry.source().words(),
              display.uncertainty(entry.amount(), entry.source().unit()).toString(),
              display.chance(entry.share().fraction()),
              plusMinus(entry.without())),
          "");
    }
    table.sum(List.of("all together", "", "", plusMinus(account.cup())));
    table.print(screen);
    small(
        "This is for a cup of "
            + account.group().group().name()
            + ". Uncertainties are standard; strengths are told to within twice the standard"
            + " uncertainty (k = 2), which holds for some 95 cups out of 100. "
            + account.advice());
  }

  private void more(int rows, String what) {
    if (rows > MOST_ROWS) {
      small(
          "... and " + (rows - MOST_ROWS) + " more " + what + "; --json and the workbook list all");
    }
  }

  private void small(String text) {
    Paragraph.hang(Screen.INDENT, text, screen.columns())
        .forEach(line -> screen.line(screen.palette().quiet().apply(line)));
  }
}
