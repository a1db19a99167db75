package dev.urnwright.text;

import dev.urnwright.journal.BrewEntry;
import dev.urnwright.journal.Removal;
import dev.urnwright.journal.ServiceEntry;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnitSystem;
import java.io.PrintWriter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Lists a journal on a terminal. */
public final class JournalText {
  private static final Display DISPLAY = new Display(UnitSystem.METRIC, Mass.ofGrams(1));

  private final Palette palette;

  /** Text with that emphasis. */
  public JournalText(Palette palette) {
    this.palette = palette;
  }

  /** Writes both lists in lines of at most {@link PlanText#COLUMNS}. */
  public void write(List<BrewEntry> brews, List<ServiceEntry> services, PrintWriter out) {
    Screen screen = new Screen(out, palette, PlanText.COLUMNS);
    screen.heading(PlanText.counted(brews.size(), "batch", "batches"));
    Table batches =
        new Table(List.of("coffee and brewer", "dose", "water", "beverage", "strength", "kept"));
    brews.forEach(entry -> batches.row(cells(entry), detail(entry)));
    if (!brews.isEmpty()) {
      batches.print(screen);
    }
    if (!services.isEmpty()) {
      screen.heading(PlanText.counted(services.size(), "service", "services"));
      Table table = new Table(List.of("group", "guests", "planned", "poured", "came back"));
      services.forEach(entry -> table.row(cells(entry), entry.id().toString()));
      table.print(screen);
    }
  }

  /** Writes what was removed and when, with all that was known of it. */
  public void write(List<Removal> removals, PrintWriter out) {
    Screen screen = new Screen(out, palette, PlanText.COLUMNS);
    screen.heading(PlanText.counted(removals.size(), "removed entry", "removed entries"));
    Table table = new Table(List.of("what", "removed (UTC)"));
    removals.forEach(
        removal ->
            table.row(
                List.of(removal.entry().cells().getOrDefault("coffee", ""), when(removal)),
                all(removal)));
    if (!removals.isEmpty()) {
      table.print(screen);
    }
  }

  private static String when(Removal removal) {
    return removal.at().truncatedTo(ChronoUnit.SECONDS).toString().replaceAll("[TZ]", " ").strip();
  }

  private static String all(Removal removal) {
    return removal.entry().cells().entrySet().stream()
        .map(cell -> cell.getKey() + " " + cell.getValue())
        .collect(Collectors.joining(", "));
  }

  private static List<String> cells(BrewEntry entry) {
    var weighed = entry.weighed();
    return List.of(
        entry.coffee() + entry.brewer().map(brewer -> " on " + brewer).orElse(""),
        DISPLAY.mass(weighed.dose()).toString(),
        DISPLAY.mass(weighed.brewWater()).toString(),
        weighed.beverage().map(mass -> DISPLAY.mass(mass).toString()).orElse(""),
        weighed
            .readings()
            .strength()
            .map(DISPLAY::strength)
            .map(Object::toString)
            .orElseGet(() -> last(entry)),
        weighed
            .absorption(entry.steamLoss())
            .map(DISPLAY::absorption)
            .map(Object::toString)
            .orElse(""));
  }

  /** A reading that doesn't stand is shown as what it is. */
  private static String last(BrewEntry entry) {
    var taken = entry.weighed().readings().taken();
    return taken.isEmpty() ? "" : "(" + shown(taken.get(taken.size() - 1).strength()) + ")";
  }

  private static String shown(Strength strength) {
    return DISPLAY.strength(strength).toString();
  }

  private static String detail(BrewEntry entry) {
    String occasion =
        entry.occasion().date().map(date -> date + " ").orElse("") + entry.occasion().event();
    return (occasion + " " + entry.batch()).strip() + " " + entry.id();
  }

  private static List<String> cells(ServiceEntry entry) {
    return List.of(
        entry.group() + ", " + entry.coffee(),
        String.valueOf(entry.asked().headcount()),
        String.valueOf(entry.asked().cups()),
        String.format(Locale.ROOT, "%.0f", entry.cupsPoured()),
        DISPLAY.mass(entry.cameBack()).toString());
  }
}
