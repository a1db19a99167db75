package dev.urnwright.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;

/** Draws into a picture, in the typeface of the sheets. */
final class ImageCanvas implements Canvas {
  private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

  private final Graphics2D graphics;
  private final Font regular;
  private final Font bold;

  /** Draws with graphics that are scaled to points already. */
  ImageCanvas(Graphics2D graphics) throws IOException {
    this.graphics = graphics;
    this.regular = font("DejaVuSansCondensed.ttf");
    this.bold = font("DejaVuSansCondensed-Bold.ttf");
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  private static Font font(String file) throws IOException {
    try (InputStream stream = ImageCanvas.class.getResourceAsStream(FOLDER + file)) {
      if (stream == null) {
        throw new IOException("the typeface is missing: " + file);
      }
      return Font.createFont(Font.TRUETYPE_FONT, stream);
    } catch (FontFormatException failure) {
      throw new IOException("the typeface can't be read: " + file, failure);
    }
  }

  @Override
  public void line(double fromX, double fromY, double toX, double toY, Pen pen) {
    use(pen);
    graphics.draw(new Line2D.Double(fromX, fromY, toX, toY));
  }

  @Override
  public void fill(Outline outline, double grey) {
    graphics.setColor(color(grey));
    graphics.fill(path(outline));
  }

  @Override
  public void draw(Outline outline, Pen pen) {
    use(pen);
    graphics.draw(path(outline));
  }

  @Override
  public void text(String text, double x, double y, Letters letters) {
    graphics.setColor(color(letters.grey()));
    graphics.setFont(font(letters));
    double shift =
        width(text, letters)
            * (letters.anchor() == Anchor.START ? 0 : letters.anchor() == Anchor.END ? 1 : 0.5);
    graphics.drawString(text, (float) (x - shift), (float) y);
  }

  @Override
  public double width(String text, Letters letters) {
    return graphics.getFontMetrics(font(letters)).getStringBounds(text, graphics).getWidth();
  }

  private Font font(Letters letters) {
    return (letters.bold() ? bold : regular).deriveFont((float) letters.size());
  }

  private void use(Pen pen) {
    graphics.setColor(color(pen.grey()));
    graphics.setStroke(
        new BasicStroke(
            (float) pen.width(),
            BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_MITER,
            10,
            pen.dash() == 0 ? null : new float[] {(float) pen.dash()},
            0));
  }

  private static Path2D path(Outline outline) {
    Path2D path = new Path2D.Double();
    for (Outline.Corner corner : outline.corners()) {
      if (path.getCurrentPoint() == null) {
        path.moveTo(corner.x(), corner.y());
      } else {
        path.lineTo(corner.x(), corner.y());
      }
    }
    path.closePath();
    return path;
  }

  private static Color color(double grey) {
    return new Color((float) grey, (float) grey, (float) grey);
  }
}
