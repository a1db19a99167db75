package dev.urnwright.plan;

import dev.urnwright.demand.PourCurve;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Kitchen.Handling;
import dev.urnwright.event.TimeWindow;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * When dispensers must be filled and are poured, in minutes of the event's day. A group without a
 * window of its own is due, all at once, at the event's time.
 */
final class Timetable {
  /** How long coffee is good in a dispenser of which nothing is said. */
  static final Duration USUAL_HOLD = Duration.ofMinutes(60);

  /**
   * Cups per minute from a dispenser of which nothing is said: ten seconds a guest, cup in hand.
   * Common practice, no source.
   */
  static final double USUAL_POUR = 6;

  private static final int DAY = 24 * 60;

  /** More rounds of one group than this mean that the hold leaves no time to pour. */
  private static final int MOST_ROUNDS = 2_000;

  /** Binary rounding never asks for a further tap. */
  private static final double NOISE = 1e-9;

  private final Event event;

  Timetable(Event event) {
    this.event = event;
  }

  /**
   * When one fill is wanted.
   *
   * @param due first pour
   * @param lastPour last pour
   * @param meanPour the mean over its cups
   * @param carry to the station, and back
   * @param earliestReady a batch ready before would be too old at the last pour
   * @param latestReady a batch ready after could not be there for the first
   */
  record FillWindow(
      int due, int lastPour, double meanPour, int carry, int earliestReady, int latestReady) {}

  /**
   * How many dispensers a group's guests need side by side at its busiest. Who is due all at once
   * waits anyhow: one.
   */
  int tapsFor(GuestGroup group, int cups, Dispenser dispenser) {
    double rate = cups * curve(group).greatestRate();
    return Double.isInfinite(rate)
        ? 1
        : (int) Math.max(1, Math.ceil(rate / pour(dispenser) - NOISE));
  }

  /** The longest that a group's guests wait for so many dispensers side by side, in minutes. */
  int queueMinutes(GuestGroup group, int cups, Dispenser dispenser, int taps) {
    double wait = curve(group).longestWait(taps * pour(dispenser) / cups);
    return (int) Math.ceil(wait - NOISE);
  }

  /** Cups in the busiest minute, rounded up. */
  int busiest(GuestGroup group, int cups) {
    return (int) Math.ceil(cups * curve(group).greatestRate() - NOISE);
  }

  static double pour(Dispenser dispenser) {
    return dispenser.cupsPerMinute().orElse(USUAL_POUR);
  }

  /**
   * The least number of equal rounds of fills so that each is poured within its hold; a round is
   * one fill, or several that stand open side by side.
   */
  OptionalInt roundsForHold(GuestGroup group, Optional<Dispenser> dispenser) {
    Optional<Integer> hold = hold(group, dispenser);
    if (hold.isEmpty()) {
      return OptionalInt.of(1);
    }
    int longest = hold.get() - transfer() - carry(group);
    PourCurve curve = curve(group);
    for (int rounds = 1; longest >= 1 && rounds <= MOST_ROUNDS; rounds++) {
      if (longestPour(curve, rounds) <= longest) {
        return OptionalInt.of(rounds);
      }
    }
    return OptionalInt.empty();
  }

  /**
   * The windows of a group's fills, in order of pouring. Its guests share out evenly among those
   * that stand side by side, so these are emptied together.
   *
   * @param fills of the group, a multiple of {@code taps}
   * @param taps side by side
   */
  List<FillWindow> windows(GuestGroup group, Optional<Dispenser> dispenser, int fills, int taps) {
    PourCurve curve = curve(group);
    List<FillWindow> windows = new ArrayList<>();
    int rounds = fills / taps;
    for (int n = 0; n < fills; n++) {
      int round = n / taps;
      int due = first(curve, round, rounds);
      int last = last(curve, round, rounds);
      int carry = carry(group);
      int latest = due - carry - transfer() - cooling(group);
      windows.add(
          new FillWindow(
              due,
              last,
              mean(curve, round, rounds),
              carry,
              hold(group, dispenser).map(hold -> last - hold).orElse(latest - DAY),
              latest));
    }
    return windows;
  }

  /** Minutes that coffee is good; no limit for iced coffee, and where no dispensers are listed. */
  Optional<Integer> hold(GuestGroup group, Optional<Dispenser> dispenser) {
    if (group.ice().isPresent()) {
      return Optional.empty();
    }
    return dispenser.map(d -> (int) d.hold().orElse(USUAL_HOLD).toMinutes());
  }

  int transfer() {
    return minutesUp(handling().transfer());
  }

  int turnaround() {
    return minutesUp(handling().turnaround());
  }

  int cleaning() {
    return minutesUp(handling().cleaning());
  }

  static int minutesUp(Duration duration) {
    return Math.toIntExact((duration.toSeconds() + 59) / 60);
  }

  static int minuteOf(LocalTime time) {
    return time.toSecondOfDay() / 60;
  }

  private Handling handling() {
    return event.kitchen().handling();
  }

  private int carry(GuestGroup group) {
    return minutesUp(event.kitchen().carryTo(group.service().station()));
  }

  private int cooling(GuestGroup group) {
    return group.ice().isPresent() ? minutesUp(handling().cooling()) : 0;
  }

  private PourCurve curve(GuestGroup group) {
    Optional<TimeWindow> window = group.service().window();
    if (window.isEmpty()) {
      int due = minuteOf(event.time().orElseThrow());
      return PourCurve.of(due, due, GuestGroup.Arrivals.EVEN);
    }
    return PourCurve.of(
        window.get().startMinute(), window.get().endMinute(), group.service().arrivals());
  }

  private static int longestPour(PourCurve curve, int rounds) {
    int longest = 0;
    for (int n = 0; n < rounds; n++) {
      longest = Math.max(longest, last(curve, n, rounds) - first(curve, n, rounds));
    }
    return longest;
  }

  private static int first(PourCurve curve, int n, int rounds) {
    return (int) Math.floor(curve.minuteOf((double) n / rounds) + 1e-9);
  }

  private static int last(PourCurve curve, int n, int rounds) {
    return (int) Math.ceil(curve.minuteOf((n + 1.0) / rounds) - 1e-9);
  }

  private static double mean(PourCurve curve, int n, int rounds) {
    int parts = 32; // midpoints: the curve is smooth within a round
    double sum = 0;
    for (int part = 0; part < parts; part++) {
      sum += curve.minuteOf((n + (part + 0.5) / parts) / rounds);
    }
    return sum / parts;
  }
}
