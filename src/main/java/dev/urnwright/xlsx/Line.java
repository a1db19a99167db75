package dev.urnwright.xlsx;

import dev.urnwright.xlsx.Styles.Look;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Writes the cells of one item. Formulas are templates: {@code [dose]} is this item's dose, {@code
 * [coffee.dose]} that of the item linked as {@code coffee}. Every formula comes with the planner's
 * own figure, which the cell shows until it is calculated anew.
 */
final class Line {
  private static final Pattern PLACE = Pattern.compile("\\[(?:([A-Za-z]+)\\.)?([A-Za-z0-9]+)]");

  private final XSSFSheet sheet;
  private final Styles styles;
  private final Entry entry;
  private final Map<String, Entry> links = new HashMap<>();
  private boolean spare;

  Line(XSSFSheet sheet, Styles styles, Entry entry) {
    this.sheet = sheet;
    this.styles = styles;
    this.entry = entry;
  }

  /** Lets formulas call another item by a name. */
  Line with(String name, Entry other) {
    links.put(name, other);
    return this;
  }

  /** Draws no line under its cells, since they show nothing as planned. */
  Line spare() {
    spare = true;
    return this;
  }

  Entry entry() {
    return entry;
  }

  /** Words, never a formula. */
  Line text(String key, String text) {
    cell(key, Look.TEXT).setCellValue(Words.cell(text));
    return this;
  }

  /** Words of another look. */
  Line text(String key, String text, Look look) {
    cell(key, look).setCellValue(Words.cell(text));
    return this;
  }

  /** A number that doesn't change. */
  Line number(String key, double value) {
    cell(key, Look.RESULT).setCellValue(value);
    return this;
  }

  /** A number that the user may change. */
  Line input(String key, double value) {
    cell(key, Look.INPUT).setCellValue(value);
    return this;
  }

  /** Words that the user may choose from a list, never a formula. */
  Line inputText(String key, String text) {
    cell(key, Look.INPUT).setCellValue(Words.cell(text));
    return this;
  }

  /** A formula that the user may overwrite with a number. */
  Line inputFormula(String key, String template, double planned) {
    XSSFCell cell = cell(key, Look.INPUT);
    cell.setCellFormula(resolve(template));
    cell.setCellValue(planned);
    return this;
  }

  /** Nothing, where the user may write a number. */
  Line blankInput(String key) {
    cell(key, Look.INPUT).setBlank();
    return this;
  }

  /** Nothing. */
  Line blank(String key) {
    cell(key, Look.RESULT).setBlank();
    return this;
  }

  /** A formula that gives a number. */
  Line formula(String key, String template, double planned) {
    XSSFCell cell = cell(key, Look.RESULT);
    cell.setCellFormula(resolve(template));
    cell.setCellValue(planned);
    return this;
  }

  /** A formula that gives a number, shown otherwise than its column. */
  Line formula(String key, String template, double planned, Look look, Format format) {
    XSSFCell cell = cell(key, look);
    cell.setCellStyle(styles.of(look, format));
    cell.setCellFormula(resolve(template));
    cell.setCellValue(planned);
    return this;
  }

  /** A formula that gives nothing as planned, but may give a number. */
  Line emptyFormula(String key, String template) {
    XSSFCell cell = cell(key, Look.RESULT);
    cell.setCellFormula(resolve(template));
    cell.setCellValue("");
    return this;
  }

  /** A formula that gives words. */
  Line formulaText(String key, String template, String planned) {
    XSSFCell cell = cell(key, Look.FORMULA_TEXT);
    cell.setCellFormula(resolve(template));
    cell.setCellValue(Words.cell(planned));
    return this;
  }

  /** A formula that says {@code ok}, or in red what can't be done. */
  Line check(String key, String template) {
    XSSFCell cell = cell(key, Look.CHECK);
    cell.setCellFormula(resolve(template));
    cell.setCellValue(Page.OK);
    return this;
  }

  /** The template with addresses in place of names. */
  String resolve(String template) {
    Matcher matcher = PLACE.matcher(template);
    StringBuilder formula = new StringBuilder();
    while (matcher.find()) {
      matcher.appendReplacement(formula, Matcher.quoteReplacement(address(matcher)));
    }
    return matcher.appendTail(formula).toString();
  }

  private String address(Matcher place) {
    Entry called = place.group(1) == null ? entry : links.get(place.group(1));
    if (called == null) {
      throw new IllegalArgumentException("nothing is linked as " + place.group(1));
    }
    return called.address(place.group(2), entry.grid().sheet());
  }

  private XSSFCell cell(String key, Look look) {
    Grid grid = entry.grid();
    CellStyle style = styles.of(spare ? Look.SPARE : look, grid.column(key).format());
    int rowNumber = grid.row(key, entry.item());
    XSSFRow row =
        sheet.getRow(rowNumber) == null ? sheet.createRow(rowNumber) : sheet.getRow(rowNumber);
    XSSFCell cell = row.createCell(grid.columnNumber(key, entry.item()));
    cell.setCellStyle(style);
    return cell;
  }
}
