package dev.urnwright.sheet;

import dev.urnwright.brew.BrewBalance;
import dev.urnwright.event.Window;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Strength against extraction, both in percent: the concentrates and each group after bypass.
 *
 * <p>Bypass dissolves nothing, so it moves a point straight down. A group's point lies on the line
 * of its total water to coffee; where brew water is lost as steam, a little off it, since the
 * bypass loses none.
 *
 * @param extraction across, 14 to 26 % or further when a point lies outside
 * @param strength up, 0.9 to 1.8 % or further when a point lies outside
 * @param window the part that the user aims for
 * @param ratioLines for whole-number ratios, strongest first
 * @param dilutions one for each coffee
 */
public record ControlChart(
    Axis extraction,
    Axis strength,
    Window window,
    List<RatioLine> ratioLines,
    List<Dilution> dilutions) {
  /** Published axes of the control chart for filter coffee. */
  private static final Axis USUAL_EXTRACTION = new Axis(14, 26, 1);

  private static final Axis USUAL_STRENGTH = new Axis(0.9, 1.8, 0.1);

  /** What one legend and one column of numbers can hold. */
  private static final int MOST_POINTS = 40;

  /** Ratio lines closer than this look the same, g/g. */
  private static final double SAME_ABSORPTION = 0.005;

  private static final double SAME_STEAM = 0.001;

  /** Copies the lists. */
  public ControlChart {
    ratioLines = List.copyOf(ratioLines);
    dilutions = List.copyOf(dilutions);
  }

  /**
   * One coffee: its concentrate and what bypass makes of it.
   *
   * @param coffee which
   * @param marker which of the markers, counted from 0
   * @param concentrate undiluted
   * @param cups after bypass, strongest first; groups alike share a point
   */
  public record Dilution(CoffeeTag coffee, int marker, Point concentrate, List<Point> cups) {
    /** Copies the list. */
    public Dilution {
      cups = List.copyOf(cups);
    }

    /** Concentrate and cups. */
    public List<Point> points() {
      return Stream.concat(Stream.of(concentrate), cups.stream()).toList();
    }
  }

  /**
   * A point.
   *
   * @param label a letter for a concentrate, a number for groups
   * @param extraction in percent
   * @param strength in percent
   * @param plusMinus how far off that may be, at k = 2, either way, in percent
   * @param waterToCoffee total water to dose, grams per gram
   * @param groups who drinks it; nobody for a concentrate
   */
  public record Point(
      String label,
      double extraction,
      double strength,
      double plusMinus,
      double waterToCoffee,
      List<Name> groups) {
    /** Copies the list. */
    public Point {
      groups = List.copyOf(groups);
    }
  }

  /**
   * The charts of a plan: coffees that keep the same amount of water share ratio lines and so a
   * chart, as long as it stays readable.
   */
  public static List<ControlChart> of(Plan plan) {
    Certainty certainty = plan.certainty();
    List<List<CoffeePlan>> shared = new ArrayList<>();
    for (CoffeePlan coffee : plan.coffees()) {
      shared.stream()
          .filter(others -> fits(others, coffee))
          .findFirst()
          .orElseGet(
              () -> {
                List<CoffeePlan> alone = new ArrayList<>();
                shared.add(alone);
                return alone;
              })
          .add(coffee);
    }
    return shared.stream()
        .map(coffees -> of(coffees, plan.event().print().window(), certainty))
        .toList();
  }

  private static boolean fits(List<CoffeePlan> others, CoffeePlan coffee) {
    BrewBalance one = others.get(0).needed().brew();
    BrewBalance other = coffee.needed().brew();
    int points = coffee.groups().size() + 1;
    for (CoffeePlan already : others) {
      points += already.groups().size() + 1;
    }
    return Math.abs(absorption(one) - absorption(other)) < SAME_ABSORPTION
        && Math.abs(steamLoss(one) - steamLoss(other)) < SAME_STEAM
        && points <= MOST_POINTS;
  }

  private static ControlChart of(List<CoffeePlan> coffees, Window window, Certainty certainty) {
    Axis extraction =
        USUAL_EXTRACTION
            .reaching(window.leastExtracted().percent())
            .reaching(window.mostExtracted().percent());
    Axis strength =
        USUAL_STRENGTH.reaching(window.weakest().percent()).reaching(window.strongest().percent());
    List<Dilution> dilutions = new ArrayList<>();
    int number = 1;
    for (CoffeePlan coffee : coffees) {
      Dilution dilution = dilution(coffee, dilutions.size(), number, certainty);
      dilutions.add(dilution);
      number += dilution.cups().size();
      for (Point point : dilution.points()) {
        extraction = extraction.reaching(point.extraction());
        strength = strength.reaching(point.strength());
      }
    }
    BrewBalance brew = coffees.get(0).needed().brew();
    extraction = extraction.readable();
    strength = strength.readable();
    return new ControlChart(
        extraction,
        strength,
        window,
        RatioLine.across(extraction, strength, absorption(brew), steamLoss(brew)),
        dilutions);
  }

  private static Dilution dilution(
      CoffeePlan coffee, int marker, int firstNumber, Certainty certainty) {
    BrewBalance brew = coffee.needed().brew();
    double extraction = brew.extraction().percent();
    List<GroupPlan> strongestFirst =
        coffee.groups().stream()
            .sorted((one, other) -> other.group().strength().compareTo(one.group().strength()))
            .toList();
    List<Point> cups = new ArrayList<>();
    List<Name> alike = new ArrayList<>();
    double plusMinus = 0;
    for (int at = 0; at < strongestFirst.size(); at++) {
      GroupPlan group = strongestFirst.get(at);
      alike.add(new Name(group.group().name()));
      plusMinus = Math.max(plusMinus, certainty.of(group).plusMinus().percent());
      boolean last =
          at + 1 == strongestFirst.size() || !sameStrength(group, strongestFirst.get(at + 1));
      if (last) {
        cups.add(
            new Point(
                Integer.toString(firstNumber + cups.size()),
                extraction,
                group.group().strength().percent(),
                plusMinus,
                group.cup().totalWaterToCoffee().gramsPerGram(),
                alike));
        alike.clear();
        plusMinus = 0;
      }
    }
    return new Dilution(
        CoffeeTag.of(coffee.coffee()),
        marker,
        new Point(
            Character.toString((char) ('A' + marker)),
            extraction,
            brew.strength().percent(),
            certainty.of(coffee).concentrate().plusMinus().percent(),
            brew.ratio().gramsPerGram(),
            List.of()),
        cups);
  }

  /** To the hundredth of a percent that a refractometer shows. */
  private static boolean sameStrength(GroupPlan one, GroupPlan other) {
    return Math.round(one.group().strength().percent() * 100)
        == Math.round(other.group().strength().percent() * 100);
  }

  private static double absorption(BrewBalance brew) {
    return brew.absorbed().grams() / brew.dose().grams();
  }

  private static double steamLoss(BrewBalance brew) {
    return brew.steam().grams() / brew.water().grams();
  }
}
