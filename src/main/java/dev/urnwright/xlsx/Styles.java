package dev.urnwright.xlsx;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The looks of cells: few, and telling in greyscale. Each pair of look and format exists once. */
final class Styles {
  /** The face of all cells; spreadsheets without it have one of the same widths. */
  static final String FACE = "Arial";

  private static final XSSFColor INPUT_FILL = colour(0xFF, 0xF4, 0xCC);
  private static final XSSFColor HEADER_FILL = colour(0xE4, 0xE8, 0xEA);
  private static final XSSFColor LINE = colour(0xB8, 0xBE, 0xC2);
  private static final XSSFColor QUIET = colour(0x50, 0x58, 0x5C);

  /** The part that a cell plays. */
  enum Look {
    TITLE,
    EXPLANATION,
    HEADING,
    HEADER,
    LABEL,
    TEXT,
    FORMULA_TEXT,
    INPUT,
    RESULT,
    SPARE,
    TOTAL,
    CHECK,
    WARNING
  }

  private static final Set<Look> STARTS_A_LINE = Set.of(Look.TITLE, Look.EXPLANATION, Look.HEADING);

  private record Key(Look look, Format format) {}

  private final XSSFWorkbook workbook;
  private final Map<Key, XSSFCellStyle> made = new HashMap<>();

  Styles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    XSSFFont face = workbook.getFontAt(0);
    face.setFontName(FACE);
    face.setFontHeightInPoints((short) 10);
  }

  CellStyle of(Look look, Format format) {
    return made.computeIfAbsent(new Key(look, format), this::make);
  }

  CellStyle of(Look look) {
    return of(look, Format.TEXT);
  }

  private XSSFCellStyle make(Key key) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat(key.format().code()));
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    style.setLocked(key.look() != Look.INPUT);
    if (key.format().isText()) {
      style.setAlignment(HorizontalAlignment.LEFT);
      style.setIndention((short) (STARTS_A_LINE.contains(key.look()) ? 0 : 1));
    } else {
      style.setAlignment(HorizontalAlignment.RIGHT);
    }
    switch (key.look()) {
      case TITLE -> style.setFont(font(16, true));
      case EXPLANATION -> {
        XSSFFont font = font(10, false);
        font.setColor(QUIET);
        style.setFont(font);
        style.setWrapText(true);
        style.setVerticalAlignment(VerticalAlignment.TOP);
      }
      case HEADING -> style.setFont(font(12, true));
      case HEADER -> {
        style.setFont(font(10, true));
        fill(style, HEADER_FILL);
        style.setWrapText(true);
        style.setAlignment(HorizontalAlignment.CENTER);
        style.setIndention((short) 0);
        line(style);
      }
      case LABEL -> {
        style.setFont(font(10, false));
        style.setWrapText(true);
        line(style);
      }
      case TEXT -> {
        style.setQuotePrefixed(true);
        style.setWrapText(true);
        line(style);
      }
      case FORMULA_TEXT -> {
        style.setWrapText(true);
        line(style);
      }
      case INPUT -> {
        style.setQuotePrefixed(key.format().isText());
        fill(style, INPUT_FILL);
        line(style);
        box(style);
      }
      case WARNING -> {
        XSSFFont font = font(10, true);
        font.setColor(IndexedColors.RED.getIndex());
        style.setFont(font);
        style.setAlignment(HorizontalAlignment.RIGHT);
      }
      case RESULT -> line(style);
      case SPARE -> style.setWrapText(key.format().isText());
      case TOTAL -> {
        style.setFont(font(10, true));
        style.setBorderTop(BorderStyle.THIN);
      }
      case CHECK -> {
        style.setWrapText(true);
        line(style);
      }
    }
    return style;
  }

  private XSSFFont font(int points, boolean bold) {
    XSSFFont font = workbook.createFont();
    font.setFontName(FACE);
    font.setFontHeightInPoints((short) points);
    font.setBold(bold);
    return font;
  }

  private static void fill(XSSFCellStyle style, XSSFColor colour) {
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setFillForegroundColor(colour);
  }

  private static void line(XSSFCellStyle style) {
    style.setBorderBottom(BorderStyle.HAIR);
    style.setBottomBorderColor(LINE);
  }

  private static void box(XSSFCellStyle style) {
    style.setBorderLeft(BorderStyle.HAIR);
    style.setBorderRight(BorderStyle.HAIR);
    style.setBorderTop(BorderStyle.HAIR);
    style.setLeftBorderColor(LINE);
    style.setRightBorderColor(LINE);
    style.setTopBorderColor(LINE);
  }

  private static XSSFColor colour(int red, int green, int blue) {
    return new XSSFColor(new byte[] {(byte) red, (byte) green, (byte) blue});
  }
}
