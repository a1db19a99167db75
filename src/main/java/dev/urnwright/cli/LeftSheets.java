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
 * @param target where they go
 * @param replace whether they may take the place of a file that Urnwright didn't write
 */
record LeftSheets(Path target, boolean replace) {
  /** Writes them, and says so. */
  void write(Plan left, PrintWriter says) throws IOException, RefusedException {
    OutputFile.Existing existing =
        replace ? OutputFile.Existing.REPLACE : OutputFile.Existing.REPLACE_OURS;
    try (OutputFile sheets = OutputFile.at(target, existing)) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      PrepSheets.writeLeft(left, bytes);
      sheets.writeAside(bytes.toByteArray());
      sheets.putInPlace();
      says.println("\nwrote " + sheets.target());
    }
  }
}
