package dev.urnwright.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.property.DateStart;
import biweekly.util.DateTimeComponents;
import biweekly.util.Duration;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Provision;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.BatchTime;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class RunCalendarTest {
  private static final Instant WRITTEN = Instant.parse("2027-03-01T12:00:00Z");
  private static final LocalDate DAY = LocalDate.of(2027, 4, 17);

  @Test
  void everyBatchIsAnEntryThatRings() throws IOException {
    Plan plan = plan("Group", DAY, LocalTime.of(9, 30));
    List<VEvent> entries = read(plan).getEvents();
    BatchTime first = plan.run().orElseThrow().batches().get(0);
    VEvent start = named(entries, "Start " + first.batch().id());
    assertEquals(first.start(), local(start));
    assertEquals("Tall brewer", start.getLocation().getValue());
    assertTrue(
        start.getDescription().getValue().startsWith("A generic event\nhouse-1 (Tall brewer)"));
    VAlarm alarm = start.getAlarms().get(0);
    assertTrue(alarm.getAction().isDisplay());
    assertEquals(
        Duration.builder().prior(true).minutes(5).build(), alarm.getTrigger().getDuration());
    assertEquals(Date.from(WRITTEN), start.getDateTimeStamp().getValue());
    for (VEvent entry : entries) {
      boolean starts = entry.getSummary().getValue().startsWith("Start ");
      assertEquals(starts ? 1 : 0, entry.getAlarms().size(), entry::toString);
    }
  }

  @Test
  void everyActionIsThereOnceAtItsTime() throws IOException {
    Plan plan = plan("Group", DAY, LocalTime.of(9, 30));
    List<Action> actions = plan.run().orElseThrow().actions();
    List<VEvent> entries = read(plan).getEvents();
    assertTrue(entries.size() < actions.size(), "some are done at the same minute");
    for (Action action : actions) {
      String line = "\n" + action.what() + " (" + action.where() + "): " + action.detail();
      List<VEvent> found =
          entries.stream()
              .filter(entry -> entry.getDescription().getValue().contains(line))
              .filter(entry -> local(entry).equals(action.at()))
              .toList();
      assertEquals(1, found.size(), action::toString);
    }
  }

  /** Moved by an hour, each entry is still itself. */
  @Test
  void anEntryKeepsItsIdentityWhenItsTimeChanges() throws IOException {
    List<VEvent> before = read(plan("Group", DAY, LocalTime.of(9, 30))).getEvents();
    List<VEvent> after = read(plan("Group", DAY, LocalTime.of(10, 30))).getEvents();
    assertEquals(identities(before), identities(after));
    assertEquals(before.size(), identities(before).size());
    assertEquals(local(before.get(0)).plusHours(1), local(after.get(0)));
    assertTrue(
        identities(read(plan("Group", DAY.plusDays(1), LocalTime.of(9, 30))).getEvents()).stream()
            .noneMatch(identities(before)::contains));
  }

  /** In Berlin the hour from 02:00 is left out on that day; a clock on a wall doesn't know. */
  @Test
  void aTimeThatTheMachinesZoneSkipsIsKept() throws IOException {
    TimeZone usual = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Europe/Berlin"));
      Plan plan = plan("Group", LocalDate.of(2027, 3, 28), LocalTime.of(2, 59));
      LocalDateTime start = plan.run().orElseThrow().batches().get(0).start();
      assertEquals(2, start.getHour());
      assertEquals(start, local(named(read(plan).getEvents(), "Start house-1")));
    } finally {
      TimeZone.setDefault(usual);
    }
  }

  @Test
  void namesThatWouldBreakALineOrAnEntryAreKeptAsWords() throws IOException {
    String name =
        "Ünï; \"q\", \\n b\\ack\r\nEND:VEVENT\u0007\nBEGIN:VEVENT: "
            + "珈琲の会の皆さま☕ 𝄞".repeat(8)
            + ", the end";
    Plan plan = plan(name, DAY, LocalTime.of(9, 30));
    String text = text(plan);
    for (String line : text.split("\r\n", -1)) {
      assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
      assertTrue(line.chars().noneMatch(Character::isISOControl), line);
    }
    Plan plain = plan("Group", DAY, LocalTime.of(9, 30));
    List<VEvent> entries = read(plan).getEvents();
    assertEquals(read(plain).getEvents().size(), entries.size());
    String clean = name.replaceAll("[\r\n\u0007]", " ");
    assertTrue(
        entries.stream()
            .filter(entry -> entry.getSummary().getValue().startsWith("Carry "))
            .allMatch(entry -> entry.getLocation().getValue().equals(clean)));
    assertTrue(entries.stream().anyMatch(e -> e.getSummary().getValue().startsWith("Carry ")));
  }

  @Test
  void itSaysWhoWroteItAndWhichEventItIs() throws IOException {
    ICalendar calendar = read(plan("Group", DAY, LocalTime.of(9, 30)));
    assertEquals("-//Urnwright//Run//EN", calendar.getProductId().getValue());
    assertEquals("A generic event", calendar.getNames().get(0).getValue());
  }

  @Test
  void withoutADayOrARunThereIsNone() {
    Plan untimed = new Planner().plan(Events.oneCup()).value().orElseThrow();
    assertFalse(RunCalendar.isFor(untimed));
    assertThrows(
        IllegalArgumentException.class,
        () -> RunCalendar.write(untimed, WRITTEN, new ByteArrayOutputStream()));
    Plan plan = plan("Group", DAY, LocalTime.of(9, 30));
    assertTrue(RunCalendar.isFor(plan));
    Event dateless = event("Group", Optional.empty(), LocalTime.of(9, 30));
    assertFalse(RunCalendar.isFor(new Planner().plan(dateless).value().orElseThrow()));
  }

  private static LocalDateTime local(VEvent entry) {
    DateStart start = entry.getDateStart();
    DateTimeComponents parts = start.getValue().getRawComponents();
    assertFalse(parts.isUtc());
    assertEquals(null, start.getParameters().getTimezoneId());
    return LocalDateTime.of(
        parts.getYear(), parts.getMonth(), parts.getDate(), parts.getHour(), parts.getMinute());
  }

  private static VEvent named(List<VEvent> entries, String summary) {
    return entries.stream()
        .filter(entry -> entry.getSummary().getValue().equals(summary))
        .findFirst()
        .orElseThrow();
  }

  private static Set<String> identities(List<VEvent> entries) {
    return entries.stream().map(entry -> entry.getUid().getValue()).collect(Collectors.toSet());
  }

  private static ICalendar read(Plan plan) throws IOException {
    return Biweekly.parse(text(plan)).first();
  }

  private static String text(Plan plan) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    RunCalendar.write(plan, WRITTEN, out);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static Plan plan(String groupName, LocalDate date, LocalTime time) {
    return new Planner().plan(event(groupName, Optional.of(date), time)).value().orElseThrow();
  }

  /** One group without a station, who are served out of two dispensers or more at one time. */
  private static Event event(String groupName, Optional<LocalDate> date, LocalTime time) {
    GuestGroup group = Events.group(groupName, 60, 200, 1.25);
    Event event =
        Events.event(
            Events.serving(new Provision.Mean(), 0),
            List.of(Events.coffee("house", Events.ratio(13))),
            List.of(group),
            Events.equipment(
                5,
                List.of(Events.brewer("Tall brewer", 1, 150, 480, 6)),
                List.of(Events.dispenser("Airpot", 40, 2.2, 40))));
    return new Event(
        event.name(),
        date,
        Optional.of(time),
        event.print(),
        event.serving(),
        event.coffees(),
        event.groups(),
        event.equipment(),
        event.kitchen(),
        event.purchases(),
        event.defaults(),
        event.location());
  }
}
