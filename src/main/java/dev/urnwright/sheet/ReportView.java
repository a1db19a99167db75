package dev.urnwright.sheet;

import dev.urnwright.day.MeasuredBatch;
import dev.urnwright.quantity.Display;
import dev.urnwright.report.EventReport;
import dev.urnwright.report.EventReport.BatchReport;
import dev.urnwright.report.EventReport.CoffeeReport;
import dev.urnwright.report.EventReport.GroupReport;
import dev.urnwright.wording.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * An event when it is over, as text, sheet and workbook show it.
 *
 * @param heading of every page
 * @param coffees one part for each
 */
public record ReportView(Heading heading, List<Part> coffees) {
  /** What was not measured, in a column of figures. */
  public static final String UNKNOWN = "–";

  /**
   * One coffee.
   *
   * @param coffee which
   * @param batches planned against measured
   * @param groups cups and what came back
   * @param cameBack of all groups that were weighed
   * @param cost of the coffee in it, when known
   */
  public record Part(
      CoffeeTag coffee,
      List<BatchRow> batches,
      List<GroupRow> groups,
      String cameBack,
      Optional<String> cost) {}

  /**
   * One batch: each figure as it was to be and as it was.
   *
   * @param id of the batch
   * @param dose of coffee
   * @param water to brew with
   * @param beverage that left the grounds
   * @param strength of it
   * @param extraction of the coffee
   * @param absorption of the grounds
   */
  public record BatchRow(
      String id,
      Both dose,
      Both water,
      Both beverage,
      Both strength,
      Both extraction,
      Both absorption) {
    /** The figures in the order of the headings. */
    public List<Both> figures() {
      return List.of(dose, water, beverage, strength, extraction, absorption);
    }
  }

  /**
   * A figure twice.
   *
   * @param planned as it was to be
   * @param measured as it was
   */
  public record Both(String planned, String measured) {}

  /**
   * One group.
   *
   * @param group its name
   * @param guests planned and come
   * @param cups planned and poured
   * @param cameBack what came back
   * @param cost of that, when known
   */
  public record GroupRow(
      Name group, Both guests, Both cups, String cameBack, Optional<String> cost) {}

  /**
   * Arranges a report, every quantity written for the event's units and scale.
   *
   * @param words in which it is written
   */
  public static ReportView of(EventReport report, Words words) {
    Display display =
        new Display(
            report.plan().event().print().units(),
            report.plan().event().equipment().scaleStep(),
            words.style());
    return new ReportView(
        Heading.of(report.plan().event(), words),
        report.coffees().stream().map(coffee -> part(coffee, display)).toList());
  }

  private static Part part(CoffeeReport coffee, Display display) {
    boolean weighed = coffee.groups().stream().anyMatch(group -> group.served().isPresent());
    return new Part(
        CoffeeTag.of(coffee.coffee()),
        coffee.batches().stream().map(batch -> batch(batch, display)).toList(),
        coffee.groups().stream().map(group -> group(group, display)).toList(),
        weighed ? display.mass(coffee.cameBack()).toString() : UNKNOWN,
        coffee.costOfLeftOver().map(cost -> display.money(cost).toString()));
  }

  private static BatchRow batch(BatchReport batch, Display display) {
    var plan = batch.planned().brew();
    Optional<MeasuredBatch> was = batch.measured();
    Optional<MeasuredBatch> weighed = was.filter(MeasuredBatch::isBeverageWeighed);
    Optional<MeasuredBatch> read = was.filter(MeasuredBatch::isRead);
    return new BatchRow(
        batch.planned().id(),
        both(display.mass(plan.dose()), was.map(b -> display.mass(b.weighed().dose()))),
        both(display.mass(plan.water()), was.map(b -> display.mass(b.weighed().brewWater()))),
        both(display.mass(plan.beverage()), weighed.map(b -> display.mass(b.beverage()))),
        both(display.strength(plan.strength()), read.map(b -> display.strength(b.strength()))),
        both(
            display.extraction(plan.extraction()),
            read.map(b -> display.extraction(b.extraction()))),
        both(
            display.absorption(plan.absorption()),
            weighed.map(b -> display.absorption(b.absorption()))));
  }

  private static Both both(Object planned, Optional<?> measured) {
    return new Both(planned.toString(), measured.map(Object::toString).orElse(UNKNOWN));
  }

  private static GroupRow group(GroupReport group, Display display) {
    var plan = group.group();
    return new GroupRow(
        new Name(plan.group().name()),
        both(plan.group().guests().headcount(), group.served().map(s -> s.guests())),
        both(
            plan.demand().cups(),
            group.served().map(s -> String.format(Locale.ROOT, "%.0f", s.cupsPoured()))),
        group.served().map(s -> display.mass(s.cameBack()).toString()).orElse(UNKNOWN),
        group.served().flatMap(s -> s.cost()).map(cost -> display.money(cost).toString()));
  }
}
