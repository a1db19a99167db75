package dev.urnwright.pdf;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import dev.urnwright.chart.ChartDrawing;
import dev.urnwright.sheet.ControlChart;
import java.awt.Point;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElement;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/** A chart on a page, as vectors and text. */
final class ChartBox implements ITextReplacedElement {
  private final ControlChart chart;
  private final int width;
  private final int height;
  private final Typefaces typefaces;
  private Point location = new Point(0, 0);

  /**
   * A chart of a size.
   *
   * @param width in the layout's dots
   * @param height in the layout's dots
   */
  ChartBox(ControlChart chart, int width, int height, Typefaces typefaces) {
    this.chart = chart;
    this.width = width;
    this.height = height;
    this.typefaces = typefaces;
  }

  @Override
  public void paint(RenderingContext context, ITextOutputDevice device, BlockBox box) {
    Rectangle place = device.createLocalTargetArea(context, box);
    PdfContentByte page = device.getCurrentPage();
    PdfTemplate drawing = page.createTemplate(place.getWidth(), place.getHeight());
    ChartDrawing.draw(
        chart,
        new PdfCanvas(drawing, place.getHeight(), typefaces),
        place.getWidth(),
        place.getHeight());
    page.addTemplate(drawing, place.getLeft(), place.getBottom());
  }

  @Override
  public int getIntrinsicWidth() {
    return width;
  }

  @Override
  public int getIntrinsicHeight() {
    return height;
  }

  @Override
  public Point getLocation() {
    return location;
  }

  @Override
  public void setLocation(int x, int y) {
    location = new Point(x, y);
  }

  @Override
  public void detach(LayoutContext context) {
    // Nothing is held.
  }

  @Override
  public boolean isRequiresInteractivePaint() {
    return false;
  }

  @Override
  public boolean hasBaseline() {
    return false;
  }

  @Override
  public int getBaseline() {
    return 0;
  }
}
