package dev.urnwright.cli;

import dev.urnwright.chart.ChartPng;
import dev.urnwright.chart.ChartSvg;
import dev.urnwright.pdf.ChartPage;
import dev.urnwright.plan.Plan;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a chart can be drawn as. */
enum ChartKind {
  /** A page to print. */
  PDF(ChartPage::write),
  /** A picture of dots. */
  PNG(ChartPng::write),
  /** A picture of lines. */
  SVG(ChartSvg::write);

  private final Drawing drawing;

  ChartKind(Drawing drawing) {
    this.drawing = drawing;
  }

  /** Draws a plan's chart. */
  private interface Drawing {
    void write(Plan plan, OutputStream out) throws IOException;
  }

  /** The kind that a file's name asks for by its ending. */
  static Optional<ChartKind> ofName(String name) {
    return Arrays.stream(values())
        .filter(kind -> name.toLowerCase(Locale.ROOT).endsWith("." + kind.ending()))
        .findFirst();
  }

  /** How the names of such files end. */
  String ending() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The whole content of such a file. */
  byte[] draw(Plan plan) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    drawing.write(plan, bytes);
    return bytes.toByteArray();
  }
}
