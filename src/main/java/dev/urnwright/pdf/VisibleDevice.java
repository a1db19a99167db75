package dev.urnwright.pdf;

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

  VisibleDevice(float dotsPerPoint) {
    super(dotsPerPoint);
  }

  @Override
  public void setFont(FSFont font) {
    super.setFont(font);
    size = font.getSize2D();
  }

  @Override
  public void drawString(String text, float x, float y, @Nullable JustificationInfo justification) {
    Shape clip = getClip();
    Rectangle2D seen = clip == null ? null : clip.getBounds2D();
    if (seen == null || (y - size < seen.getMaxY() && y + size > seen.getMinY())) {
      super.drawString(text, x, y, justification);
    }
  }
}
