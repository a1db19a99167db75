package dev.urnwright.form;

import dev.urnwright.problem.Location;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.model.SharedStrings;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Takes the cells that aren't blank out of a sheet's XML as it streams by. */
final class SheetXml extends DefaultHandler {
  /** Far more than any event has groups. */
  static final int MOST_ROWS = 20_000;

  private static final int MOST_COLUMNS = 500;
  private static final int MOST_MERGED = 10_000;

  private final Parts parts;
  private final NavigableMap<Integer, NavigableMap<Integer, Cell>> rows = new TreeMap<>();
  private final List<CellRangeAddress> merged = new ArrayList<>();
  private final StringBuilder value = new StringBuilder();
  private int row;
  private int column;
  private String type = "";
  private int style;
  private boolean formula;
  private boolean reading;
  private boolean phonetic;
  private boolean tooLong;

  SheetXml(Parts parts) {
    this.parts = parts;
  }

  /**
   * What cells refer to.
   *
   * @param strings that cells share
   * @param styles that tell percentages and dates from other numbers
   * @param from1904 whether days are counted from 1904
   */
  record Parts(SharedStrings strings, StylesTable styles, boolean from1904) {}

  Grid grid(String file, Location.Sheet sheet) {
    return new Grid(file, sheet, rows, List.copyOf(merged), tooLong);
  }

  @Override
  public void startElement(String uri, String local, String name, Attributes attributes) {
    switch (local.isEmpty() ? name : local) {
      case "row" -> {
        row = number(attributes.getValue("r"), row + 1);
        column = 0;
      }
      case "c" -> {
        String place = attributes.getValue("r");
        column = place == null ? column + 1 : new CellReference(place).getCol() + 1;
        type = attributes.getValue("t") == null ? "n" : attributes.getValue("t");
        style = number(attributes.getValue("s"), 0);
        formula = false;
        value.setLength(0);
      }
      case "f" -> formula = true;
      case "v" -> reading = true;
      case "t" -> reading = !phonetic;
      case "rPh" -> phonetic = true;
      case "mergeCell" -> {
        if (merged.size() < MOST_MERGED) {
          merged.add(CellRangeAddress.valueOf(attributes.getValue("ref")));
        }
      }
      default -> {}
    }
  }

  @Override
  public void characters(char[] text, int start, int length) {
    if (reading) {
      value.append(text, start, length);
    }
  }

  @Override
  public void endElement(String uri, String local, String name) throws SAXException {
    switch (local.isEmpty() ? name : local) {
      case "v", "t" -> reading = false;
      case "rPh" -> phonetic = false;
      case "c" -> take();
      default -> {}
    }
  }

  private void take() throws SAXException {
    String text = formula ? "=" : Shown.stripped(text());
    if (text.isEmpty() || column > MOST_COLUMNS) {
      return;
    }
    if (rows.size() >= MOST_ROWS && !rows.containsKey(row)) {
      tooLong = true;
      throw new EnoughException();
    }
    rows.computeIfAbsent(row, made -> new TreeMap<>())
        .put(column, new Cell(row, column, text, kind()));
  }

  private Cell.Kind kind() {
    if (formula) {
      return Cell.Kind.FORMULA;
    }
    return switch (type) {
      case "e" -> Cell.Kind.ERROR;
      case "n", "d" -> Cell.Kind.NUMBER;
      default -> Cell.Kind.TEXT;
    };
  }

  private String text() {
    String raw = value.toString();
    return switch (type) {
      case "s" -> raw.isBlank() ? "" : parts.strings().getItemAt(Integer.parseInt(raw)).getString();
      case "inlineStr" -> new XSSFRichTextString(raw).getString();
      case "b" -> raw.equals("1") || raw.equals("true") ? "yes" : "no";
      case "n" -> raw.isBlank() ? "" : shown(raw.strip());
      default -> raw;
    };
  }

  private String shown(String raw) {
    return Shown.number(new BigDecimal(raw), parts.styles().getStyleAt(style), parts.from1904());
  }

  private static int number(String text, int otherwise) {
    return text == null ? otherwise : Integer.parseInt(text);
  }

  /** Ends the stream: no more is wanted of it. */
  static final class EnoughException extends SAXException {
    private static final long serialVersionUID = 1L;
  }
}
