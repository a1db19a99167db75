package dev.urnwright.sheet;

import dev.urnwright.event.Event;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.wording.Words;
import java.util.List;
import java.util.Optional;

/**
 * A plan as its prep sheets show it, in the order of the work.
 *
 * @param heading of every page
 * @param before sheets for brewing and filling
 * @param onTheDay sheets for the one with the refractometer
 * @param closing sheets to shop by, to read and to stick on
 */
public record PrepView(Heading heading, Before before, OnTheDaySheets onTheDay, Closing closing) {
  /**
   * For brewing and filling.
   *
   * @param overview everything at a glance
   * @param run the work on the clock, when the plan has one
   * @param brewing one table for each coffee
   * @param filling one table for each coffee of each group
   */
  public record Before(
      Overview overview,
      Optional<RunSheet> run,
      List<BrewTable> brewing,
      List<FillTable> filling) {}

  /**
   * For the one with the refractometer, and for the one without.
   *
   * @param corrections bypass for each likely reading
   * @param ladders bypass by taste
   * @param charts the control chart, one for each absorption
   * @param howSure what makes the strengths unsure
   */
  public record OnTheDaySheets(
      List<CorrectionTable> corrections,
      List<LadderTable> ladders,
      List<ChartView> charts,
      List<HowSure> howSure) {
    /** Whether anything is unsure. */
    public boolean anyUnsure() {
      return !howSure.isEmpty();
    }
  }

  /**
   * To shop by, to read and to stick on.
   *
   * @param shopping what to buy
   * @param remarks cautions and assumptions
   * @param labels for the dispensers, two in a row
   * @param purchasing what to load, and what it costs
   */
  public record Closing(
      List<ShoppingRow> shopping, Remarks remarks, List<LabelRow> labels, Purchasing purchasing) {}

  /**
   * What to load, and what it costs.
   *
   * @param packing to tick off, part by part
   * @param cards for the milk table, two in a row
   * @param costs for the firm alone, when any price is known
   * @param quote for the client, when there is a price
   */
  public record Purchasing(
      List<PackingPart> packing,
      List<CardRow> cards,
      Optional<CostSheet> costs,
      Optional<QuoteSheet> quote) {
    /** Whether there is a milk table. */
    public boolean anyCards() {
      return !cards.isEmpty();
    }
  }

  /** The drawn parts of the run, by their numbers. */
  public List<TimelineView> timelines() {
    return before.run().map(RunSheet::timelines).orElse(List.of());
  }

  /**
   * Arranges a plan, every quantity written for the event's units and scale.
   *
   * @param words in which it is written
   */
  public static PrepView of(Plan plan, Words words) {
    Event event = plan.event();
    Display display =
        new Display(event.print().units(), event.equipment().scaleStep(), words.style());
    Certainty certainty = plan.certainty();
    return new PrepView(
        Heading.of(event, words),
        new Before(
            Overview.of(plan, certainty, display, words),
            RunSheet.of(plan, display, words),
            BrewTable.of(plan, certainty, display, words),
            FillTable.of(plan, certainty, display, words)),
        new OnTheDaySheets(
            CorrectionTable.of(plan, certainty, display, words),
            LadderTable.of(plan, certainty, display, words),
            ChartView.of(plan, display),
            HowSure.of(plan, certainty, display, words)),
        new Closing(
            ShoppingRow.of(plan, display, words),
            Remarks.of(plan.cautions(), plan.notes(), words),
            LabelRow.of(plan, certainty, display, words),
            new Purchasing(
                PackingPart.of(plan, display, words),
                CardRow.of(plan),
                CostSheet.of(plan, display, words),
                QuoteSheet.of(plan, display, words))));
  }
}
