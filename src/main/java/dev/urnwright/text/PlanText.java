package dev.urnwright.text;

import dev.urnwright.event.Event;
import dev.urnwright.event.Note;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import java.io.PrintWriter;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** Writes a plan for reading on a terminal. */
public final class PlanText {
  /** The width that every terminal has. */
  public static final int COLUMNS = 80;

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);

  private final Palette palette;

  /** Text with that emphasis. */
  public PlanText(Palette palette) {
    this.palette = palette;
  }

  /** Writes the whole plan in lines of at most {@link #COLUMNS}. */
  public void write(Plan plan, PrintWriter out) {
    Screen screen = new Screen(out, palette, COLUMNS);
    Event event = plan.event();
    Display display = new Display(event.print().units(), event.equipment().scaleStep());
    screen.title(event.name());
    Paragraph.wrap(when(event), COLUMNS).forEach(screen::line);
    Certainty certainty = plan.certainty();
    for (CoffeePlan coffee : plan.coffees()) {
      screen.gap();
      new CoffeeText(screen, display, event, certainty).write(coffee);
    }
    plan.run().ifPresent(run -> new RunText(screen, display).write(plan, run));
    new ShoppingText(screen, display).write(plan);
    list("Take care", plan.cautions(), screen, screen::caution);
    list(
        "Assumed and noticed",
        plan.notes().stream().filter(note -> !RunText.tells(note)).toList(),
        screen,
        screen::remark);
  }

  private static String when(Event event) {
    StringBuilder line = new StringBuilder();
    event.date().ifPresent(date -> line.append(DAY.format(date)).append(", "));
    event.time().ifPresent(time -> line.append(time).append(", "));
    int groups = event.groups().size();
    int coffees = event.coffees().size();
    return line.append(counted(groups, "group", "groups"))
        .append(", ")
        .append(counted(coffees, "coffee", "coffees"))
        .toString();
  }

  private static void list(String title, List<Note> notes, Screen screen, Consumer<String> item) {
    if (!notes.isEmpty()) {
      screen.gap();
      screen.title(title);
      notes.stream().map(Note::text).forEach(item);
    }
  }

  /** A count with its noun, in the plural where there isn't exactly one. */
  static String counted(int count, String one, String many) {
    return count + "\u00a0" + (count == 1 ? one : many);
  }
}
