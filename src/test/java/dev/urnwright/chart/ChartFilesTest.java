package dev.urnwright.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Paper;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.sheet.SheetPlans;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class ChartFilesTest {
  private static final Plan USUAL = SheetPlans.usual(UnitSystem.METRIC, Paper.A4);

  private static Document svg(Plan plan) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ChartSvg.write(plan, out);
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(out.toByteArray()));
  }

  private static List<Element> all(Document document, String name) {
    NodeList nodes = document.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
    List<Element> elements = new ArrayList<>();
    for (int at = 0; at < nodes.getLength(); at++) {
      elements.add((Element) nodes.item(at));
    }
    return elements;
  }

  @Test
  void theDrawingIsWellFormedAndSaysWhoMadeIt() throws Exception {
    Document drawing = svg(USUAL);
    assertEquals("svg", drawing.getDocumentElement().getLocalName());
    assertEquals("Urnwright", all(drawing, "metadata").get(0).getTextContent());
    List<String> texts = all(drawing, "text").stream().map(Element::getTextContent).toList();
    assertTrue(texts.contains("A generic breakfast"), texts.toString());
    // 19.39/(13 − 2.15) = 1.79 %; the lines of 1:10 to 1:31 cross the chart.
    assertTrue(texts.contains("1.79\u00a0%"), texts.toString());
    assertTrue(texts.containsAll(List.of("1:10", "1:31")), texts.toString());
    assertTrue(texts.contains("concentrate: Decaf (DECAF)"), texts.toString());
  }

  @Test
  void everythingDrawnLiesOnTheDrawing() throws Exception {
    Document drawing = svg(USUAL);
    String[] box = drawing.getDocumentElement().getAttribute("viewBox").split(" ");
    double width = Double.parseDouble(box[2]);
    double height = Double.parseDouble(box[3]);
    assertTrue(all(drawing, "line").size() > 30, "ratio lines, ticks and leaders");
    for (Element line : all(drawing, "line")) {
      for (String end : List.of("1", "2")) {
        assertInside(line.getAttribute("x" + end), width);
        assertInside(line.getAttribute("y" + end), height);
      }
    }
    for (Element text : all(drawing, "text")) {
      assertInside(text.getAttribute("x"), width);
      assertInside(text.getAttribute("y"), height);
    }
  }

  private static void assertInside(String value, double greatest) {
    double place = Double.parseDouble(value);
    assertTrue(place >= 0 && place <= greatest, value);
  }

  @Test
  void hostileNamesLeaveTheDrawingWellFormed() throws Exception {
    Plan plan = SheetPlans.crowded(2, 1, 20, "<g>&\u0007\ud83d ]]>", UnitSystem.METRIC, Paper.A4);
    List<String> texts = all(svg(plan), "text").stream().map(Element::getTextContent).toList();
    assertTrue(
        texts.stream().anyMatch(text -> text.contains("<g>&\ufffd\ufffd ]]>")), texts.toString());
  }

  @Test
  void labelsOfFortyGroupsKeepApart() throws Exception {
    Plan plan = SheetPlans.crowded(40, 1, UnitSystem.METRIC, Paper.A4);
    // The chart comes first: its numbers are bold and stand left or right of the arrow.
    List<Element> labels =
        all(svg(plan), "text").stream()
            .filter(text -> text.getTextContent().matches("A|\\d+"))
            .filter(text -> text.getAttribute("font-weight").equals("bold"))
            .toList();
    List<Element> onChart = labels.subList(0, labels.size() / 2);
    assertEquals(32, onChart.size(), "the concentrate and 31 strengths");
    for (Element one : onChart) {
      for (Element other : onChart) {
        double apart =
            Math.abs(
                Double.parseDouble(one.getAttribute("y"))
                    - Double.parseDouble(other.getAttribute("y")));
        boolean sameColumn = one.getAttribute("x").equals(other.getAttribute("x"));
        if (one != other && sameColumn) {
          double size = Double.parseDouble(one.getAttribute("font-size"));
          // Digits are three quarters of the type's size high.
          assertTrue(apart > 0.75 * size, one.getTextContent() + ", " + other.getTextContent());
        }
      }
    }
  }

  @Test
  void thePictureDecodesAndSaysWhoMadeIt() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ChartPng.write(USUAL, out);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
    assertEquals(1556, image.getWidth()); // 560 points at 200 dots an inch
    int dark = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        dark += (image.getRGB(x, y) & 0xff) < 100 ? 1 : 0;
      }
    }
    assertTrue(dark > 5_000 && dark < 200_000, dark + " dark dots");
    String bytes = out.toString(StandardCharsets.ISO_8859_1);
    assertTrue(bytes.contains("tEXtSoftware\u0000Urnwright"), "the text chunk of the PNG format");
  }
}
