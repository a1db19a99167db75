package dev.urnwright.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What people do to a form, and what is said of it. */
class EventWorkbookTest {
  @TempDir private Path folder;

  @Test
  void namesSheetAndCellOfWhateverIsWrong() throws IOException {
    List<String> said =
        said(
            book -> {
              cell(book, "My groups", "E5").setCellValue("240 g");
              cell(book, "My groups", "G5").setCellValue("strong");
              cell(book, "My groups", "A6").setCellValue("Visitors");
              cell(book, "My event", "B10").setCellValue("imperial");
            });
    assertEquals(
        List.of(
            file() + "!My event!B10: 'imperial' is not known; expected metric or us",
            file() + "!My groups!E5: 240 g is a mass; expected a volume such as 240 ml",
            file()
                + "!My groups!G5: no strength is called 'strong'; list it under strengths, or"
                + " write a percentage such as 1.30 %",
            file()
                + "!My groups!A6: this group has no 'headcount'; expected a whole number such as 40",
            file() + "!My groups!A6: this group has no 'cup'; expected a volume such as 240 ml",
            file()
                + "!My groups!A6: this group has no 'strength'; expected a percentage such as"
                + " 1.30 %, or the name of a strength"),
        said);
  }

  @Test
  void cellsThatSpreadsheetsMakeOfWhatIsTypedAreUnderstood() throws IOException {
    Event event =
        event(
            book -> {
              styled(cell(book, "My groups", "C5"), "0%").setCellValue(0.85);
              styled(cell(book, "My groups", "G5"), "0.00%").setCellValue(0.0135);
              styled(cell(book, "My event", "B6"), "yyyy-mm-dd")
                  .setCellValue(LocalDate.of(2027, 4, 17));
              styled(cell(book, "My event", "B7"), "h:mm")
                  .setCellValue(DateUtil.convertTime("08:30"));
              cell(book, "My groups", "B5").setCellValue("41");
              cell(book, "My groups", "E5").setCellValue("\u00a0240\u00a0ml ");
              cell(book, "My coffees", "C5").setCellValue(true);
            });
    GuestGroup group = event.groups().get(0);
    assertEquals(85, group.guests().drinkers().percent(), 1e-12);
    assertEquals(1.35, group.strength().percent(), 1e-12);
    assertEquals(41, group.guests().headcount());
    assertEquals(240, group.cup().size().millilitres(), 1e-9);
    assertEquals(LocalDate.of(2027, 4, 17), event.date().orElseThrow());
    assertEquals(LocalTime.of(8, 30), event.time().orElseThrow());
    assertTrue(event.coffees().get(0).decaf());
  }

  /** 1462 days lie between the two beginnings: 1900-01-01 is day 1 of one, 1904-01-01 day 0. */
  @Test
  void daysMayBeCountedFrom1904() throws IOException {
    Event event =
        event(
            book -> {
              book.getCTWorkbook().addNewWorkbookPr().setDate1904(true);
              double day = DateUtil.getExcelDate(LocalDateTime.of(2027, 4, 17, 0, 0)) - 1462;
              styled(cell(book, "My event", "B6"), "d/m/yy").setCellValue(day);
            });
    assertEquals(LocalDate.of(2027, 4, 17), event.date().orElseThrow());
  }

  @Test
  void aBareNumberHasNoUnit() throws IOException {
    assertEquals(
        List.of(file() + "!My groups!E5: 240 has no unit; expected a volume such as 240 ml"),
        said(book -> cell(book, "My groups", "E5").setCellValue(240)));
  }

  @Test
  void formulasErrorsAndMergedCellsAreRefused() throws IOException {
    List<String> said =
        said(
            book -> {
              cell(book, "My groups", "B5").setCellFormula("20+20");
              cell(book, "My groups", "C5").setCellErrorValue((byte) 0x2A);
              book.getSheet("My groups").addMergedRegion(CellRangeAddress.valueOf("A7:A9"));
            });
    assertTrue(
        said.contains(
            file() + "!My groups!B5: here stands a formula; expected the value itself, typed"),
        said::toString);
    assertTrue(
        said.contains(file() + "!My groups!C5: here stands the error #N/A; expected a value"),
        said::toString);
    assertTrue(
        said.contains(
            file()
                + "!My groups!A7: these cells are merged; expected a cell for each value; unmerge"
                + " them"),
        said::toString);
  }

  @Test
  void unknownHeadingsItemsAndSheetsGetTheNearestKnownOne() throws IOException {
    List<String> said =
        said(
            book -> {
              cell(book, "My groups", "B4").setCellValue("headcont *");
              cell(book, "My event", "A6").setCellValue("dte");
              cell(book, "My event", "B6").setCellValue("2027-04-17");
              Sheet sheet = book.createSheet("My bewers");
              sheet.createRow(0).createCell(0).setCellValue("name");
            });
    assertEquals(3, said.size(), said::toString);
    assertTrue(
        said.get(0)
            .startsWith(
                file() + "!My event!A6: unknown item 'dte'; did you mean 'date'? known: event"),
        said.get(0));
    assertTrue(
        said.get(1)
            .startsWith(
                file()
                    + "!My groups!B4: unknown heading 'headcont *'; did you mean 'headcount'?"
                    + " known: name"),
        said.get(1));
    assertTrue(
        said.get(2)
            .startsWith(
                file() + "!My bewers: unknown sheet 'My bewers'; did you mean 'My brewers'?"),
        said.get(2));
  }

  @Test
  void sheetsColumnsRowsAndNotesMayStandAnywhere() throws IOException {
    Event plain = event(book -> {});
    Event event =
        event(
            book -> {
              book.setSheetOrder("My groups", 0);
              Sheet groups = book.getSheet("My groups");
              for (String[] swap : new String[][] {{"A", "G"}, {"B", "E"}}) {
                for (int row : new int[] {4, 5}) {
                  swap(book, groups, swap[0] + row, swap[1] + row);
                }
              }
              groups.shiftRows(4, 4, 3);
              cell(book, "My groups", "Q4").setCellValue("# mine");
              cell(book, "My groups", "Q8").setCellFormula("1+1");
              cell(book, "My groups", "A1").setCellValue("Anything");
              book.createSheet("Notes").createRow(0).createCell(0).setCellValue("call Ann");
              book.createSheet("# more").createRow(0).createCell(0).setCellValue("and Bob");
              book.createSheet("Sheet1");
            });
    assertEquals(plain.groups().get(0).guests(), event.groups().get(0).guests());
    assertEquals(plain.groups().get(0).cup(), event.groups().get(0).cup());
  }

  @Test
  void aColumnWithoutAHeadingIsNotLost() throws IOException {
    assertEquals(
        List.of(
            file()
                + "!My groups!Q5: this column has no heading; expected one in row 4, or # if it is"
                + " for notes of your own"),
        said(book -> cell(book, "My groups", "Q5").setCellValue("by the door")));
  }

  @Test
  void anEmptyFormSaysWhatIsMissing() throws IOException {
    List<String> said =
        said(
            book -> {
              clear(book, "My event", 4);
              clear(book, "My groups", 4);
              clear(book, "My coffees", 4);
            });
    assertEquals(3, said.size(), said::toString);
    assertTrue(
        said.get(1)
            .endsWith(
                "this event has no 'groups'; expected a row at least on the sheet 'My groups'"),
        said.get(1));
  }

  /** The form offers every word of every choice, and has a place for every key. */
  @Test
  void hasDropDownsAndPromptsForEveryColumn() throws IOException {
    Set<String> lists = new HashSet<>();
    Forms.opened(
        folder,
        book -> {
          for (FormSheet sheet : FormSheet.all()) {
            List<XSSFDataValidation> given = book.getSheet(sheet.name()).getDataValidations();
            assertEquals(sheet.slots().size(), given.size(), sheet.name());
            for (XSSFDataValidation validation : given) {
              assertTrue(validation.getShowPromptBox());
              String[] words = validation.getValidationConstraint().getExplicitListValues();
              lists.add(
                  words != null
                      ? String.join(",", words)
                      : String.valueOf(validation.getValidationConstraint().getFormula1()));
            }
          }
        });
    assertTrue(
        lists.containsAll(
            List.of(
                "metric,us",
                "A4,Letter",
                "percolation,immersion",
                "even,early,late",
                "yes,no",
                "'My stations'!$A$5:$A$1004",
                "'My coffees'!$A$5:$A$1004",
                "'My strengths'!$A$5:$A$1004",
                "'My dispensers'!$A$5:$A$1004",
                "'My circuits'!$A$5:$A$1004")),
        lists::toString);
  }

  private String file() {
    return folder.resolve("event.xlsx").toString();
  }

  private List<String> said(Consumer<XSSFWorkbook> change) throws IOException {
    return Forms.said(folder, change);
  }

  private Event event(Consumer<XSSFWorkbook> change) throws IOException {
    var checked = Forms.opened(folder, change);
    assertEquals(List.of(), checked.problems());
    return checked.value().orElseThrow().event();
  }

  private static Cell cell(XSSFWorkbook book, String sheet, String address) {
    CellReference place = new CellReference(address);
    Sheet page = book.getSheet(sheet);
    Row row = page.getRow(place.getRow());
    row = row == null ? page.createRow(place.getRow()) : row;
    Cell cell = row.getCell(place.getCol());
    return cell == null ? row.createCell(place.getCol()) : cell;
  }

  private static Cell styled(Cell cell, String format) {
    CellStyle style = cell.getSheet().getWorkbook().createCellStyle();
    style.setDataFormat(cell.getSheet().getWorkbook().createDataFormat().getFormat(format));
    cell.setCellStyle(style);
    return cell;
  }

  private static void swap(XSSFWorkbook book, Sheet sheet, String one, String other) {
    Cell a = cell(book, sheet.getSheetName(), one);
    Cell b = cell(book, sheet.getSheetName(), other);
    String was = a.toString().replace(".0", "");
    a.setCellValue(b.toString().replace(".0", ""));
    b.setCellValue(was);
  }

  private static void clear(XSSFWorkbook book, String sheet, int from) {
    Sheet page = book.getSheet(sheet);
    boolean lines = sheet.equals("My event");
    for (int row = from; row <= page.getLastRowNum(); row++) {
      for (Cell cell : page.getRow(row)) {
        if (!lines || cell.getColumnIndex() == 1) {
          cell.setBlank();
        }
      }
    }
  }
}
