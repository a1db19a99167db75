package dev.urnwright.xlsx;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.event.Event;
import dev.urnwright.event.Provision;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Inputs that can't be brewed or served say so in words; no cell shows an error. */
class ImpossibleInputsTest {
  private Plan plan;
  private Layout layout;
  private Recalculation workbook;

  @BeforeEach
  void plan() {
    Event event =
        Events.event(
            Events.serving(new Provision.Mean(), 0),
            List.of(Events.coffee("house", Events.ratio(13))),
            List.of(
                Events.group("Hot", 60, 200, 1.3),
                Events.iced(Events.group("Iced", 20, 300, 1.3), 20, 5)),
            Events.equipment(
                5,
                List.of(Events.brewer("Brewer", 1, 100, 600, 9)),
                List.of(Events.dispenser("Airpot", 20, 2.2, 40))));
    plan = new Planner().plan(event).value().orElseThrow();
    layout = Layout.of(plan, Units.of(plan));
    workbook = Recalculation.of(plan);
  }

  private void set(Grid grid, String key, int item, double value) {
    workbook.cell(grid, key, item).setCellValue(value);
  }

  private String check(Grid grid, int item) {
    workbook.recalculate();
    assertEquals(List.of(), workbook.errors());
    return workbook.cell(grid, "check", item).getStringCellValue();
  }

  @Test
  void aGroupStrongerThanTheConcentrate() {
    set(layout.groups(), "strength", 0, 0.025);
    assertEquals("Stronger than the concentrate: lower the ratio", check(layout.dilution(), 0));
  }

  @Test
  void iceThatOutweighsTheBypass() {
    set(layout.groups(), "pouredAt", 1, 60);
    assertEquals(
        "Ice outweighs the bypass: pour cooler or brew stronger", check(layout.dilution(), 1));
  }

  @Test
  void lessThanTheLeastDose() {
    set(layout.groups(), "headcount", 0, 1);
    set(layout.groups(), "headcount", 1, 1);
    assertEquals("Less than the least dose of any brewer", check(layout.coffees(), 0));
  }

  @Test
  void aRatioAtWhichTheGroundsKeepAllWater() {
    set(layout.coffees(), "ratio", 0, 2);
    assertEquals("The grounds keep all the water: raise the ratio", check(layout.coffees(), 0));
  }

  @Test
  void nobodyAtAll() {
    set(layout.groups(), "headcount", 0, 0);
    set(layout.groups(), "headcount", 1, 0);
    check(layout.coffees(), 0);
    assertEquals(0, workbook.cell(layout.coffees(), "batches", 0).getNumericCellValue());
  }

  @Test
  void aDispenserTooSmallForItsHeel() {
    set(layout.dispensers(), "heel", 0, 2200);
    assertEquals("Too small for its heel", check(layout.service(), 0));
  }

  @Test
  void manyMoreGuestsThanPlanned() {
    set(layout.groups(), "headcount", 0, 160);
    assertEquals("ok", check(layout.coffees(), 0));
  }

  @Test
  void moreRowsThanTheSheetsHaveAreSaid() {
    set(layout.groups(), "headcount", 0, 100_000);
    assertEquals("More batches than this sheet has rows", check(layout.coffees(), 0));
  }

  @Test
  void printedBatchesAndFillsAddUp() {
    double dose = 0;
    for (int i = 0; i < plan.batches().size(); i++) {
      dose += workbook.cell(layout.batches(), "dose", i).getNumericCellValue();
    }
    assertEquals(
        dose, workbook.cell(layout.coffees(), "brewedDose", 0).getNumericCellValue(), 1e-9);
    double drawn = 0;
    for (int i = 0; i < plan.fills().size(); i++) {
      drawn += workbook.cell(layout.fills(), "concentrate", i).getNumericCellValue();
      assertEquals(
          workbook.cell(layout.fills(), "total", i).getNumericCellValue(),
          workbook.cell(layout.fills(), "concentrate", i).getNumericCellValue()
              + workbook.cell(layout.fills(), "bypass", i).getNumericCellValue(),
          1e-9);
    }
    assertEquals(drawn, workbook.cell(layout.coffees(), "drawn", 0).getNumericCellValue(), 1e-9);
  }
}
