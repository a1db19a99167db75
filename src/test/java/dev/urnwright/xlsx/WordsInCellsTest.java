package dev.urnwright.xlsx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;

/** What the user wrote stays words, and the file says who made it. */
class WordsInCellsTest {
  private static final List<String> HOSTILE =
      List.of(
          "=1+1",
          "+1+1",
          "-1+1",
          "@SUM(A1)",
          "=HYPERLINK(\"x\")",
          "&Lhead & foot &14",
          "Łódź, Ελλάδα, Кофе, 咖啡 ☐",
          "a \"quote\" and 'apostrophe'",
          "[dose]*[coffee.ratio]",
          "x".repeat(300));

  private static Plan plan(String... names) {
    GuestGroup[] groups =
        Stream.of(names).map(name -> Events.group(name, 30, 200, 1.3)).toArray(GuestGroup[]::new);
    Event event = Events.simple(Events.ratio(13), groups);
    return new Planner().plan(event).value().orElseThrow();
  }

  @Test
  void namesAreNeverFormulas() {
    Plan plan = plan(HOSTILE.toArray(String[]::new));
    Recalculation workbook = Recalculation.of(plan);
    Grid groups = Layout.of(plan, Units.of(plan)).groups();
    for (int i = 0; i < HOSTILE.size(); i++) {
      Cell cell = workbook.cell(groups, "name", i);
      assertEquals(CellType.STRING, cell.getCellType(), HOSTILE.get(i));
      assertEquals(HOSTILE.get(i), cell.getStringCellValue());
      assertTrue(cell.getCellStyle().getQuotePrefixed(), HOSTILE.get(i));
    }
  }

  @Test
  void whatNoCellCanHoldIsTakenOut() {
    Plan plan = plan("bell\u0007 and\nline", "_x0041_ stays", "half \uD83D pair");
    Recalculation workbook = Recalculation.of(plan);
    Grid groups = Layout.of(plan, Units.of(plan)).groups();
    assertEquals("bell and line", workbook.cell(groups, "name", 0).getStringCellValue());
    assertEquals("_x0041_ stays", workbook.cell(groups, "name", 1).getStringCellValue());
    assertEquals("half \uFFFD pair", workbook.cell(groups, "name", 2).getStringCellValue());
  }

  @Test
  void samePlanGivesTheSameParts() throws Exception {
    Plan plan = plan("A", "B");
    assertEquals(parts(Recalculation.bytes(plan)), parts(Recalculation.bytes(plan)));
  }

  @Test
  void theFileNamesItsMaker() throws Exception {
    Map<String, String> parts = parts(Recalculation.bytes(plan("A")));
    assertTrue(parts.get("docProps/app.xml").contains("<Application>Urnwright</Application>"));
  }

  @Test
  void formulasAreOnesThatOldSpreadsheetsRead() {
    Plan plan = plan("A", "B");
    for (Sheet sheet : Recalculation.of(plan).workbook()) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA) {
            String formula = cell.getCellFormula();
            // The longest that Excel reads: 8192 characters (its published limits).
            assertTrue(formula.length() <= 8192, formula);
            assertFalse(formula.contains("_xlfn"), formula);
            assertFalse(formula.contains("["), formula);
          }
        }
      }
    }
  }

  @Test
  void onlyInputsCanBeWrittenTo() {
    Plan plan = plan("A");
    Recalculation workbook = Recalculation.of(plan);
    for (Sheet sheet : workbook.workbook()) {
      assertTrue(sheet.getProtect(), sheet.getSheetName());
    }
    Layout layout = Layout.of(plan, Units.of(plan));
    assertFalse(workbook.cell(layout.groups(), "headcount", 0).getCellStyle().getLocked());
    assertTrue(workbook.cell(layout.groups(), "cups", 0).getCellStyle().getLocked());
    assertFalse(workbook.cell(layout.coffees(), "reading", 0).getCellStyle().getLocked());
    assertTrue(workbook.cell(layout.coffees(), "dose", 0).getCellStyle().getLocked());
  }

  private static Map<String, String> parts(byte[] file) throws Exception {
    Map<String, String> parts = new TreeMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return parts;
  }
}
