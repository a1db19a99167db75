package dev.urnwright.xlsx;

import dev.urnwright.plan.Plan;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.poi.ss.formula.WorkbookEvaluator;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.EvaluationException;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.OperandResolver;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.functions.Function;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook read back, whose formulas POI's evaluator calculates anew. */
final class Recalculation {
  static {
    // What POI's evaluator lacks; commons-math is the reference.
    WorkbookEvaluator.registerFunction("CRITBINOM", (Function) Recalculation::critbinom);
  }

  private final XSSFWorkbook workbook;

  private Recalculation(XSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  static byte[] bytes(Plan plan) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      PlanWorkbook.write(plan, out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Recalculation of(Plan plan) {
    return of(bytes(plan));
  }

  static Recalculation of(byte[] file) {
    try {
      return new Recalculation(new XSSFWorkbook(new ByteArrayInputStream(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  XSSFWorkbook workbook() {
    return workbook;
  }

  /** One figure of one item. */
  Cell cell(Grid grid, String key, int item) {
    return workbook
        .getSheet(grid.sheet())
        .getRow(grid.row(key, item))
        .getCell(grid.columnNumber(key, item));
  }

  /** Writes the other workbook's inputs over this one's, except where a formula stands. */
  Recalculation withInputsOf(Recalculation other) {
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (!cell.getCellStyle().getLocked() && cell.getCellType() != CellType.FORMULA) {
            copy(
                other
                    .workbook
                    .getSheet(sheet.getSheetName())
                    .getRow(cell.getRowIndex())
                    .getCell(cell.getColumnIndex()),
                cell);
          }
        }
      }
    }
    return this;
  }

  private static void copy(Cell from, Cell to) {
    CellType type =
        from.getCellType() == CellType.FORMULA
            ? from.getCachedFormulaResultType()
            : from.getCellType();
    switch (type) {
      case NUMERIC -> to.setCellValue(from.getNumericCellValue());
      case STRING -> to.setCellValue(from.getStringCellValue());
      default -> to.setBlank();
    }
  }

  /** Every formula's fresh value beside its cached one, where they differ by more than allowed. */
  List<String> differences(double relative, double absolute) {
    FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
    List<String> differences = new ArrayList<>();
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA) {
            String cached = cached(cell);
            CellValue fresh = evaluator.evaluate(cell);
            if (!same(cell, fresh, relative, absolute)) {
              differences.add(
                  sheet.getSheetName()
                      + "!"
                      + cell.getAddress()
                      + ": cached "
                      + cached
                      + ", calculated "
                      + fresh.formatAsString()
                      + " by "
                      + cell.getCellFormula());
            }
          }
        }
      }
    }
    return differences;
  }

  /** Every formula's value here and in the other workbook, where they differ by more. */
  List<String> differencesFrom(Recalculation other, double relative, double absolute) {
    List<String> differences = new ArrayList<>();
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA) {
            Row otherRow = other.workbook.getSheet(sheet.getSheetName()).getRow(cell.getRowIndex());
            String here = cached(cell);
            String there = cached(otherRow.getCell(cell.getColumnIndex()));
            if (!alike(here, there, relative, absolute)) {
              differences.add(
                  sheet.getSheetName()
                      + "!"
                      + cell.getAddress()
                      + ": "
                      + here
                      + ", there "
                      + there);
            }
          }
        }
      }
    }
    return differences;
  }

  private static boolean alike(String here, String there, double relative, double absolute) {
    if (here.startsWith("\"") || there.startsWith("\"")) {
      return here.equals(there);
    }
    double wanted = Double.parseDouble(here);
    return Math.abs(Double.parseDouble(there) - wanted)
        <= Math.max(absolute, relative * Math.abs(wanted));
  }

  /** Calculates everything anew and keeps it. */
  Recalculation recalculate() {
    workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
    return this;
  }

  /** Cells that show an error. */
  List<String> errors() {
    List<String> errors = new ArrayList<>();
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA
              && cell.getCachedFormulaResultType() == CellType.ERROR) {
            errors.add(
                sheet.getSheetName() + "!" + cell.getAddress() + " " + cell.getCellFormula());
          }
        }
      }
    }
    return errors;
  }

  private static String cached(Cell cell) {
    return switch (cell.getCachedFormulaResultType()) {
      case NUMERIC -> Double.toString(cell.getNumericCellValue());
      case STRING -> '"' + cell.getStringCellValue() + '"';
      default -> cell.getCachedFormulaResultType().toString();
    };
  }

  private static boolean same(Cell cell, CellValue fresh, double relative, double absolute) {
    CellType kind = cell.getCachedFormulaResultType();
    if (kind != fresh.getCellType()) {
      return false;
    }
    if (kind == CellType.STRING) {
      return cell.getStringCellValue().equals(fresh.getStringValue());
    }
    double cached = cell.getNumericCellValue();
    return Math.abs(cached - fresh.getNumberValue())
        <= Math.max(absolute, relative * Math.abs(cached));
  }

  private static ValueEval critbinom(ValueEval[] args, int row, int column) {
    try {
      int trials = (int) number(args[0], row, column);
      double chance = number(args[1], row, column);
      double level = number(args[2], row, column);
      BinomialDistribution binomial = new BinomialDistribution(null, trials, chance);
      int k = binomial.inverseCumulativeProbability(level);
      while (k > 0 && binomial.cumulativeProbability(k - 1) >= level) {
        k--;
      }
      return new NumberEval(k);
    } catch (EvaluationException e) {
      return ErrorEval.VALUE_INVALID;
    }
  }

  private static double number(ValueEval value, int row, int column) throws EvaluationException {
    return OperandResolver.coerceValueToDouble(OperandResolver.getSingleValue(value, row, column));
  }
}
