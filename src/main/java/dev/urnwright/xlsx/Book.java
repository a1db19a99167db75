package dev.urnwright.xlsx;

import dev.urnwright.plan.Plan;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The workbook in the making.
 *
 * @param workbook where it is written
 * @param plan what is written
 * @param units in which units
 * @param styles the looks of its cells
 * @param layout where each grid stands
 * @param taken how much concentrate the fills take from each batch
 */
record Book(
    XSSFWorkbook workbook, Plan plan, Units units, Styles styles, Layout layout, Taken taken) {
  /** Whether the plan is on a clock. */
  boolean isTimed() {
    return plan.run().isPresent();
  }

  /** Gives a cell or range a name that formulas and people may use. */
  void name(String name, String address) {
    Name defined = workbook.createName();
    defined.setNameName(name);
    defined.setRefersToFormula(address);
  }
}
