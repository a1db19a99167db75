package dev.urnwright.pdf;

import dev.urnwright.sheet.ChartView;
import java.util.List;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElementFactory;
import org.xhtmlrenderer.render.BlockBox;

/**
 * Puts a chart in place of every element of class {@code chart}. Its attribute {@code title} says
 * which chart, counted from 0; the style sheet says how large.
 */
final class ChartBoxes extends ITextReplacedElementFactory {
  private final List<ChartView> charts;
  private final Typefaces typefaces;

  ChartBoxes(ITextOutputDevice device, List<ChartView> charts, Typefaces typefaces) {
    super(device);
    this.charts = charts;
    this.typefaces = typefaces;
  }

  @Override
  public ReplacedElement createReplacedElement(
      LayoutContext context, BlockBox box, UserAgentCallback agent, int width, int height) {
    Element element = box.getElement();
    if (element == null || !element.getAttribute("class").equals("chart")) {
      return super.createReplacedElement(context, box, agent, width, height);
    }
    if (width <= 0 || height <= 0) {
      throw new IllegalStateException("the style sheet must give charts a width and a height");
    }
    int number = Integer.parseInt(element.getAttribute("title"));
    return new ChartBox(charts.get(number).chart(), width, height, typefaces);
  }
}
