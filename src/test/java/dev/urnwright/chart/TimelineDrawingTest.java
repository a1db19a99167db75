package dev.urnwright.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.sheet.Name;
import dev.urnwright.sheet.Timeline;
import dev.urnwright.sheet.Timeline.Box;
import dev.urnwright.sheet.Timeline.Cut;
import dev.urnwright.sheet.Timeline.Kind;
import dev.urnwright.sheet.Timeline.Lane;
import dev.urnwright.sheet.Timeline.Stretch;
import dev.urnwright.sheet.Timeline.Tick;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamWriter;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class TimelineDrawingTest {
  private static final double WIDTH = 520;

  /**
   * A batch from the first mark to the second, its fill until the fourth, poured from the third.
   */
  private static Timeline timeline() {
    List<Tick> ticks =
        List.of(
            new Tick(0, "08:00", true),
            new Tick(15, "08:15", false),
            new Tick(30, "08:30", false),
            new Tick(45, "08:45", false));
    Cut whole = new Cut(false, false);
    return new Timeline(
        60,
        45,
        ticks,
        List.of(
            new Lane(
                Kind.BREWER,
                new Name("Brewer"),
                List.of(new Box("a-1", Optional.empty(), false, new Stretch(0, 15, 15), whole))),
            new Lane(
                Kind.DISPENSER,
                new Name("Airpot 1"),
                List.of(
                    new Box(
                        "a-F1",
                        Optional.of(new Name("Guests")),
                        true,
                        new Stretch(15, 30, 45),
                        whole)))));
  }

  private static Document drawn(Timeline timeline) throws Exception {
    StringWriter out = new StringWriter();
    XMLStreamWriter xml = XMLOutputFactory.newInstance().createXMLStreamWriter(out);
    xml.writeStartElement("svg");
    TimelineDrawing.draw(timeline, new SvgCanvas(xml), WIDTH);
    xml.writeEndElement();
    xml.flush();
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(out.toString())));
  }

  private static List<Element> elements(Document document, String name) {
    return IntStream.range(0, document.getElementsByTagName(name).getLength())
        .mapToObj(at -> (Element) document.getElementsByTagName(name).item(at))
        .toList();
  }

  private static double x(Document document, String time) {
    return elements(document, "text").stream()
        .filter(text -> text.getTextContent().equals(time))
        .mapToDouble(text -> Double.parseDouble(text.getAttribute("x")))
        .findFirst()
        .orElseThrow();
  }

  /** From where to where the filled polygons reach across, in the order of drawing. */
  private static List<List<Double>> fills(Document document) {
    return elements(document, "polygon").stream()
        .filter(polygon -> !polygon.getAttribute("fill").equals("none"))
        .map(
            polygon ->
                List.of(polygon.getAttribute("points").trim().split("\\s+")).stream()
                    .map(corner -> Double.valueOf(corner.split(",")[0]))
                    .sorted()
                    .toList())
        .map(across -> List.of(across.get(0), across.get(across.size() - 1)))
        .toList();
  }

  @Test
  void boxesBeginAndEndAtTheMarksOfTheirMinutes() throws Exception {
    Document document = drawn(timeline());
    List<List<Double>> fills = fills(document);
    assertEquals(List.of(x(document, "08:00"), x(document, "08:15")), fills.get(0), "batch");
    assertEquals(List.of(x(document, "08:15"), x(document, "08:45")), fills.get(1), "fill");
    assertEquals(List.of(x(document, "08:30"), x(document, "08:45")), fills.get(2), "poured");
    double quarter = x(document, "08:15") - x(document, "08:00");
    assertEquals(quarter, x(document, "08:45") - x(document, "08:30"), 0.02, "even scale");
  }

  @Test
  void theDrawingStaysInItsFrame() throws Exception {
    Timeline timeline = timeline();
    Document document = drawn(timeline);
    double height = TimelineDrawing.height(timeline);
    for (Element line : elements(document, "line")) {
      for (String end : List.of("x1", "x2")) {
        double x = Double.parseDouble(line.getAttribute(end));
        assertTrue(x >= 0 && x <= WIDTH, end + " " + x);
      }
      for (String end : List.of("y1", "y2")) {
        double y = Double.parseDouble(line.getAttribute(end));
        assertTrue(y >= 0 && y <= height, end + " " + y);
      }
    }
  }

  @Test
  void everyBoxAndLaneIsNamedAndDecafIsWhiteOnBlack() throws Exception {
    Document document = drawn(timeline());
    List<Element> texts = elements(document, "text");
    for (String name : List.of("Brewer", "Airpot 1", "a-1", "a-F1", "Guests")) {
      assertTrue(texts.stream().anyMatch(text -> text.getTextContent().equals(name)), name);
    }
    Element decaf =
        texts.stream().filter(t -> t.getTextContent().equals("a-F1")).findFirst().orElseThrow();
    Element house =
        texts.stream().filter(t -> t.getTextContent().equals("a-1")).findFirst().orElseThrow();
    assertEquals("#ffffff", decaf.getAttribute("fill"));
    assertEquals("#000000", house.getAttribute("fill"));
  }
}
