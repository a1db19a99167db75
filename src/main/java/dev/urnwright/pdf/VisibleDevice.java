package dev.urnwright.pdf;

import com.lowagie.text.pdf.PdfContentByte;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.FSFont;
import org.xhtmlrenderer.render.JustificationInfo;

/**
 * Writes no text that is wholly clipped away. The layout paints what begins a page into the lower
 * margin of the page before, too: nobody sees it there, but whoever searches the file or has it
 * read aloud would meet it twice.
 */
final class VisibleDevice extends ITextOutputDevice {
  private float size;
  private @Nullable Rectangle2D seen;
  private boolean seenIsKnown;

  VisibleDevice(float dotsPerPoint) {
    super(dotsPerPoint);
  }

  @Override
  public void setFont(FSFont font) {
    super.setFont(font);
    size = font.getSize2D();
  }

  @Override
  public void initializePage(PdfContentByte page, float height) {
    super.initializePage(page, height);
    seenIsKnown = false;
  }

  @Override
  public void clip(Shape shape) {
    super.clip(shape);
    seenIsKnown = false;
  }

  @Override
  public void setClip(Shape shape) {
    super.setClip(shape);
    seenIsKnown = false;
  }

  @Override
  public void translate(double x, double y) {
    super.translate(x, y);
    seenIsKnown = false;
  }

  /** What isn't clipped away; the layout itself would work it out for every word. */
  private @Nullable Rectangle2D seen() {
    if (!seenIsKnown) {
      Shape clip = getClip();
      seen = clip == null ? null : clip.getBounds2D();
      seenIsKnown = true;
    }
    return seen;
  }

  @Override
  public void drawString(String text, float x, float y, @Nullable JustificationInfo justification) {
    Rectangle2D clip = seen();
    if (clip == null || (y - size < clip.getMaxY() && y + size > clip.getMinY())) {
      super.drawString(text, x, y, justification);
    }
  }
}
