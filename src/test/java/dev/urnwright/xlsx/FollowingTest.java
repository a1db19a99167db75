package dev.urnwright.xlsx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.plan.OnTheDay.Correction;
import dev.urnwright.plan.OnTheDay.Pour;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.junit.jupiter.api.Test;

/**
 * Workbooks whose inputs were changed, against the planner's own plan for those inputs.
 *
 * <p>Two events of the same shape differ in every number. The first one's workbook gets the
 * second's inputs; then its formulas must give what the planner gives for the second.
 */
class FollowingTest {
  /** Formulas and planner agree to this, the table of densities included. */
  private static final double AGREED = 1e-3;

  /** Another cost, the total, lines left out, cost per cup, margin, price, tax, tax, price. */
  private static final int COST_ROWS = 9;

  private static Optional<Plan> plan(long shape, long numbers) {
    return new Planner().plan(new RandomEvents(shape, numbers, false).next()).value();
  }

  @Test
  void everythingFollowsItsInputs() {
    int compared = 0;
    for (long shape = 1; shape <= 40 && compared < 7; shape++) {
      Optional<Plan> before = plan(shape, 1000 + shape);
      Optional<Plan> after = plan(shape, 2000 + shape);
      if (before.isEmpty() || after.isEmpty() || !alike(before.get(), after.get())) {
        continue;
      }
      compared++;
      Recalculation wanted = Recalculation.of(after.get());
      Recalculation changed = Recalculation.of(before.get()).withInputsOf(wanted).recalculate();
      assertEquals(List.of(), changed.errors(), "shape " + shape);
      assertEquals(
          List.of(),
          differences(changed, wanted, before.get(), after.get()).stream().limit(10).toList(),
          "shape " + shape);
    }
    assertTrue(compared >= 6, "only " + compared + " pairs of events could be compared");
  }

  /**
   * A group that gets no cup has no row; brewers of several kinds, and a clock, may share a dose
   * unequally.
   */
  private static boolean alike(Plan one, Plan other) {
    return one.groups().size() == other.groups().size()
        && one.coffees().size() == other.coffees().size()
        && one.event().equipment().brewers().size() < 2
        && one.run().isEmpty()
        && other.run().isEmpty();
  }

  /** At a measured point both pieces of the curve hold, so which one is taken may differ. */
  private static List<String> differences(
      Recalculation changed, Recalculation wanted, Plan a, Plan b) {
    List<String> differences = new ArrayList<>();
    Layout layout = Layout.of(b, Units.of(b));
    Compared compared = new Compared(changed, wanted, differences);
    compared.grid(
        layout.coffees(),
        b.coffees().size(),
        List.of(
            "name",
            "key",
            "method",
            "why",
            "firstKnot",
            "knots",
            "immersion",
            "asPlanned",
            "knot",
            "way"));
    compared.grid(layout.groups(), b.groups().size(), List.of());
    compared.grid(layout.dilution(), b.groups().size(), List.of());
    compared.grid(layout.service(), b.groups().size(), List.of());
    compared.grid(
        layout.batches(),
        Math.min(BatchesSheet.rows(a), BatchesSheet.rows(b)),
        List.of("unit", "planned", "gap", "knot", "way"));
    compared.grid(layout.fills(), Math.min(FillsSheet.rows(a), FillsSheet.rows(b)), List.of("gap"));
    compared.grid(
        layout.shopping(),
        b.coffees().size() + b.event().purchases().supplies().size() + COST_ROWS,
        List.of());
    return differences;
  }

  /** Compares the cells of both workbooks, grid by grid. */
  private record Compared(Recalculation changed, Recalculation wanted, List<String> differences) {
    void grid(Grid grid, int items, List<String> except) {
      for (Column column : grid.columns()) {
        if (column.isHeading() || except.contains(column.key())) {
          continue;
        }
        for (int item = 0; item < items; item++) {
          String got = shown(changed.cell(grid, column.key(), item));
          String want = shown(wanted.cell(grid, column.key(), item));
          if (!same(got, want)) {
            differences.add(
                grid.sheet() + " " + column.key() + " " + item + ": " + got + ", not " + want);
          }
        }
      }
    }

    private static boolean same(String got, String want) {
      try {
        double wanted = Double.parseDouble(want);
        return Math.abs(Double.parseDouble(got) - wanted)
            <= Math.max(1e-6, AGREED * Math.abs(wanted));
      } catch (NumberFormatException notNumbers) {
        return got.equals(want);
      }
    }

    private static String shown(Cell cell) {
      if (cell == null) {
        return "";
      }
      CellType type =
          cell.getCellType() == CellType.FORMULA
              ? cell.getCachedFormulaResultType()
              : cell.getCellType();
      return switch (type) {
        case NUMERIC -> Double.toString(cell.getNumericCellValue());
        case STRING -> cell.getStringCellValue();
        default -> "";
      };
    }
  }

  @Test
  void theReadingOfTheConcentrateChangesTheFillsAsTheCorrectionTableSays() {
    int compared = 0;
    for (long shape = 50; shape <= 80 && compared < 3; shape++) {
      Optional<Plan> planned = plan(shape, shape);
      if (planned.isEmpty()) {
        continue;
      }
      compared++;
      Plan plan = planned.get();
      Units units = Units.of(plan);
      Layout layout = Layout.of(plan, units);
      for (int i : new int[] {1, 12}) {
        Recalculation workbook = Recalculation.of(plan);
        for (int c = 0; c < plan.coffees().size(); c++) {
          workbook
              .cell(layout.coffees(), "reading", c)
              .setCellValue(
                  plan.coffees().get(c).onTheDay().corrections().get(i).reading().fraction());
        }
        workbook.recalculate();
        assertEquals(List.of(), workbook.errors());
        int fill = 0;
        for (FillOrder.Stretch stretch : FillOrder.of(plan)) {
          int groupRow = stretch.group();
          int c = FillOrder.coffee(plan, groupRow);
          Correction correction = plan.coffees().get(c).onTheDay().corrections().get(i);
          Pour pour =
              correction
                  .pours()
                  .get(plan.coffees().get(c).groups().indexOf(plan.groups().get(groupRow)));
          String where = "shape " + shape + ", reading " + correction.reading() + ", fill " + fill;
          assertEquals(
              units.of(pour.concentrate()),
              workbook.cell(layout.fills(), "concentrate", fill).getNumericCellValue(),
              1e-6,
              where);
          assertEquals(
              units.of(pour.bypass()),
              workbook.cell(layout.fills(), "bypass", fill).getNumericCellValue(),
              1e-6,
              where);
          assertEquals(
              pour.strength().fraction(),
              workbook.cell(layout.fills(), "strength", fill).getNumericCellValue(),
              1e-9,
              where);
          assertEquals(
              pour.cupsShort(),
              workbook.cell(layout.fills(), "short", fill).getNumericCellValue(),
              where);
          fill += stretch.fills();
        }
      }
    }
    assertEquals(3, compared);
  }
}
