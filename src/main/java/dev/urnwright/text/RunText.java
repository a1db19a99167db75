package dev.urnwright.text;

import dev.urnwright.event.Note;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Run;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.plan.Run.BatchTime;
import dev.urnwright.plan.Run.HeaterTime;
import dev.urnwright.plan.Run.Stretch;
import dev.urnwright.plan.Run.WaterUse;
import dev.urnwright.quantity.Display;
import dev.urnwright.schedule.BrewerUnit;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The run's part of the text: how good it is, its water, its batches, what to do when. */
final class RunText {
  /** What a terminal can be scrolled through with an eye on the clock. */
  static final int MOST_ROWS = 120;

  /** What is no longer is kept on one line. */
  private static final int LONGEST_UNBROKEN = 30;

  private static final String QUALITY = "run-quality";

  private final Screen screen;
  private final Display display;

  RunText(Screen screen, Display display) {
    this.screen = screen;
    this.display = display;
  }

  /** Whether this part tells that note, so that it needn't be listed with the others. */
  static boolean tells(Note note) {
    return note.code().equals(QUALITY);
  }

  void write(Plan plan, Run run) {
    screen.gap();
    screen.title("The run");
    LocalDate day = plan.event().date().orElse(LocalDate.EPOCH);
    run.actions().stream()
        .findFirst()
        .ifPresent(action -> paragraph("The work begins at " + time(action.at(), day) + "."));
    plan.notes().stream().filter(RunText::tells).map(Note::text).forEach(this::paragraph);
    water(run.water());
    run.heaters().forEach(heater -> heater(heater, day));
    coolest(plan, run);
    run.crew().busiest().ifPresent(most -> crew(most, day));
    batches(run.batches(), day);
    actions(run.actions(), day);
  }

  private void water(WaterUse water) {
    List<String> uses = new ArrayList<>();
    uses.add(display.mass(water.brewing()) + " to brew with");
    uses.add(display.mass(water.bypass()) + " of bypass");
    if (water.rinsing().litres() > 0) {
      uses.add(display.volume(water.rinsing()) + " of hot water to rinse filters");
    }
    if (water.preheating().litres() > 0) {
      uses.add(display.volume(water.preheating()) + " of hot water to preheat dispensers");
    }
    paragraph("Water: " + String.join(", ", uses) + ".");
  }

  private void heater(HeaterTime heater, LocalDate day) {
    paragraph(
        heater.name()
            + ": fill and switch on at "
            + time(heater.on(), day)
            + ", first needed at "
            + time(heater.hot(), day)
            + "; "
            + (heater.toHeat().toSeconds() + 59) / 60
            + "\u00a0min from the tap.");
  }

  private void crew(Stretch most, LocalDate day) {
    paragraph(
        "The most hands are busy from "
            + time(most.from(), day)
            + " to "
            + time(most.until(), day)
            + ": "
            + PlanText.counted(most.people(), "person", "people")
            + ".");
  }

  private void coolest(Plan plan, Run run) {
    plan.groups().stream()
        .filter(group -> run.coolestPour(group).isPresent())
        .min(Comparator.comparing(group -> run.coolestPour(group).orElseThrow()))
        .ifPresent(
            group ->
                paragraph(
                    "The coolest hot cup leaves its dispenser at "
                        + display.temperature(run.coolestPour(group).orElseThrow())
                        + ": the last one of "
                        + group.group().name()
                        + "."));
  }

  private void batches(List<BatchTime> batches, LocalDate day) {
    screen.heading("On the brewers");
    screen.line(screen.palette().quiet().apply("  start  ready  brewer and batch"));
    Rows rows = new Rows(day);
    for (BatchTime batch : batches) {
      String unit = batch.batch().unit().map(BrewerUnit::label).orElse("");
      rows.add(batch.start(), batch.ready().toLocalTime() + "  ", unit + ", " + batch.batch().id());
    }
    more(batches.size(), "batches");
  }

  /** One row for what is alike at the same minute. */
  private void actions(List<Action> actions, LocalDate day) {
    screen.heading("What to do when");
    Map<Moment, List<Action>> moments =
        actions.stream()
            .collect(
                Collectors.groupingBy(
                    action -> new Moment(action.at(), action.kind()),
                    LinkedHashMap::new,
                    Collectors.toList()));
    Rows rows = new Rows(day);
    moments.forEach(
        (moment, alike) ->
            rows.add(
                moment.at(),
                ScreenText.left(moment.kind().words(), "Switch on".length()) + "  ",
                alike.stream().map(RunText::thing).collect(Collectors.joining(", "))));
    more(moments.size(), "rows");
    quiet("Amounts and ways to tick off are on the run sheet.");
  }

  /**
   * What is done together.
   *
   * @param at when
   * @param kind what kind
   */
  private record Moment(LocalDateTime at, ActionKind kind) {}

  private static String thing(Action action) {
    String thing =
        action.what().equals(action.where())
            ? action.what()
            : action.what() + " (" + action.where() + ")";
    return thing.length() > LONGEST_UNBROKEN ? thing : thing.replace(' ', '\u00a0');
  }

  /** Rows that begin with a time; the time is printed where it changes, a day where that does. */
  private final class Rows {
    private final LocalDate day;
    private LocalDateTime last;
    private int count;

    Rows(LocalDate day) {
      this.day = day;
      this.last = day.atStartOfDay().minusNanos(1); // no row begins then
    }

    void add(LocalDateTime at, String before, String text) {
      count++;
      if (count > MOST_ROWS) {
        return;
      }
      boolean otherDay = !at.toLocalDate().equals(count == 1 ? day : last.toLocalDate());
      if (otherDay) {
        quiet(dayWords(at, day));
      }
      String time = at.equals(last) ? " ".repeat(5) : at.toLocalTime().toString();
      last = at;
      Paragraph.hang(Screen.INDENT + time + "  " + before, text, screen.columns())
          .forEach(screen::line);
    }
  }

  private static String time(LocalDateTime at, LocalDate day) {
    String time = at.toLocalTime().toString();
    return at.toLocalDate().equals(day) ? time : time + " " + dayWords(at, day);
  }

  private static String dayWords(LocalDateTime at, LocalDate day) {
    long days = ChronoUnit.DAYS.between(day, at.toLocalDate());
    return days == 0 ? "on the day" : days < 0 ? "the day before" : "the day after";
  }

  private void more(int rows, String what) {
    if (rows > MOST_ROWS) {
      quiet(
          "... and "
              + (rows - MOST_ROWS)
              + " more "
              + what
              + "; the run sheet and --json have them all");
    }
  }

  private void paragraph(String text) {
    Paragraph.hang(Screen.INDENT, text, screen.columns()).forEach(screen::line);
  }

  private void quiet(String text) {
    Paragraph.hang(Screen.INDENT, text, screen.columns())
        .forEach(line -> screen.line(screen.palette().quiet().apply(line)));
  }
}
