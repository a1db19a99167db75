package dev.urnwright.cli;

import dev.urnwright.plan.Plan;
import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a chart can be drawn as. */
enum ChartKind {
  PDF,
  PNG,
  SVG;

  /** The kind that a file's name asks for by its ending. */
  static Optional<ChartKind> ofName(String name) {
    return Arrays.stream(values()).filter(kind -> name.endsWith("." + kind.ending())).findFirst();
  }

  /** How the names of such files end. */
  String ending() {
    return name().toLowerCase(Locale.ROOT);
  }

  byte[] draw(Plan plan) throws IOException {
    throw new IOException("stub");
  }
}
