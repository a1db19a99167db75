package dev.urnwright.pdf;

import com.lowagie.text.Element;
import com.lowagie.text.pdf.PdfContentByte;
import dev.urnwright.chart.Canvas;
import dev.urnwright.chart.Outline;

/** Draws with the operators of PDF, whose y axis points up. */
final class PdfCanvas implements Canvas {
  private final PdfContentByte content;
  private final double height;
  private final Typefaces typefaces;

  PdfCanvas(PdfContentByte content, double height, Typefaces typefaces) {
    this.content = content;
    this.height = height;
    this.typefaces = typefaces;
  }

  @Override
  public void line(double fromX, double fromY, double toX, double toY, Pen pen) {
    use(pen);
    content.moveTo((float) fromX, up(fromY));
    content.lineTo((float) toX, up(toY));
    content.stroke();
  }

  @Override
  public void fill(Outline outline, double grey) {
    content.setGrayFill((float) grey);
    path(outline);
    content.fill();
  }

  @Override
  public void draw(Outline outline, Pen pen) {
    use(pen);
    path(outline);
    content.stroke();
  }

  @Override
  public void text(String text, double x, double y, Letters letters) {
    content.setGrayFill((float) letters.grey());
    content.beginText();
    content.setFontAndSize(typefaces.face(letters.bold()), (float) letters.size());
    content.showTextAligned(
        alignment(letters.anchor()), typefaces.shown(text), (float) x, up(y), 0);
    content.endText();
  }

  @Override
  public double width(String text, Letters letters) {
    return typefaces
        .face(letters.bold())
        .getWidthPoint(typefaces.shown(text), (float) letters.size());
  }

  private static int alignment(Anchor anchor) {
    if (anchor == Anchor.START) {
      return Element.ALIGN_LEFT;
    }
    return anchor == Anchor.MIDDLE ? Element.ALIGN_CENTER : Element.ALIGN_RIGHT;
  }

  private void use(Pen pen) {
    content.setGrayStroke((float) pen.grey());
    content.setLineWidth((float) pen.width());
    if (pen.dash() == 0) {
      content.setLineDash(0);
    } else {
      content.setLineDash((float) pen.dash(), (float) pen.dash(), 0);
    }
  }

  private void path(Outline outline) {
    boolean first = true;
    for (Outline.Corner corner : outline.corners()) {
      if (first) {
        content.moveTo((float) corner.x(), up(corner.y()));
        first = false;
      } else {
        content.lineTo((float) corner.x(), up(corner.y()));
      }
    }
    content.closePath();
  }

  private float up(double y) {
    return (float) (height - y);
  }
}
