package dev.urnwright.pdf;

import dev.urnwright.chart.ChartDrawing;
import dev.urnwright.sheet.ChartView;
import dev.urnwright.sheet.ControlChart;
import java.util.List;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElementFactory;
import org.xhtmlrenderer.render.BlockBox;

/**
 * Puts a chart in place of every element of class {@code chart}, and a coffee's marker in place of
 * every one of class {@code marker}. Its attribute {@code title} says which, counted from 0; the
 * style sheet says how large.
 */
final class DrawingBoxes extends ITextReplacedElementFactory {
  private final List<ChartView> charts;
  private final Typefaces typefaces;

  DrawingBoxes(ITextOutputDevice device, List<ChartView> charts, Typefaces typefaces) {
    super(device);
    this.charts = charts;
    this.typefaces = typefaces;
  }

  @Override
  public ReplacedElement createReplacedElement(
      LayoutContext context, BlockBox box, UserAgentCallback agent, int width, int height) {
    Element element = box.getElement();
    String kind = element == null ? "" : element.getAttribute("class");
    if (!kind.equals("chart") && !kind.equals("marker")) {
      return super.createReplacedElement(context, box, agent, width, height);
    }
    if (width <= 0 || height <= 0) {
      throw new IllegalStateException("the style sheet must give every " + kind + " a size");
    }
    int number = Integer.parseInt(element.getAttribute("title"));
    return new DrawingBox(drawing(kind, number), width, height, typefaces);
  }

  private DrawingBox.Drawing drawing(String kind, int number) {
    if (kind.equals("marker")) {
      return (canvas, wide, high) -> ChartDrawing.marker(number, canvas, wide / 2, high / 2);
    }
    ControlChart chart = charts.get(number).chart();
    return (canvas, wide, high) -> ChartDrawing.draw(chart, canvas, wide, high);
  }
}
