package dev.urnwright.xlsx;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * What an input accepts, and what it says otherwise.
 *
 * @param kind of number, or a list
 * @param least as it would be typed in a formula; for a list its named range
 * @param greatest as it would be typed in a formula
 * @param message what would be right
 */
record Validation(Kind kind, String least, String greatest, String message) {
  enum Kind {
    WHOLE,
    DECIMAL,
    LIST
  }

  static Validation whole(long least, long greatest, String what) {
    return new Validation(
        Kind.WHOLE,
        Long.toString(least),
        Long.toString(greatest),
        what + ": a whole number from " + least + " to " + greatest);
  }

  static Validation decimal(double least, double greatest, String message) {
    return new Validation(Kind.DECIMAL, Double.toString(least), Double.toString(greatest), message);
  }

  static Validation percent(double least, double greatest, String what) {
    return decimal(
        least / 100,
        greatest / 100,
        what + ": from " + trimmed(least) + " % to " + trimmed(greatest) + " %");
  }

  static Validation amount(double greatest, String what, String unit) {
    return decimal(0, greatest, what + ": from 0 to " + trimmed(greatest) + " " + unit);
  }

  static Validation listed(String namedRange, String message) {
    return new Validation(Kind.LIST, namedRange, "", message);
  }

  /** Puts it on a cell. */
  void on(XSSFSheet sheet, int row, int column) {
    on(sheet, row, row, column, column);
  }

  /** Puts it on the figures of several items. */
  void on(XSSFSheet sheet, Grid grid, String key, int firstItem, int items) {
    int last = firstItem + items - 1;
    on(
        sheet,
        grid.row(key, firstItem),
        grid.row(key, last),
        grid.columnNumber(key, firstItem),
        grid.columnNumber(key, last));
  }

  private void on(XSSFSheet sheet, int firstRow, int lastRow, int firstColumn, int lastColumn) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    DataValidationConstraint constraint =
        switch (kind) {
          case WHOLE -> helper.createIntegerConstraint(OperatorType.BETWEEN, least, greatest);
          case DECIMAL -> helper.createDecimalConstraint(OperatorType.BETWEEN, least, greatest);
          case LIST -> helper.createFormulaListConstraint(least);
        };
    DataValidation validation =
        helper.createValidation(
            constraint, new CellRangeAddressList(firstRow, lastRow, firstColumn, lastColumn));
    validation.createErrorBox("This can't be planned", message);
    validation.setShowErrorBox(true);
    validation.createPromptBox("", message);
    validation.setShowPromptBox(true);
    validation.setEmptyCellAllowed(true);
    if (kind == Kind.LIST) {
      validation.setSuppressDropDownArrow(true); // POI's sense: true shows the arrow
    }
    sheet.addValidationData(validation);
  }

  private static String trimmed(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
