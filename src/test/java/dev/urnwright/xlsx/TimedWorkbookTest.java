package dev.urnwright.xlsx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.GuestGroup;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.plan.Run;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbooks of plans on a clock: what follows does so rightly, and what doesn't is said. */
class TimedWorkbookTest {
  private static final String CONFERENCE = "samples/autumn-conference.yaml";
  private static final String SUPPER = "samples/harvest-supper.yaml";

  /** Formulas and planner agree to this, the table of densities included. */
  private static final double AGREED = 1e-5;

  @TempDir Path folder;

  private static double number(Recalculation workbook, Grid grid, String key, int item) {
    Cell cell = workbook.cell(grid, key, item);
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return type == CellType.NUMERIC ? cell.getNumericCellValue() : 0;
  }

  private static double sum(Recalculation workbook, Grid grid, String key, int items) {
    return IntStream.range(0, items).mapToDouble(i -> number(workbook, grid, key, i)).sum();
  }

  private static Layout layout(Plan plan) {
    return Layout.of(plan, Units.of(plan));
  }

  @SuppressWarnings("unused") // a source of parameters
  private static final List<String> FILES = Samples.FILES;

  @ParameterizedTest
  @FieldSource("FILES")
  void everyCellShowsWhatItsFormulaGives(String file) {
    Plan plan = Samples.plan(file, 1, folder);
    List<String> differences = Recalculation.of(plan).differences(AGREED, 1e-7);
    assertEquals(List.of(), differences.stream().limit(8).toList());
  }

  /** The workbook of one plan with the headcounts of another against the other plan itself. */
  @ParameterizedTest
  @ValueSource(strings = {CONFERENCE, SUPPER})
  void needsFollowTheHeadcountsAsThePlannerHasThem(String file) {
    Plan planned = Samples.plan(file, 1, folder);
    Plan wanted = Samples.plan(file, 1.03, folder);
    assertTrue(planned.run().isPresent() && wanted.run().isPresent());
    Recalculation workbook = Recalculation.of(planned);
    Layout layout = layout(planned);
    Units units = Units.of(planned);
    for (int g = 0; g < planned.groups().size(); g++) {
      Cell headcount = workbook.cell(layout.groups(), "headcount", g);
      if (headcount.getCellType() == CellType.NUMERIC) {
        headcount.setCellValue(wanted.groups().get(g).group().guests().headcount());
      }
    }
    for (int c = 0; c < wanted.coffees().size(); c++) {
      // The ratio is an input; which one asks for the fewest batches is for the planner to say.
      workbook
          .cell(layout.coffees(), "ratio", c)
          .setCellValue(CoffeesSheet.ratio(wanted.coffees().get(c)));
    }
    workbook.recalculate();
    assertEquals(List.of(), workbook.errors());
    for (int g = 0; g < wanted.groups().size(); g++) {
      assertEquals(
          wanted.groups().get(g).fills().size(), number(workbook, layout.service(), "fills", g));
    }
    for (int c = 0; c < wanted.coffees().size(); c++) {
      var needed = wanted.coffees().get(c).needed();
      same(units.of(needed.brew().dose()), workbook, layout, "dose", c);
      same(units.of(needed.brew().water()), workbook, layout, "water", c);
      same(units.of(needed.brew().absorbed()), workbook, layout, "absorbed", c);
      same(units.of(needed.blend().concentrate()), workbook, layout, "concentrate", c);
      same(units.of(needed.blend().bypass()), workbook, layout, "bypass", c);
      same(units.of(needed.blend().finished()), workbook, layout, "finished", c);
      same(units.of(wanted.coffees().get(c).brewed().drawn()), workbook, layout, "drawn", c);
    }
    conserves(planned, workbook);
  }

  private static void same(
      double wanted, Recalculation workbook, Layout layout, String key, int coffee) {
    assertEquals(wanted, number(workbook, layout.coffees(), key, coffee), AGREED * wanted, key);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.97, 1.04, 1.6})
  void massesAreConservedWhateverTheHeadcount(double times) {
    Plan plan = Samples.plan(CONFERENCE, 1, folder);
    Recalculation workbook = times(Recalculation.of(plan), plan, times);
    assertEquals(List.of(), workbook.errors());
    conserves(plan, workbook);
  }

  private static Recalculation times(Recalculation workbook, Plan plan, double times) {
    Grid groups = layout(plan).groups();
    for (int g = 0; g < plan.groups().size(); g++) {
      Cell headcount = workbook.cell(groups, "headcount", g);
      if (headcount.getCellType() == CellType.NUMERIC) {
        headcount.setCellValue(Math.round(headcount.getNumericCellValue() * times));
      }
    }
    return workbook.recalculate();
  }

  /** Nothing that is taken, poured or bought comes from nowhere, nor do the solids in it. */
  private static void conserves(Plan plan, Recalculation workbook) {
    Layout layout = layout(plan);
    int batches = BatchesSheet.rows(plan);
    int fills = FillsSheet.rows(plan);
    int coffees = plan.coffees().size();
    double dose = sum(workbook, layout.batches(), "dose", batches);
    double drawn = sum(workbook, layout.coffees(), "drawn", coffees);
    assertTrue(dose > 0 && drawn > 0);
    assertEquals(dose, sum(workbook, layout.coffees(), "brewedDose", coffees), 1e-6);
    assertEquals(dose, sum(workbook, layout.shopping(), "amount", coffees), 1e-6);
    assertEquals(drawn, sum(workbook, layout.batches(), "taken", batches), 1e-6);
    assertEquals(drawn, sum(workbook, layout.fills(), "concentrate", fills), 1e-6);
    double taken = 0;
    for (int b = 0; b < batches; b++) {
      double of = number(workbook, layout.batches(), "taken", b);
      assertTrue(
          number(workbook, layout.batches(), "beverage", b) >= of - 1e-3,
          "batch " + b + " gives less than is taken from it");
      taken += of * number(workbook, layout.batches(), "strength", b);
    }
    double poured = 0;
    for (int f = 0; f < fills; f++) {
      poured +=
          number(workbook, layout.fills(), "concentrate", f)
              * number(workbook, layout.fills(), "drawnStrength", f);
    }
    assertEquals(taken, poured, 1e-6 * taken);
  }

  @Test
  void fillsNeverFallBelowWhatTheHoldAsksFor() {
    Plan plan = Samples.plan(CONFERENCE, 1, folder);
    Layout layout = layout(plan);
    Recalculation workbook = times(Recalculation.of(plan), plan, 0.05);
    int asked = 0;
    for (int g = 0; g < plan.groups().size(); g++) {
      double least = number(workbook, layout.service(), "least", g);
      assertEquals(plan.leastFills().get(g).intValue(), least);
      double fills = number(workbook, layout.service(), "fills", g);
      assertTrue(fills >= least || fills == 0, "group " + g);
      asked += least > 1 ? 1 : 0;
    }
    assertTrue(asked > 0, "the hold asks no group for a second fill");
  }

  @Test
  void aDoseBeyondItsBrewerIsRed() {
    Plan plan = Samples.plan(SUPPER, 1, folder);
    Recalculation workbook = times(Recalculation.of(plan), plan, 4);
    assertEquals(List.of(), workbook.errors());
    assertTrue(
        IntStream.range(0, plan.batches().size())
            .mapToObj(b -> workbook.cell(layout(plan).batches(), "check", b).getStringCellValue())
            .anyMatch(
                check -> check.equals("Not on that brewer") || check.startsWith("No brewer")));
  }

  @Test
  void nobodyNeedsNoBatch() {
    Plan plan = Samples.plan(SUPPER, 1, folder);
    Recalculation workbook = times(Recalculation.of(plan), plan, 0);
    assertEquals(List.of(), workbook.errors());
    assertEquals(0, sum(workbook, layout(plan).coffees(), "batches", plan.coffees().size()));
  }

  @Test
  void anotherDispenserIsForThePlanner() {
    Plan plan = Samples.plan(SUPPER, 1, folder);
    Layout layout = layout(plan);
    Recalculation workbook = Recalculation.of(plan);
    Cell chosen = workbook.cell(layout.service(), "dispenser", 0);
    chosen.setCellValue(chosen.getStringCellValue().equals("Airpot") ? "Supper urn" : "Airpot");
    workbook.recalculate();
    assertEquals(
        "Not the planned kind: plan again",
        workbook.cell(layout.service(), "check", 0).getStringCellValue());
  }

  @Test
  void theRunIsListedInOrderOfTimeAndSaysWhenItNoLongerHolds() {
    Plan plan = Samples.plan(CONFERENCE, 1, folder);
    Run run = plan.run().orElseThrow();
    Layout layout = layout(plan);
    Recalculation workbook = Recalculation.of(plan);
    for (int i = 0; i < run.actions().size(); i++) {
      assertEquals(
          run.actions().get(i).at(),
          DateUtil.getLocalDateTime(number(workbook, layout.actions(), "time", i), false, true));
      assertEquals(
          run.actions().get(i).detail(),
          workbook.cell(layout.actions(), "detail", i).getStringCellValue());
      assertFalse(workbook.cell(layout.actions(), "done", i).getCellStyle().getLocked());
    }
    for (int i = 0; i < run.fills().size(); i++) {
      assertEquals(
          run.fills().get(i).useBy(),
          DateUtil.getLocalDateTime(number(workbook, layout.fillTimes(), "useBy", i), false, true));
    }
    for (int i = 0; i < run.batches().size(); i++) {
      assertEquals(
          run.batches().get(i).ready(),
          DateUtil.getLocalDateTime(
              number(workbook, layout.batchTimes(), "ready", i), false, true));
    }
    for (String name : List.of(Layout.RUN, Layout.RUN_TIMES)) {
      Sheet sheet = workbook.workbook().getSheet(name);
      assertEquals(Page.FIRST_ITEM, sheet.getPaneInformation().getHorizontalSplitPosition());
      int last = sheet.getRow(0).getLastCellNum() - 1;
      assertEquals("", sheet.getRow(0).getCell(last).getStringCellValue());
    }
    times(workbook, plan, 1.1);
    for (String name : List.of(Layout.RUN, Layout.RUN_TIMES)) {
      Row title = workbook.workbook().getSheet(name).getRow(0);
      assertEquals(
          RunSheet.CHANGED, title.getCell(title.getLastCellNum() - 1).getStringCellValue());
    }
  }

  @Test
  void wordsInTheRunAreNeverFormulas() {
    Plan plan = Samples.planText(Samples.text(SUPPER).replace("Hearth", "\"=1+1\""), folder);
    Grid actions = layout(plan).actions();
    Recalculation workbook = Recalculation.of(plan);
    List<Cell> hostile =
        IntStream.range(0, plan.run().orElseThrow().actions().size())
            .mapToObj(i -> workbook.cell(actions, "where", i))
            .filter(cell -> cell.getCellType() == CellType.STRING)
            .filter(cell -> cell.getStringCellValue().equals("=1+1"))
            .toList();
    assertFalse(hostile.isEmpty());
    assertTrue(hostile.stream().allMatch(cell -> cell.getCellStyle().getQuotePrefixed()));
  }

  @Test
  void withoutAClockThereIsNoRun() {
    GuestGroup group = Events.group("Guests", 30, 200, 1.3);
    Plan plan = new Planner().plan(Events.simple(Events.ratio(13), group)).value().orElseThrow();
    assertTrue(plan.run().isEmpty());
    assertNull(Recalculation.of(plan).workbook().getSheet(Layout.RUN));
  }
}
