package dev.urnwright.calendar;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.parameter.Related;
import biweekly.property.Trigger;
import biweekly.util.Duration;
import dev.urnwright.event.Event;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Run;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.ActionKind;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Date;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Writes a run's actions as an iCalendar file. */
public final class RunCalendar {
  private static final String PRODUCT = "-//Urnwright//Run//EN";

  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);

  private static final int RING_MINUTES_BEFORE = 5;

  /** The standard's greatest length of a line, in octets without the line end. */
  private static final int LINE_OCTETS = 75;

  private final Event event;
  private final Instant written;
  private final Map<String, Integer> seen = new HashMap<>();

  private RunCalendar(Event event, Instant written) {
    this.event = event;
    this.written = written;
  }

  /** Whether there is anything to put into a calendar: a run, and the day it falls on. */
  public static boolean isFor(Plan plan) {
    return plan.run().isPresent() && plan.event().date().isPresent();
  }

  /**
   * Writes the whole file and leaves the stream open.
   *
   * @param written the time that entries carry as that of their last change
   * @throws IllegalArgumentException if there is no run or no date
   * @throws IOException if the stream fails
   */
  public static void write(Plan plan, Instant written, OutputStream out) throws IOException {
    if (!isFor(plan)) {
      throw new IllegalArgumentException("a calendar takes a run and a date");
    }
    ICalendar calendar = new RunCalendar(plan.event(), written).of(plan.run().orElseThrow());
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
      writer.write(calendar);
    }
    out.write(folded(text.toString()).getBytes(StandardCharsets.UTF_8));
  }

  /** The library folds after so many letters, the standard wants it after so many octets. */
  private static String folded(String text) {
    StringBuilder folded = new StringBuilder();
    int octets = 0;
    for (int at = 0; at < text.length(); at = text.offsetByCodePoints(at, 1)) {
      int point = text.codePointAt(at);
      int size = Character.toString(point).getBytes(StandardCharsets.UTF_8).length;
      boolean ends = point == '\r' || point == '\n';
      if (!ends && octets + size > LINE_OCTETS) {
        folded.append("\r\n ");
        octets = 1;
      }
      folded.appendCodePoint(point);
      octets = ends ? 0 : octets + size;
    }
    return folded.toString();
  }

  private ICalendar of(Run run) {
    ICalendar calendar = new ICalendar();
    calendar.setProductId(PRODUCT);
    calendar.setName(clean(event.name()));
    run.actions().stream()
        .collect(
            Collectors.groupingBy(
                action -> new Moment(action.at(), action.kind()),
                LinkedHashMap::new,
                Collectors.toList()))
        .forEach((moment, alike) -> calendar.addEvent(entry(moment, alike)));
    return calendar;
  }

  /**
   * What is done together.
   *
   * @param at when
   * @param kind what kind
   */
  private record Moment(LocalDateTime at, ActionKind kind) {}

  private VEvent entry(Moment moment, List<Action> alike) {
    VEvent entry = new VEvent();
    String summary = moment.kind().words() + " " + joined(alike, Action::what);
    entry.setUid(identity(summary));
    entry.setDateTimeStamp(Date.from(written));
    // As a java.util.Date, an hour that the machine's own zone skips in spring would be moved.
    entry.addExperimentalProperty("DTSTART", LOCAL.format(moment.at()));
    entry.setSummary(summary);
    entry.setLocation(joined(alike, Action::where));
    entry.setDescription(
        clean(event.name())
            + alike.stream()
                .map(a -> "\n" + clean(a.what() + " (" + a.where() + "): " + a.detail()))
                .collect(Collectors.joining()));
    entry.setTransparency(true);
    if (moment.kind() == ActionKind.START) {
      Duration before = Duration.builder().prior(true).minutes(RING_MINUTES_BEFORE).build();
      entry.addAlarm(VAlarm.display(new Trigger(before, Related.START), summary));
    }
    return entry;
  }

  /** The same whenever the same is to be done at that event, at whatever time. */
  private String identity(String summary) {
    int time = seen.merge(summary, 1, Integer::sum);
    String named =
        String.join("\n", event.name(), event.date().orElseThrow().toString(), summary, "" + time);
    return UUID.nameUUIDFromBytes(named.getBytes(StandardCharsets.UTF_8)).toString();
  }

  private static String joined(List<Action> alike, Function<Action, String> part) {
    return alike.stream()
        .map(part)
        .map(RunCalendar::clean)
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** On one line, without the control characters that the standard forbids. */
  private static String clean(String text) {
    return text.codePoints()
        .map(point -> Character.isISOControl(point) ? ' ' : point)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }
}
