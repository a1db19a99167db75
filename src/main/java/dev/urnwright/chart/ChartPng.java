package dev.urnwright.chart;

import dev.urnwright.plan.Plan;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** Writes a plan's control charts as one picture, 200 dots an inch. */
public final class ChartPng {
  private static final double DOTS_PER_POINT = 200 / 72.0;
  private static final String FORMAT = "javax_imageio_png_1.0";

  private ChartPng() {}

  /**
   * Writes a PNG whose text chunk {@code Software} says {@code Urnwright}. The stream stays open.
   *
   * @throws IOException if the stream can't be written to
   */
  public static void write(Plan plan, OutputStream out) throws IOException {
    BufferedImage image = draw(ChartPoster.of(plan));
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(new IIOImage(image, null, metadata(writer, image)));
    } finally {
      writer.dispose();
    }
    out.flush();
  }

  private static BufferedImage draw(ChartPoster poster) throws IOException {
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(ChartPoster.WIDTH * DOTS_PER_POINT),
            (int) Math.ceil(poster.height() * DOTS_PER_POINT),
            BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    try {
      graphics.scale(DOTS_PER_POINT, DOTS_PER_POINT);
      poster.draw(new ImageCanvas(graphics));
    } finally {
      graphics.dispose();
    }
    return image;
  }

  private static IIOMetadata metadata(ImageWriter writer, BufferedImage image) throws IOException {
    IIOMetadata metadata =
        writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), null);
    IIOMetadataNode entry = new IIOMetadataNode("tEXtEntry");
    entry.setAttribute("keyword", "Software");
    entry.setAttribute("value", "Urnwright");
    IIOMetadataNode text = new IIOMetadataNode("tEXt");
    text.appendChild(entry);
    IIOMetadataNode resolution = new IIOMetadataNode("pHYs");
    String dotsPerMetre = Long.toString(Math.round(DOTS_PER_POINT * 72 / 0.0254));
    resolution.setAttribute("pixelsPerUnitXAxis", dotsPerMetre);
    resolution.setAttribute("pixelsPerUnitYAxis", dotsPerMetre);
    resolution.setAttribute("unitSpecifier", "meter");
    IIOMetadataNode root = new IIOMetadataNode(FORMAT);
    root.appendChild(resolution);
    root.appendChild(text);
    metadata.mergeTree(FORMAT, root);
    return metadata;
  }
}
