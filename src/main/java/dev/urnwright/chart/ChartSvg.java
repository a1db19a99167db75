package dev.urnwright.chart;

import dev.urnwright.plan.Plan;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a plan's control charts as one SVG drawing. */
public final class ChartSvg {
  private ChartSvg() {}

  /**
   * Writes UTF-8; its {@code metadata} element says {@code Urnwright}. The stream stays open.
   *
   * @throws IOException if the stream can't be written to
   */
  public static void write(Plan plan, OutputStream out) throws IOException {
    ChartPoster poster = ChartPoster.of(plan);
    try {
      XMLStreamWriter xml = XMLOutputFactory.newInstance().createXMLStreamWriter(out, "UTF-8");
      xml.writeStartDocument("UTF-8", "1.0");
      xml.writeStartElement("svg");
      xml.writeDefaultNamespace("http://www.w3.org/2000/svg");
      String width = points(ChartPoster.WIDTH);
      String height = points(poster.height());
      xml.writeAttribute("width", width + "pt");
      xml.writeAttribute("height", height + "pt");
      xml.writeAttribute("viewBox", "0 0 " + width + " " + height);
      xml.writeAttribute("font-family", "DejaVu Sans Condensed, DejaVu Sans, sans-serif");
      xml.writeStartElement("metadata");
      xml.writeCharacters("Urnwright");
      xml.writeEndElement();
      poster.draw(new SvgCanvas(xml));
      xml.writeEndElement();
      xml.writeEndDocument();
      xml.flush();
    } catch (XMLStreamException | SvgCanvas.UnwrittenException failure) {
      throw new IOException("the drawing can't be written", failure);
    }
  }

  private static String points(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }
}
