package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.event.Note;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.plan.Run.Crew;
import dev.urnwright.plan.Run.Stretch;
import dev.urnwright.wording.Saying;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of the people that a run takes. */
class CrewRemarksTest {
  private static final String EVENT =
      """
      event: A generic event
      date: 2027-04-17
      coffee: {extraction: 20 %, absorption: 2 g/g}
      groups:
        - {name: Hall, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30, station: Hall}
      brewers: [{name: Tall, dose: up to 1.2 kg, water: 16 l, cycle: 10 min}]
      """;

  @TempDir Path folder;
  private Plan plan;

  @BeforeEach
  void plan() throws IOException {
    plan = new Written(folder).plan(EVENT);
  }

  @Test
  void whereNobodySaysHowManyThereAre() {
    List<Stretch> stretches =
        List.of(
            stretch("09:00", "09:10", 1),
            stretch("09:10", "09:12", 3),
            stretch("09:20", "09:25", 3));
    String most = "The run takes 3 people from 09:10 to 09:12, and no more at any time.";
    assertEquals(List.of(most), said(new Crew(OptionalInt.empty(), stretches, 3)));
    assertEquals(
        List.of(
            most
                + " With people: 2 under kitchen, what has time is done earlier or later, so that 2"
                + " are enough."),
        said(new Crew(OptionalInt.empty(), stretches, 2)));
    assertEquals(List.of(), said(new Crew(OptionalInt.empty(), List.of(), 0)));
  }

  /**
   * Stretches that follow each other are one time, told with what is done when it is busiest first.
   */
  @Test
  void whereThereAreTooFew() {
    List<Action> actions =
        List.of(
            action(ActionKind.GRIND, "09:37", "here"),
            action(ActionKind.GRIND, "09:38", "here"),
            action(ActionKind.GRIND, "09:38", "here"),
            action(ActionKind.CARRY, "09:50", "here"),
            action(ActionKind.CARRY, "09:50", "there"),
            action(ActionKind.SWITCH_ON, "10:20", "here"),
            action(ActionKind.CARRY, "10:20", "here"));
    List<Stretch> stretches =
        List.of(
            stretch("09:37", "09:38", 2),
            stretch("09:38", "09:39", 3),
            stretch("09:39", "09:40", 3),
            stretch("09:40", "09:41", 1),
            stretch("09:50", "09:56", 2),
            stretch("10:20", "10:21", 2));
    String start =
        "From %s the run takes %s people, and there is 1 (at %s). It can't be spread"
            + " further; what helps: %ssomebody more just then.";
    String grind = "coffee weighed and ground beforehand, ";
    String trolley = "a trolley that takes more dispensers at once (per_walk), ";
    assertEquals(
        List.of(
            start.formatted("09:37 to 09:40", 3, "09:38: 3 × grind", grind),
            start.formatted("09:50 to 09:56", 2, "09:50: 2 × carry", trolley),
            start.formatted("10:20 to 10:21", 2, "10:20: 1 × switch on; 1 × carry", "")),
        said(new Crew(OptionalInt.of(1), stretches, 2), actions));
    assertEquals(List.of(), said(new Crew(OptionalInt.of(3), stretches, 2), actions));
  }

  /** Six times are told one by one, and how many more there are. */
  @Test
  void notEveryTimeIsTold() {
    List<Stretch> times = new ArrayList<>();
    for (int minute = 0; minute < 8; minute++) {
      times.add(stretch("09:0" + minute, "09:0" + minute, 2));
    }
    times.replaceAll(t -> new Stretch(t.from(), t.from().plusSeconds(30), 2));
    assertEquals(6, said(new Crew(OptionalInt.of(1), times.subList(0, 6), 2)).size());
    assertEquals(
        "More people than the 1 are needed at 1 further time, too.",
        said(new Crew(OptionalInt.of(1), times.subList(0, 7), 2)).get(6));
    assertEquals(
        "More people than the 1 are needed at 2 further times, too.",
        said(new Crew(OptionalInt.of(1), times, 2)).get(6));
  }

  private List<String> said(Crew crew) {
    return said(crew, List.of());
  }

  private List<String> said(Crew crew, List<Action> actions) {
    Run run = plan.run().orElseThrow();
    Findings findings = new Findings(plan.event());
    new CrewRemarks(plan.event(), findings)
        .on(
            new Run(
                run.batches(),
                run.fills(),
                run.heaters(),
                run.water(),
                actions,
                crew,
                run.quality()));
    assertEquals(
        1, findings.notes().stream().filter(note -> note.code().equals("hand-times")).count());
    return Stream.concat(findings.cautions().stream(), findings.notes().stream())
        .filter(note -> note.code().equals("crew"))
        .map(Note::text)
        .map(text -> text.replace('\u00a0', ' '))
        .toList();
  }

  private static Stretch stretch(String from, String until, int people) {
    return new Stretch(at(from), at(until), people);
  }

  private static Action action(ActionKind kind, String at, String where) {
    String what = kind == ActionKind.SWITCH_ON ? "Tall" : "coffee-F1";
    return new Action(at(at), kind, what, where, Saying.of("how.warm-up"));
  }

  private static LocalDateTime at(String time) {
    return LocalDate.of(2027, 4, 17).atTime(LocalTime.parse(time));
  }
}
