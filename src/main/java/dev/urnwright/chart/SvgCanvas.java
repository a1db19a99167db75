package dev.urnwright.chart;

import java.util.Locale;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Draws by writing SVG elements. */
final class SvgCanvas implements Canvas {
  /** What XML 1.0 has no place for (production 2, Char): control characters, half letters. */
  private static final Pattern NO_XML =
      Pattern.compile("[^\\t\\n\\r\\x20-\\ud7ff\\ue000-\\ufffd\\x{10000}-\\x{10ffff}]");

  private static final String REPLACEMENT = "\ufffd";

  private final XMLStreamWriter xml;

  SvgCanvas(XMLStreamWriter xml) {
    this.xml = xml;
  }

  @Override
  public void line(double fromX, double fromY, double toX, double toY, Pen pen) {
    empty(
        "line",
        "x1",
        number(fromX),
        "y1",
        number(fromY),
        "x2",
        number(toX),
        "y2",
        number(toY),
        "stroke",
        grey(pen.grey()),
        "stroke-width",
        number(pen.width()),
        "stroke-dasharray",
        dashes(pen));
  }

  @Override
  public void fill(Outline outline, double grey) {
    empty("polygon", "points", corners(outline), "fill", grey(grey));
  }

  @Override
  public void draw(Outline outline, Pen pen) {
    empty(
        "polygon",
        "points",
        corners(outline),
        "fill",
        "none",
        "stroke",
        grey(pen.grey()),
        "stroke-width",
        number(pen.width()),
        "stroke-dasharray",
        dashes(pen));
  }

  @Override
  public void text(String text, double x, double y, Letters letters) {
    try {
      xml.writeStartElement("text");
      attributes(
          "x",
          number(x),
          "y",
          number(y),
          "font-size",
          number(letters.size()),
          "font-weight",
          letters.bold() ? "bold" : "normal",
          "fill",
          grey(letters.grey()),
          "text-anchor",
          letters.anchor().name().toLowerCase(Locale.ROOT));
      xml.writeCharacters(NO_XML.matcher(text).replaceAll(REPLACEMENT));
      xml.writeEndElement();
    } catch (XMLStreamException failure) {
      throw new UnwrittenException(failure);
    }
  }

  /** The viewer chooses the typeface: no letter of a usual one is wider than its size. */
  @Override
  public double width(String text, Letters letters) {
    return text.codePointCount(0, text.length()) * letters.size();
  }

  private void empty(String element, String... namesAndValues) {
    try {
      xml.writeEmptyElement(element);
      attributes(namesAndValues);
    } catch (XMLStreamException failure) {
      throw new UnwrittenException(failure);
    }
  }

  private void attributes(String... namesAndValues) throws XMLStreamException {
    for (int at = 0; at < namesAndValues.length; at += 2) {
      xml.writeAttribute(namesAndValues[at], namesAndValues[at + 1]);
    }
  }

  private static String corners(Outline outline) {
    StringBuilder text = new StringBuilder();
    for (Outline.Corner corner : outline.corners()) {
      text.append(number(corner.x())).append(',').append(number(corner.y())).append(' ');
    }
    return text.toString().stripTrailing();
  }

  private static String dashes(Pen pen) {
    return pen.dash() == 0 ? "none" : number(pen.dash());
  }

  private static String grey(double grey) {
    int level = (int) Math.round(255 * grey);
    return String.format(Locale.ROOT, "#%02x%02x%02x", level, level, level);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  /** Carries a failure to write through drawing, which knows of none. */
  static final class UnwrittenException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnwrittenException(XMLStreamException cause) {
      super(cause);
    }
  }
}
