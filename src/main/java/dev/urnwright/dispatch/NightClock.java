package dev.urnwright.dispatch;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;

/**
 * Times on the wall against the minutes of one even day, on which the work is planned. A minute of
 * that day is a minute that really passes: where the clocks are put forward or back in the night,
 * what happens before is told by the clock as it shows then. The even day may begin the evening
 * before.
 */
final class NightClock {
  private final LocalDateTime noon;
  private final Optional<ZoneId> zone;
  private final Duration ahead;

  private NightClock(LocalDateTime noon, Optional<ZoneId> zone, Duration ahead) {
    this.noon = noon;
    this.zone = zone;
    this.ahead = ahead;
  }

  /**
   * The clock of a day's delivery.
   *
   * @param date of the delivery
   * @param zone whose clocks may be changed, when given
   * @param earliest what has to lie on the even day
   */
  static NightClock of(LocalDate date, Optional<ZoneId> zone, LocalDateTime earliest) {
    NightClock plain = new NightClock(date.atTime(LocalTime.NOON), zone, Duration.ZERO);
    Duration before = Duration.between(plain.even(earliest), date.atStartOfDay());
    return new NightClock(plain.noon, zone, before.isNegative() ? Duration.ZERO : before);
  }

  /** The minute of the even day for a time on the wall. */
  LocalDateTime even(LocalDateTime wall) {
    Duration toNoon =
        zone.map(where -> Duration.between(wall.atZone(where), noon.atZone(where)))
            .orElseGet(() -> Duration.between(wall, noon));
    return noon.minus(toNoon).plus(ahead);
  }

  /** What the wall shows at a minute of the even day. */
  LocalDateTime wall(LocalDateTime even) {
    Duration toNoon = Duration.between(even, noon.plus(ahead));
    return zone.map(where -> noon.atZone(where).minus(toNoon).toLocalDateTime())
        .orElseGet(() -> noon.minus(toNoon));
  }

  /** Whether the clocks are changed between two times on the wall. */
  boolean isChangedBetween(LocalDateTime from, LocalDateTime to) {
    return zone.filter(
            where -> !where.getRules().getOffset(from).equals(where.getRules().getOffset(to)))
        .isPresent();
  }

  /** Whether every time of the even day is that on the wall. */
  boolean isPlain() {
    return zone.isEmpty() && ahead.isZero();
  }
}
