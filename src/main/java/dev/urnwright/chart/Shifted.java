package dev.urnwright.chart;

import java.util.List;

/**
 * A canvas whose upper left corner lies inside another's.
 *
 * @param canvas the other
 * @param right how far in
 * @param down how far down
 */
record Shifted(Canvas canvas, double right, double down) implements Canvas {
  @Override
  public void line(double fromX, double fromY, double toX, double toY, Pen pen) {
    canvas.line(fromX + right, fromY + down, toX + right, toY + down, pen);
  }

  @Override
  public void fill(Outline outline, double grey) {
    canvas.fill(shifted(outline), grey);
  }

  @Override
  public void draw(Outline outline, Pen pen) {
    canvas.draw(shifted(outline), pen);
  }

  @Override
  public void text(String text, double x, double y, Letters letters) {
    canvas.text(text, x + right, y + down, letters);
  }

  @Override
  public double width(String text, Letters letters) {
    return canvas.width(text, letters);
  }

  private Outline shifted(Outline outline) {
    List<Outline.Corner> corners =
        outline.corners().stream()
            .map(corner -> new Outline.Corner(corner.x() + right, corner.y() + down))
            .toList();
    return new Outline(corners);
  }
}
