package dev.urnwright.form;

import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** How the cells of a form look. */
final class FormStyles {
  private static final String FACE = "Arial";
  private static final String AS_TYPED = "@";

  private static final XSSFColor INPUT = colour(0xFF, 0xF4, 0xCC);
  private static final XSSFColor HEADING = colour(0xE4, 0xE8, 0xEA);
  private static final XSSFColor LINE = colour(0xB8, 0xBE, 0xC2);
  private static final XSSFColor GREY = colour(0x70, 0x78, 0x7C);

  /** The part that a cell plays. */
  enum Look {
    TITLE,
    HELP,
    EXAMPLE,
    HEADING,
    ITEM,
    TEXT,
    NUMBER
  }

  private final XSSFWorkbook workbook;
  private final Map<Look, CellStyle> made = new EnumMap<>(Look.class);

  FormStyles(XSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  CellStyle of(Look look) {
    return made.computeIfAbsent(look, this::make);
  }

  private CellStyle make(Look look) {
    XSSFCellStyle style = workbook.createCellStyle();
    XSSFFont font = workbook.createFont();
    font.setFontName(FACE);
    font.setFontHeightInPoints((short) (look == Look.TITLE ? 14 : 10));
    font.setBold(look == Look.TITLE || look == Look.HEADING || look == Look.ITEM);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    switch (look) {
      case HELP -> {
        font.setColor(GREY);
        style.setWrapText(true);
        side(style);
      }
      case EXAMPLE -> {
        font.setColor(GREY);
        font.setItalic(true);
        side(style);
      }
      case HEADING -> {
        fill(style, HEADING);
        box(style);
        style.setWrapText(true);
      }
      case ITEM -> box(style);
      case TEXT -> {
        input(style);
        style.setDataFormat(workbook.createDataFormat().getFormat(AS_TYPED));
      }
      case NUMBER -> {
        input(style);
        style.setAlignment(HorizontalAlignment.LEFT);
      }
      default -> {}
    }
    style.setFont(font);
    return style;
  }

  private static void input(XSSFCellStyle style) {
    fill(style, INPUT);
    box(style);
    style.setLocked(false);
  }

  /** Sets a text apart from its neighbours. */
  private static void side(XSSFCellStyle style) {
    style.setBorderLeft(BorderStyle.THIN);
    style.setLeftBorderColor(LINE);
  }

  private static void fill(XSSFCellStyle style, XSSFColor colour) {
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setFillForegroundColor(colour);
  }

  private static void box(XSSFCellStyle style) {
    style.setBorderLeft(BorderStyle.THIN);
    style.setBorderRight(BorderStyle.THIN);
    style.setBorderTop(BorderStyle.THIN);
    style.setBorderBottom(BorderStyle.THIN);
    style.setLeftBorderColor(LINE);
    style.setRightBorderColor(LINE);
    style.setTopBorderColor(LINE);
    style.setBottomBorderColor(LINE);
  }

  private static XSSFColor colour(int red, int green, int blue) {
    return new XSSFColor(new byte[] {(byte) red, (byte) green, (byte) blue});
  }
}
