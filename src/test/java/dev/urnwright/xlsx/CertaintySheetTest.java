package dev.urnwright.xlsx;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.brew.Estimate;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.plan.Source;
import dev.urnwright.plan.StrengthAccount;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;

class CertaintySheetTest {
  private static final Plan PLAN =
      new Planner()
          .plan(
              Events.simple(
                  Events.ratio(13),
                  Events.group("Everybody", 100, 200, 1.25),
                  Events.group("Strong", 20, 200, 1.42)))
          .value()
          .orElseThrow();

  @Test
  void showsWhatThePlannerSays() {
    Recalculation workbook = Recalculation.of(PLAN).recalculate();
    assertEquals(List.of(), workbook.errors());
    for (int i = 0; i < 2; i++) {
      Row row = group(workbook, i);
      Estimate cup = PLAN.certainty().of(PLAN.groups().get(i));
      assertEquals(cup.uncertainty(), row.getCell(4).getNumericCellValue(), 1e-9);
      assertEquals(
          // The sheet's interval is around what is wanted, the planner's around what is reached.
          PLAN.certainty().chanceInWindow(PLAN.groups().get(i)),
          row.getCell(7).getNumericCellValue(),
          0.005);
    }
  }

  @Test
  void aSurerInstrumentNarrowsTheIntervalsAsTheBudgetSays() {
    StrengthAccount account = PLAN.certainty().of(PLAN.coffees().get(0));
    for (StrengthAccount.Entry entry : account.entries()) {
      Recalculation workbook = Recalculation.of(PLAN);
      workbook
          .cell(CertaintySheet.sources(), "uncertainty", entry.source().ordinal())
          .setCellValue(0);
      workbook.recalculate();
      Row everybody = group(workbook, 0);
      assertEquals(entry.without().uncertainty(), everybody.getCell(4).getNumericCellValue(), 1e-9);
      assertEquals(
          0.0125 + 2 * entry.without().uncertainty(),
          everybody.getCell(6).getNumericCellValue(),
          1e-9);
    }
  }

  private static Row group(Recalculation workbook, int number) {
    Sheet sheet = workbook.workbook().getSheet(CertaintySheet.NAME);
    return sheet.getRow(Page.FIRST_ITEM + Source.values().length + 3 + number);
  }
}
