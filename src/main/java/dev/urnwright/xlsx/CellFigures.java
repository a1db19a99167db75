package dev.urnwright.xlsx;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * A chart's figures out of cells, with the values that the cells show. POI's own source would
 * calculate every formula anew, which it can't do for all of them.
 */
final class CellFigures implements XDDFNumericalDataSource<Double> {
  private final String formula;
  private final List<Double> values = new ArrayList<>();
  private String format = "General";

  CellFigures(XSSFSheet sheet, CellRangeAddress cells) {
    this.formula = cells.formatAsString(sheet.getSheetName(), true);
    for (CellAddress cell : cells) {
      values.add(sheet.getRow(cell.getRow()).getCell(cell.getColumn()).getNumericCellValue());
    }
  }

  @Override
  public int getPointCount() {
    return values.size();
  }

  @Override
  public Double getPointAt(int index) {
    return values.get(index);
  }

  @Override
  public boolean isCellRange() {
    return true;
  }

  @Override
  public boolean isReference() {
    return true;
  }

  @Override
  public boolean isNumeric() {
    return true;
  }

  @Override
  public int getColIndex() {
    return 0;
  }

  @Override
  public String getDataRangeReference() {
    return formula;
  }

  @Override
  public String getFormula() {
    return formula;
  }

  @Override
  public void setFormatCode(String code) {
    format = code;
  }

  @Override
  public String getFormatCode() {
    return format;
  }
}
