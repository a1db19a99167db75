package dev.urnwright.cli;

import dev.urnwright.pdf.PrepSheets;
import dev.urnwright.plan.Plan;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;

/**
 * The sheets of what is left to do.
 *
 * @param event they are named after
 * @param output where they go, and what they are made from
 */
record LeftSheets(Path event, OutputOptions output) {
  /** Writes them, and says so. */
  void write(Plan left, PrintWriter says) throws IOException, RefusedException {
    try (OutputFile sheets = output.file(event, "-left.pdf")) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      PrepSheets.writeLeft(left, output.templates(), bytes);
      sheets.writeAside(bytes.toByteArray());
      sheets.putInPlace();
      says.println("\nwrote " + sheets.target());
    }
  }
}
