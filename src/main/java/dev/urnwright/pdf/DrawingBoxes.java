package dev.urnwright.pdf;

import dev.urnwright.chart.ChartDrawing;
import dev.urnwright.chart.TimelineDrawing;
import dev.urnwright.sheet.ControlChart;
import dev.urnwright.sheet.Timeline;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.pdf.ITextReplacedElementFactory;
import org.xhtmlrenderer.render.BlockBox;

/**
 * Puts a chart in place of every element of class {@code chart}, and a coffee's marker in place of
 * every one of class {@code marker}, and a part of the run in place of every one of class {@code
 * timeline}. Its attribute {@code title} says which, counted from 0; the style sheet says how
 * large, but a part of the run is as high as its lanes.
 */
final class DrawingBoxes extends ITextReplacedElementFactory {
  private static final String TIMELINE = "timeline";
  private static final Set<String> KINDS = Set.of("chart", "marker", TIMELINE);

  private static final int MOST_MARKERS = 1000;

  private final Drawings drawings;
  private final Typefaces typefaces;

  DrawingBoxes(ITextOutputDevice device, Drawings drawings, Typefaces typefaces) {
    super(device);
    this.drawings = drawings;
    this.typefaces = typefaces;
  }

  @Override
  public @Nullable ReplacedElement createReplacedElement(
      LayoutContext context, BlockBox box, UserAgentCallback agent, int width, int height) {
    Element element = box.getElement();
    String kind = element == null ? "" : element.getAttribute("class");
    if (element == null || !KINDS.contains(kind)) {
      return super.createReplacedElement(context, box, agent, width, height);
    }
    int number = number(kind, element.getAttribute("title"));
    int high = kind.equals(TIMELINE) ? dots(drawings.timelines().get(number)) : height;
    if (width <= 0 || high <= 0) {
      throw new IllegalStateException("the style sheet must give every " + kind + " a size");
    }
    return new DrawingBox(drawing(kind, number), width, high, typefaces);
  }

  private int number(String kind, String title) {
    int all =
        switch (kind) {
          case TIMELINE -> drawings.timelines().size();
          case "chart" -> drawings.charts().size();
          default -> MOST_MARKERS;
        };
    int number = title.matches("\\d{1,3}") ? Integer.parseInt(title) : all;
    if (number >= all) {
      throw new IllegalStateException("there is no " + kind + " of the number '" + title + "'");
    }
    return number;
  }

  private static int dots(Timeline timeline) {
    return (int) Math.ceil(TimelineDrawing.height(timeline) * ITextRenderer.DEFAULT_DOTS_PER_POINT);
  }

  private DrawingBox.Drawing drawing(String kind, int number) {
    if (kind.equals("marker")) {
      return (canvas, wide, high) -> ChartDrawing.marker(number, canvas, wide / 2, high / 2);
    }
    if (kind.equals(TIMELINE)) {
      Timeline timeline = drawings.timelines().get(number);
      return (canvas, wide, high) -> TimelineDrawing.draw(timeline, canvas, wide);
    }
    ControlChart chart = drawings.charts().get(number).chart();
    return (canvas, wide, high) -> ChartDrawing.draw(chart, canvas, wide, high, drawings.words());
  }
}
