package dev.urnwright.dispatch;

import dev.urnwright.problem.Problem;
import dev.urnwright.wording.Saying;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** What the planner says of an event, in the words of a round. */
final class Words {
  private static final Pattern CUPS = Pattern.compile("(\\d+) cups\\b");
  private static final Pattern TIME = Pattern.compile("\\b([01]\\d|2[0-3]):([0-5]\\d)\\b");

  private Words() {}

  /** A weekday's name. */
  static String day(LocalDate date) {
    return "a " + date.getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  /** The same problem: cups are carafes, and times are told as the clock on the wall shows them. */
  static Problem ofRound(Problem problem, NightClock clock, LocalDate date) {
    return new Problem(
        problem.location(),
        ofRound(problem.wrong(), clock, date),
        ofRound(problem.expected(), clock, date));
  }

  /** The same saying: its times are told as the clock on the wall shows them. */
  static Saying ofRound(Saying saying, NightClock clock, LocalDate date) {
    Map<String, Object> values = saying.values();
    values.replaceAll(
        (name, value) ->
            value instanceof LocalTime time ? clock.wall(date.atTime(time)).toLocalTime() : value);
    return new Saying(saying.key(), values);
  }

  private static String ofRound(String text, NightClock clock, LocalDate date) {
    String carafes = CUPS.matcher(text).replaceAll("$1 carafes");
    return clock.isPlain()
        ? carafes
        : TIME.matcher(carafes)
            .replaceAll(
                found ->
                    clock
                        .wall(date.atTime(LocalTime.parse(found.group())))
                        .toLocalTime()
                        .toString());
  }
}
