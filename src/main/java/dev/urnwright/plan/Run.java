package dev.urnwright.plan;

import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import dev.urnwright.wording.Saying;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The work on the clock. Without a date in the event the times are those of {@link
 * java.time.LocalDate#EPOCH}, and only their hours and minutes mean anything.
 *
 * @param batches when each is brewed, in order of start
 * @param fills when each dispenser is filled and poured, in order of filling
 * @param heaters when water is put on to heat
 * @param water how much of it, and for what
 * @param actions everything that hands must do, in order of time
 * @param crew how many people that takes
 * @param quality how good the schedule is
 */
public record Run(
    List<BatchTime> batches,
    List<FillTime> fills,
    List<HeaterTime> heaters,
    WaterUse water,
    List<Action> actions,
    Crew crew,
    Quality quality) {
  /** Copies the lists. */
  public Run {
    batches = List.copyOf(batches);
    fills = List.copyOf(fills);
    heaters = List.copyOf(heaters);
    actions = List.copyOf(actions);
  }

  /** When that batch is brewed. */
  public Optional<BatchTime> timeOf(Batch batch) {
    return batches.stream().filter(time -> time.batch().id().equals(batch.id())).findFirst();
  }

  /** When that dispenser is filled and poured. */
  public Optional<FillTime> timeOf(Fill fill) {
    return fills.stream().filter(time -> time.fill().id().equals(fill.id())).findFirst();
  }

  /** The temperature of a group's coolest cup; empty for iced groups. */
  public Optional<Temperature> coolestPour(GroupPlan group) {
    return group.fills().stream()
        .flatMap(fill -> timeOf(fill).stream())
        .flatMap(time -> time.heat().stream())
        .map(Heat::lastPour)
        .min(Comparator.naturalOrder());
  }

  /**
   * When a batch is brewed.
   *
   * @param batch which, with the brewer it is brewed on
   * @param start of brewing
   * @param ready the last drop; its beverage goes into dispensers at once
   */
  public record BatchTime(Batch batch, LocalDateTime start, LocalDateTime ready) {}

  /**
   * When a dispenser is filled and poured.
   *
   * @param fill which
   * @param unit the dispenser, such as {@code Airpot 3}
   * @param station where it is poured, when the group names one
   * @param tap its place among those that its group has open at the same time
   * @param filled when its (last) batch goes in
   * @param due when it must stand ready at its station: its first pour
   * @param lastPour when it is empty
   * @param useBy when what is left is poured away: when it was held long enough, or, iced, at the
   *     last pour, since it has stood to cool already
   * @param heat how warm it is; empty for iced groups, who get it cold
   */
  public record FillTime(
      Fill fill,
      String unit,
      Optional<String> station,
      Tap tap,
      LocalDateTime filled,
      LocalDateTime due,
      LocalDateTime lastPour,
      LocalDateTime useBy,
      Optional<Heat> heat) {
    /** The dispenser as people call it: by its name, or as the vessel of its group. */
    public Saying called() {
      return fill.dispenser().isPresent()
          ? Saying.verbatim(unit)
          : Saying.of("run.vessel").with("group", fill.groupName());
    }

    /** The same, filled at another time. */
    FillTime filledAt(LocalDateTime other) {
      return new FillTime(fill, unit, station, tap, other, due, lastPour, useBy, heat);
    }
  }

  /**
   * A place side by side with others.
   *
   * @param number from 1
   * @param of how many
   */
  public record Tap(int number, int of) {
    /** Whether others stand beside it. */
    public boolean hasOthers() {
      return of > 1;
    }

    /** For people. */
    public Saying saying() {
      return Saying.of("run.tap").with("number", number).with("of", of);
    }

    /** In English, {@code tap 2 of 3}. */
    @Override
    public String toString() {
      return saying().toString();
    }
  }

  /**
   * How warm a dispenser is.
   *
   * @param filled concentrate, bypass and dispenser mixed
   * @param firstPour at the first cup
   * @param lastPour at the last one
   * @param wanted what the group asked for
   */
  public record Heat(
      Temperature filled, Temperature firstPour, Temperature lastPour, Temperature wanted) {
    /** Whether every cup is as warm as wanted. */
    public boolean isWarmEnough() {
      return lastPour.compareTo(wanted) >= 0;
    }
  }

  /**
   * When a heater is switched on.
   *
   * @param name of the heater, with its number when there are several
   * @param on when to switch it on, filled with tap water
   * @param hot when it is first needed
   * @param toHeat how long a full one takes from the tap
   */
  public record HeaterTime(String name, LocalDateTime on, LocalDateTime hot, Duration toHeat) {}

  /**
   * How much water, and for what.
   *
   * @param brewing brew water of all batches
   * @param bypass liquid bypass of all fills
   * @param rinsing hot water for filters
   * @param preheating hot water for dispensers
   */
  public record WaterUse(Mass brewing, Mass bypass, Volume rinsing, Volume preheating) {}

  /** What kind of action. */
  public enum ActionKind {
    /** Switch a heater or a brewer on. */
    SWITCH_ON,
    /** Weigh and grind a dose. */
    GRIND,
    /** Rinse a filter. */
    RINSE,
    /** Start a batch. */
    START,
    /** Rinse a dispenser with hot water. */
    PREHEAT,
    /** Draw concentrate into a dispenser and add its bypass. */
    FILL,
    /** Carry a dispenser to its station. */
    CARRY,
    /** Bring a dispenser back for cleaning and a refill. */
    COLLECT,
    /** Pour away what is left. */
    DISCARD;

    /** The verb in English, such as {@code Switch on}. */
    public String words() {
      return name().charAt(0) + name().substring(1).toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /**
   * One thing to do.
   *
   * @param at when
   * @param kind what kind
   * @param what on what: a batch, a fill, a heater
   * @param where at which brewer, dispenser, station
   * @param how amounts and the coffee, for people
   */
  public record Action(LocalDateTime at, ActionKind kind, String what, String where, Saying how) {
    /** How, in English. */
    public String detail() {
      return how.toString();
    }
  }

  /**
   * How many people the run takes.
   *
   * @param people how many there are, when that is known
   * @param stretches when how many are busy, in order of time; none while nobody is
   * @param enough so many are enough when what has time is done earlier or later
   */
  public record Crew(OptionalInt people, List<Stretch> stretches, int enough) {
    /** Copies the list. */
    public Crew {
      stretches = List.copyOf(stretches);
    }

    /** The first of the busiest stretches. */
    public Optional<Stretch> busiest() {
      return stretches.stream().max(Comparator.comparingInt(Stretch::people)).stream()
          .flatMap(most -> stretches.stream().filter(s -> s.people() == most.people()))
          .findFirst();
    }
  }

  /**
   * A time in which the same number of people are busy.
   *
   * @param from its start
   * @param until its end
   * @param people how many, 1 or more
   */
  public record Stretch(LocalDateTime from, LocalDateTime until, int people) {}

  /**
   * How good the schedule is.
   *
   * @param fewestBatches whether it is proven that no schedule has fewer batches
   * @param leastAge whether it is proven that none with these batch sizes pours fresher coffee
   * @param meanAge of the coffee at pouring, over all that is served hot
   * @param meanAgeBound the mean age that none goes below
   * @param greatestAge of any hot coffee at pouring
   */
  public record Quality(
      boolean fewestBatches,
      boolean leastAge,
      Duration meanAge,
      Duration meanAgeBound,
      Duration greatestAge) {}
}
