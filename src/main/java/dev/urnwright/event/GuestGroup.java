package dev.urnwright.event;

import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import dev.urnwright.quantity.Water;
import java.util.List;
import java.util.Optional;

/**
 * Guests who drink the same: alike cups at the same strength, place and time.
 *
 * @param name distinct among the groups
 * @param guests how many come and what they drink
 * @param cup the cup
 * @param strength the wanted strength of the finished beverage, 0.1 % or more
 * @param coffees who drinks which coffee; the shares add up to 100 %
 * @param ice when it is served over ice
 * @param service when and where
 * @param location where it stands
 */
public record GuestGroup(
    String name,
    Guests guests,
    Cup cup,
    Strength strength,
    List<CoffeeShare> coffees,
    Optional<OverIce> ice,
    Service service,
    Location location) {
  private static final double LEAST_PERCENT = 0.1 - 1e-9;

  /** Copies the list; refuses coffee without strength, and ice that warms. */
  public GuestGroup {
    coffees = List.copyOf(coffees);
    if (coffees.isEmpty()) {
      throw new IllegalArgumentException("a group drinks at least one coffee");
    }
    if (strength.percent() < LEAST_PERCENT) {
      throw new IllegalArgumentException("coffee is 0.1 % strong or more: " + strength);
    }
    if (ice.isPresent() && ice.get().pouredAt().compareTo(cup.servedAt()) <= 0) {
      throw new IllegalArgumentException("ice cools: " + ice.get() + ", " + cup.servedAt());
    }
  }

  /** The same guests, wanting another strength. */
  public GuestGroup wanting(Strength other) {
    return new GuestGroup(name, guests, cup, other, coffees, ice, service, location);
  }

  /** The same group, drinking more or less. */
  public GuestGroup with(Guests other) {
    return new GuestGroup(name, other, cup, strength, coffees, ice, service, location);
  }

  /**
   * How many come and what they drink.
   *
   * @param headcount from 1 to 1 000 000
   * @param drinkers the share of them who drink coffee
   * @param cupsEach cups for each drinker, above 0, at most 100
   */
  public record Guests(int headcount, Share drinkers, double cupsEach) {
    private static final int MOST_GUESTS = 1_000_000;
    private static final double MOST_CUPS = 100;

    /** Refuses nobody and nothing, and more than anyone can serve. */
    public Guests {
      if (headcount < 1 || headcount > MOST_GUESTS || !(cupsEach > 0 && cupsEach <= MOST_CUPS)) {
        throw new IllegalArgumentException(
            "a group has guests who drink something: " + headcount + " guests, " + cupsEach);
      }
    }
  }

  /**
   * The cup.
   *
   * @param size what it holds, above 0
   * @param room left free for milk, less than {@code size}
   * @param servedAt how warm the beverage is in it; over ice, how cold; from 0 to 99.97 °C
   */
  public record Cup(Volume size, Volume room, Temperature servedAt) {
    /** Refuses a cup with no coffee in it. */
    public Cup {
      if (room.compareTo(size) >= 0) {
        throw new IllegalArgumentException("the room must be less than the cup: " + room);
      }
      if (!Water.isLiquidAt(servedAt)) {
        throw new IllegalArgumentException("a cup is served liquid: " + servedAt);
      }
    }

    /** What is poured into it. */
    public Volume poured() {
      return size.minus(room);
    }
  }

  /**
   * The part of a group that drinks one coffee.
   *
   * @param coffee its key
   * @param share of the group's drinkers, above 0
   */
  public record CoffeeShare(String coffee, Share share) {}

  /**
   * Poured over ice that melts into the cup.
   *
   * @param pouredAt how warm the beverage is when it meets the ice; the cup's {@code servedAt} is
   *     lower
   */
  public record OverIce(Temperature pouredAt) {
    /** Refuses ice and steam. */
    public OverIce {
      if (!Water.isLiquidAt(pouredAt)) {
        throw new IllegalArgumentException("what is poured is liquid: " + pouredAt);
      }
    }
  }

  /**
   * When and where the group is served.
   *
   * @param window from when to when, when given
   * @param arrivals how the guests spread over it
   * @param station where, when given
   * @param dispenser the kind of dispenser that the user wants for it, when given
   */
  public record Service(
      Optional<TimeWindow> window,
      Arrivals arrivals,
      Optional<String> station,
      Optional<String> dispenser) {}

  /**
   * How guests spread over their window.
   *
   * @param shape in words
   * @param shares of the cups in equal parts of the window; empty unless the shape is listed
   */
  public record Arrivals(Shape shape, List<Share> shares) {
    /** The same number at any time. */
    public static final Arrivals EVEN = new Arrivals(Shape.EVEN, List.of());

    /** More at the beginning. */
    public static final Arrivals EARLY = new Arrivals(Shape.EARLY, List.of());

    /** More at the end. */
    public static final Arrivals LATE = new Arrivals(Shape.LATE, List.of());

    /** Copies the list. */
    public Arrivals {
      shares = List.copyOf(shares);
      if (shares.isEmpty() == (shape == Shape.LISTED)) {
        throw new IllegalArgumentException("shares go with the listed shape alone: " + shape);
      }
    }

    /** So many of the cups in each of equal parts of the window. */
    public static Arrivals listed(List<Share> shares) {
      return new Arrivals(Shape.LISTED, shares);
    }

    /** A shape in words. */
    public enum Shape {
      /** The same number at any time. */
      EVEN,
      /** More at the beginning. */
      EARLY,
      /** More at the end. */
      LATE,
      /** As listed. */
      LISTED
    }
  }
}
