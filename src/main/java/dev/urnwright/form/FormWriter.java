package dev.urnwright.form;

import dev.urnwright.form.FormStyles.Look;
import dev.urnwright.input.Typed;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes the sheets of a form, empty or filled in. */
final class FormWriter {
  private static final int TITLE_ROW = 0;
  private static final int HELP_ROW = 1;
  private static final int EXAMPLE_ROW = 2;
  private static final int HEADING_ROW = 3;
  private static final int SPARE_ROWS = 20;
  private static final int CHARACTER = 256;
  private static final int NARROWEST = 13;
  private static final int WIDEST = 34;
  private static final int ITEM_WIDTH = 24;
  private static final int HELP_WIDTH = 56;
  private static final float LINE_POINTS = 13.5f;

  private static final String HOW =
      "Fill in the shaded cells, on each sheet whose name begins with My; * must be filled in, all"
          + " else may stay empty. Quantities carry their unit: 240 ml, 8 fl oz, 18 g, 1/2 lb,"
          + " 92 °C, 11 min, 85 %. Then run: urnwright plan THIS-FILE";

  private final XSSFWorkbook workbook;
  private final FormStyles styles;
  private final List<FormSheet> sheets = FormSheet.all();
  private final Typed.Mapping event;

  FormWriter(XSSFWorkbook workbook, Typed.Mapping event) {
    this.workbook = workbook;
    this.styles = new FormStyles(workbook);
    this.event = event;
  }

  void write() {
    // All exist before the first drop-down calls another.
    sheets.forEach(sheet -> workbook.createSheet(sheet.name()));
    for (FormSheet sheet : sheets) {
      XSSFSheet page = workbook.getSheet(sheet.name());
      page.getPrintSetup().setLandscape(true);
      page.setFitToPage(true);
      page.getPrintSetup().setFitHeight((short) 0);
      if (sheet.hasRows()) {
        rows(page, sheet);
      } else {
        lines(page, sheet);
      }
    }
  }

  private void lines(XSSFSheet page, FormSheet sheet) {
    page.setColumnWidth(0, ITEM_WIDTH * CHARACTER);
    page.setColumnWidth(1, WIDEST * CHARACTER);
    page.setColumnWidth(2, HELP_WIDTH * CHARACTER);
    page.setColumnWidth(3, WIDEST * CHARACTER);
    title(page, sheet);
    if (sheet.path().isEmpty()) {
      Row how = page.createRow(HELP_ROW);
      put(how, 0, HOW, Look.HELP);
      page.addMergedRegion(new CellRangeAddress(HELP_ROW, HELP_ROW, 0, 3));
      how.setHeightInPoints(3 * LINE_POINTS);
    }
    Row headings = page.createRow(HEADING_ROW);
    put(headings, 0, Headings.ITEM, Look.HEADING);
    put(headings, 1, Headings.VALUE, Look.HEADING);
    put(headings, 2, "what it is", Look.HEADING);
    put(headings, 3, "for example", Look.HEADING);
    int at = HEADING_ROW + 1;
    for (Slot slot : sheet.slots()) {
      Row row = page.createRow(at);
      put(row, 0, starred(slot), Look.ITEM);
      List<String> path = new ArrayList<>(sheet.path());
      path.addAll(slot.path());
      value(row.createCell(1), slot, found(event, path));
      put(row, 2, slot.help(), Look.HELP);
      put(row, 3, slot.example(), Look.EXAMPLE);
      DropDowns.on(page, slot, sheets, at, at, 1);
      at++;
    }
    page.createFreezePane(0, HEADING_ROW + 1);
  }

  private void rows(XSSFSheet page, FormSheet sheet) {
    title(page, sheet);
    List<List<Optional<Typed>>> table = table(sheet);
    Row helps = page.createRow(HELP_ROW);
    Row examples = page.createRow(EXAMPLE_ROW);
    Row headings = page.createRow(HEADING_ROW);
    int last = HEADING_ROW + table.size() + SPARE_ROWS;
    for (int row = HEADING_ROW + 1; row <= last; row++) {
      page.createRow(row);
    }
    int lines = 1;
    for (int column = 0; column < sheet.slots().size(); column++) {
      Slot slot = sheet.slots().get(column);
      put(helps, column, slot.help(), Look.HELP);
      put(examples, column, "e.g. " + slot.example(), Look.EXAMPLE);
      put(headings, column, starred(slot), Look.HEADING);
      int widest = Math.max(starred(slot).length(), 5 + slot.example().length());
      for (int i = 0; i < last - HEADING_ROW; i++) {
        Optional<Typed> typed = i < table.size() ? table.get(i).get(column) : Optional.empty();
        org.apache.poi.ss.usermodel.Cell cell = page.getRow(HEADING_ROW + 1 + i).createCell(column);
        value(cell, slot, typed);
        widest = Math.max(widest, typed.isPresent() ? cell.toString().length() : 0);
      }
      int width = Math.max(NARROWEST, Math.min(WIDEST, widest + 2));
      page.setColumnWidth(column, width * CHARACTER);
      lines = Math.max(lines, (int) Math.ceil(1.25 * slot.help().length() / width));
      DropDowns.on(page, slot, sheets, HEADING_ROW + 1, DropDowns.LAST_ROW, column);
    }
    helps.setHeightInPoints(lines * LINE_POINTS);
    page.createFreezePane(1, HEADING_ROW + 1);
  }

  /** What stands in the rows, column by column. */
  private List<List<Optional<Typed>>> table(FormSheet sheet) {
    List<List<Optional<Typed>>> table = new ArrayList<>();
    Optional<Typed> part = found(event, sheet.path());
    if (part.isPresent() && part.get() instanceof Typed.Listing listing) {
      listing.parts().forEach(row -> table.add(row(sheet, Optional.empty(), row)));
    } else if (part.isPresent() && part.get() instanceof Typed.Mapping named) {
      named
          .entries()
          .forEach(
              entry ->
                  table.add(
                      row(
                          sheet,
                          Optional.of(new Typed.Text(entry.key(), entry.place())),
                          entry.value())));
    }
    sheet
        .alone()
        .flatMap(event::at)
        .ifPresent(
            alone -> {
              // A row without any value would not be one.
              boolean blank = alone instanceof Typed.Mapping map && map.entries().isEmpty();
              Optional<Typed> name =
                  blank
                      ? sheet.alone().map(key -> new Typed.Text(key, alone.location()))
                      : Optional.empty();
              table.add(row(sheet, name, alone));
            });
    return table;
  }

  private static List<Optional<Typed>> row(FormSheet sheet, Optional<Typed> name, Typed typed) {
    List<Optional<Typed>> row = new ArrayList<>();
    for (Slot slot : sheet.slots()) {
      if (slot.isName()) {
        row.add(name);
      } else if (sheet.kind() == FormSheet.Kind.NAMED_VALUES) {
        row.add(Optional.of(typed));
      } else {
        row.add(found(typed, slot.path()));
      }
    }
    return row;
  }

  private static Optional<Typed> found(Typed typed, List<String> path) {
    Optional<Typed> found = Optional.of(typed);
    for (String key : path) {
      found =
          found.flatMap(
              inner -> inner instanceof Typed.Mapping map ? map.at(key) : Optional.empty());
    }
    return found;
  }

  private void value(org.apache.poi.ss.usermodel.Cell cell, Slot slot, Optional<Typed> typed) {
    boolean number = slot.value().number() && slot.value().pattern().isPresent();
    cell.setCellStyle(styles.of(number ? Look.NUMBER : Look.TEXT));
    if (typed.isEmpty()) {
      return;
    }
    String text = Inline.write(slot.shape(), typed.get());
    if (number && text.matches("(0|[1-9]\\d{0,8})(\\.\\d{0,5}[1-9])?")) {
      cell.setCellValue(new BigDecimal(text).doubleValue());
    } else {
      cell.setCellValue(Shown.escaped(text));
    }
  }

  private void title(XSSFSheet page, FormSheet sheet) {
    Row row = page.createRow(TITLE_ROW);
    String title = sheet.name() + ": " + sheet.help();
    put(row, 0, sheet.hasRows() ? title + "; a row for each" : title, Look.TITLE);
    row.setHeightInPoints(2 * LINE_POINTS);
  }

  private static String starred(Slot slot) {
    return slot.required() ? slot.heading() + " *" : slot.heading();
  }

  private void put(Row row, int column, String text, Look look) {
    org.apache.poi.ss.usermodel.Cell cell = row.createCell(column);
    cell.setCellValue(text);
    cell.setCellStyle(styles.of(look));
  }
}
