package dev.urnwright.text;

import dev.urnwright.brew.Estimate;
import dev.urnwright.dispatch.Brewing;
import dev.urnwright.dispatch.Dispatch;
import dev.urnwright.dispatch.LegDay;
import dev.urnwright.dispatch.WeekShopping;
import dev.urnwright.event.Note;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.ShoppingLine;
import dev.urnwright.quantity.Display;
import dev.urnwright.round.DayOfRound;
import dev.urnwright.round.ParTuner;
import dev.urnwright.round.Round;
import dev.urnwright.sheet.DayWords;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Writes a day of a round, or a week's purchases, for reading on a terminal. */
public final class RoundText {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /** More of a list than this scrolls off the screen; the sheets and the JSON have all. */
  private static final int MOST_LISTED = 20;

  private final Palette palette;

  /** Text with that emphasis. */
  public RoundText(Palette palette) {
    this.palette = palette;
  }

  /** Writes a day in lines of 80 columns. */
  public void write(Dispatch dispatch, PrintWriter out) {
    Screen screen = new Screen(out, palette, PlanText.COLUMNS);
    Display display = display(dispatch.round());
    screen.title(dispatch.round().name() + ", " + DayWords.of(dispatch.day().date()));
    paragraph(
        PlanText.counted(dispatch.sites(), "site", "sites")
            + ", "
            + PlanText.counted(dispatch.carafes(), "carafe", "carafes")
            + ", "
            + PlanText.counted(dispatch.legs().size(), "leg", "legs")
            + ", "
            + PlanText.counted(dispatch.brewing().batches().size(), "batch", "batches")
            + ".",
        screen);
    coffees(dispatch, display, screen);
    batches(dispatch, display, screen);
    legs(dispatch, display, screen);
    dispatch.legs().forEach(leg -> lots(dispatch, leg, display, screen));
    moves(dispatch, display, screen);
    stock(dispatch, screen);
    missed(dispatch, screen);
    shopping("Taken by this day", dispatch.plan().shopping(), display, screen);
    list("Take care", dispatch.cautions(), screen, screen::caution);
    list("Assumed and noticed", dispatch.notes(), screen, screen::remark);
  }

  /** Writes what several days take to buy. */
  public void write(Round round, WeekShopping week, PrintWriter out) {
    Screen screen = new Screen(out, palette, PlanText.COLUMNS);
    Display display = display(round);
    screen.title(round.name() + ": what to buy");
    Table table = new Table(List.of("day", "sites", "carafes", "batches"));
    SortedMap<LocalDate, Runnable> rows = new TreeMap<>();
    for (WeekShopping.Day day : week.days()) {
      List<String> cells =
          List.of(
              DayWords.of(day.date()),
              String.valueOf(day.sites()),
              String.valueOf(day.carafes()),
              String.valueOf(day.batches()));
      rows.put(day.date(), () -> table.row(cells, ""));
    }
    for (LocalDate day : week.idle()) {
      rows.put(
          day, () -> table.row(List.of(DayWords.of(day), "–", "–", "–"), "nothing is delivered"));
    }
    rows.values().forEach(Runnable::run);
    table.print(screen);
    shopping("Shopping", week.lines(), display, screen);
  }

  private static Display display(Round round) {
    return new Display(round.room().print().units(), round.room().equipment().scaleStep());
  }

  private static void coffees(Dispatch dispatch, Display display, Screen screen) {
    screen.heading("What it takes");
    Table table =
        new Table(
            List.of("coffee", "batches", "dose", "brew water", "concentrate", "bypass", "ratio"));
    for (CoffeePlan coffee : dispatch.plan().coffees()) {
      table.row(
          List.of(
              coffee.coffee().name(),
              String.valueOf(coffee.batches().size()),
              display.mass(coffee.brewed().brew().dose()).toString(),
              display.mass(coffee.brewed().brew().water()).toString(),
              display.mass(coffee.brewed().brew().beverage()).toString(),
              display.mass(coffee.filled().bypass()).toString(),
              display.ratio(coffee.brewed().brew().ratio())),
          likely(dispatch, coffee, display));
    }
    table.print(screen);
  }

  /** What the least sure of a coffee's batches gives. */
  private static String likely(Dispatch dispatch, CoffeePlan coffee, Display display) {
    return dispatch.brewing().batches().stream()
        .filter(batch -> batch.coffee().equals(coffee.coffee()))
        .map(Brewing.BatchDay::strength)
        .max(Comparator.comparingDouble(Estimate::uncertainty))
        .map(
            sure -> "a batch has likely " + display.strengths(sure.low(), sure.high()) + " (k = 2)")
        .orElse("");
  }

  private static void batches(Dispatch dispatch, Display display, Screen screen) {
    screen.heading("Brew");
    Table table =
        new Table(List.of("batch", "start", "ready", "dose", "brew water", "beverage", "strength"));
    for (Brewing.BatchDay day : dispatch.brewing().batches()) {
      Batch batch = day.batch();
      table.row(
          List.of(
              batch.id() + batch.unit().map(unit -> ", " + unit.label()).orElse(""),
              clock(day.start()),
              clock(day.ready()),
              display.mass(batch.brew().dose()).toString(),
              display.mass(batch.brew().water()).toString(),
              display.mass(batch.brew().beverage()).toString(),
              display.strength(batch.brew().strength()).toString()),
          "");
    }
    table.print(screen);
  }

  private static void legs(Dispatch dispatch, Display display, Screen screen) {
    screen.heading("Legs");
    Table table =
        new Table(
            List.of("leg", "stops", "carafes", "weight", "brewed by", "fill", "closed", "leaves"));
    for (LegDay leg : dispatch.legs()) {
      table.row(
          List.of(
              leg.leg().name() + leg.leg().driver().map(who -> ", " + who).orElse(""),
              String.valueOf(leg.stops().size()),
              String.valueOf(leg.carafes()),
              display.mass(leg.weight()).toString(),
              clock(leg.times().ready()),
              clock(leg.times().from()),
              clock(leg.times().to()),
              clock(leg.times().leave())),
          leg.coolest().map(coolest -> handed(coolest, display)).orElse(""));
    }
    table.print(screen);
  }

  private static String handed(LegDay.Warmth coolest, Display display) {
    return "coolest at "
        + coolest.site()
        + " by "
        + clock(coolest.by())
        + ", about "
        + display.temperature(coolest.temperature());
  }

  private static void lots(Dispatch dispatch, LegDay leg, Display display, Screen screen) {
    screen.heading("Fill for " + leg.leg().name());
    Table table =
        new Table(List.of("carafe", "fill", "concentrate", "water", "gives", "at", "use by"));
    dispatch.brewing().lots().stream()
        .filter(lot -> lot.leg().equals(leg.leg().name()))
        .forEach(
            lot ->
                table.row(
                    List.of(
                        lot.carafe().name()
                            + ", "
                            + lot.content().coffee()
                            + ", "
                            + lot.content().strengthName(),
                        String.valueOf(lot.count()),
                        display.mass(lot.each().concentrate()).toString(),
                        display.mass(lot.each().water()).toString(),
                        display.strength(lot.each().strength().strength()).toString(),
                        clock(lot.times().from()),
                        clock(lot.times().useBy())),
                    "from "
                        + String.join(", ", lot.batches())
                        + "; likely "
                        + display.strengths(
                            lot.each().strength().low(), lot.each().strength().high())));
    table.print(screen);
  }

  private static void moves(Dispatch dispatch, Display display, Screen screen) {
    if (dispatch.moves().isEmpty()) {
      return;
    }
    screen.heading(
        dispatch.moved()
            ? "Changed by what was left over"
            : "To change by what was left over (the table's amounts are delivered)");
    for (ParTuner.Move move : first(dispatch.moves())) {
      screen.remark(
          move.delivery().drop().place().inWords()
              + ", "
              + move.delivery().drop().content().coffee()
              + ": "
              + move.delivery().carafes()
              + " → "
              + PlanText.counted(move.carafes(), "carafe", "carafes")
              + ". On the last "
              + PlanText.counted(move.days().size(), "such day", "such days")
              + " "
              + display.volume(move.meanLeft())
              + " were left on average, and "
              + display.volume(move.mostPoured())
              + " were poured at most.");
    }
    more(dispatch.moves(), screen);
  }

  private static void stock(Dispatch dispatch, Screen screen) {
    screen.heading("Carafes");
    Table table = new Table(List.of("kind", "owned", "out", "needed", "left in"));
    dispatch
        .stock()
        .forEach(
            kind ->
                table.row(
                    List.of(
                        kind.carafe(),
                        String.valueOf(kind.owned()),
                        String.valueOf(kind.out()),
                        String.valueOf(kind.needed()),
                        String.valueOf(kind.left())),
                    ""));
    table.print(screen);
    Map<String, Integer> sites = dispatch.ledger().bySite();
    if (!sites.isEmpty()) {
      paragraph(
          "Still out: "
              + String.join(
                  ", ",
                  sites.entrySet().stream()
                      .limit(MOST_LISTED)
                      .map(site -> site.getKey() + "\u00a0" + site.getValue())
                      .toList())
              + (sites.size() > MOST_LISTED
                  ? " and " + (sites.size() - MOST_LISTED) + " more sites"
                  : "")
              + ".",
          screen);
    }
  }

  private static void missed(Dispatch dispatch, Screen screen) {
    List<DayOfRound.Missed> missed = dispatch.day().missed();
    if (missed.isEmpty()) {
      return;
    }
    screen.heading("No delivery");
    for (DayOfRound.Missed row : first(missed)) {
      screen.remark(row.drop().place().inWords() + ": " + row.change().what().inWords());
    }
    more(missed, screen);
  }

  private static void shopping(
      String title, List<ShoppingLine> lines, Display display, Screen screen) {
    screen.gap();
    screen.title(title);
    ShoppingText.write(lines, display, screen);
  }

  private static <T> List<T> first(List<T> all) {
    return all.subList(0, Math.min(MOST_LISTED, all.size()));
  }

  private static void more(List<?> all, Screen screen) {
    if (all.size() > MOST_LISTED) {
      screen.remark(
          "and " + (all.size() - MOST_LISTED) + " more; the brew room's sheet has them all");
    }
  }

  private static String clock(LocalDateTime time) {
    return CLOCK.format(time);
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
