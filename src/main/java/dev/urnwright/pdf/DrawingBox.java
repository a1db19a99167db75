package dev.urnwright.pdf;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import dev.urnwright.chart.Canvas;
import java.awt.Point;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElement;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/** A drawing on a page, as vectors and text. */
final class DrawingBox implements ITextReplacedElement {
  private final Drawing drawing;
  private final int width;
  private final int height;
  private final Typefaces typefaces;
  private Point location = new Point(0, 0);

  /**
   * A drawing of a size.
   *
   * @param width in the layout's dots
   * @param height in the layout's dots
   */
  DrawingBox(Drawing drawing, int width, int height, Typefaces typefaces) {
    this.drawing = drawing;
    this.width = width;
    this.height = height;
    this.typefaces = typefaces;
  }

  /** What is drawn, into a size in points. */
  @FunctionalInterface
  interface Drawing {
    void draw(Canvas canvas, double width, double height);
  }

  @Override
  public void paint(RenderingContext context, ITextOutputDevice device, BlockBox box) {
    Rectangle place = device.createLocalTargetArea(context, box);
    PdfContentByte page = device.getCurrentPage();
    PdfTemplate template = page.createTemplate(place.getWidth(), place.getHeight());
    drawing.draw(
        new PdfCanvas(template, place.getHeight(), typefaces), place.getWidth(), place.getHeight());
    page.addTemplate(template, place.getLeft(), place.getBottom());
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
