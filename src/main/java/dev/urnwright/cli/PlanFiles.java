package dev.urnwright.cli;

import dev.urnwright.pdf.PrepSheets;
import dev.urnwright.plan.Plan;
import dev.urnwright.xlsx.PlanWorkbook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/** The two files of a plan. Both are written whole aside before either takes its place. */
final class PlanFiles implements AutoCloseable {
  private final OutputFile sheets;
  private final OutputFile workbook;

  private PlanFiles(OutputFile sheets, OutputFile workbook) {
    this.sheets = sheets;
    this.workbook = workbook;
  }

  /**
   * The files of an event's plan, in that folder or else beside the event.
   *
   * @throws RefusedException if the folder can't be had or one of the places is taken
   */
  static PlanFiles of(Path event, Optional<Path> folder, boolean replace) throws RefusedException {
    OutputFile.Existing existing =
        replace ? OutputFile.Existing.REPLACE : OutputFile.Existing.REPLACE_OURS;
    if (folder.isPresent()) {
      make(folder.get());
    }
    return new PlanFiles(
        OutputFile.at(place(event, folder, "-plan.pdf"), existing),
        OutputFile.at(place(event, folder, "-plan.xlsx"), existing));
  }

  List<Path> targets() {
    return List.of(sheets.target(), workbook.target());
  }

  /**
   * Draws both at once, since either keeps one core busy, and writes them aside.
   *
   * @throws RefusedException if the folder or the disk doesn't take them
   */
  void render(Plan plan) throws RefusedException {
    CompletableFuture<byte[]> pdf =
        CompletableFuture.supplyAsync(() -> content(out -> PrepSheets.write(plan, out)));
    byte[] xlsx = content(out -> PlanWorkbook.write(plan, out));
    sheets.writeAside(result(pdf));
    workbook.writeAside(xlsx);
  }

  /**
   * Moves both to their places.
   *
   * @throws RefusedException if a place has been taken meanwhile
   */
  void putInPlace() throws RefusedException {
    sheets.putInPlace();
    workbook.putInPlace();
  }

  @Override
  public void close() {
    sheets.close();
    workbook.close();
  }

  /** Writes one file's content. */
  private interface Rendering {
    void to(OutputStream out) throws IOException;
  }

  private static byte[] content(Rendering rendering) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      rendering.to(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("memory doesn't fail, but a template may", e);
    }
    return bytes.toByteArray();
  }

  private static byte[] result(CompletableFuture<byte[]> content) {
    try {
      return content.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw e;
    }
  }

  private static Path place(Path event, Optional<Path> folder, String ending) {
    return folder
        .map(dir -> FileNames.in(dir, event, ending))
        .orElseGet(() -> FileNames.beside(event, ending));
  }

  private static void make(Path folder) throws RefusedException {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new RefusedException(
          folder + ": can't be made or isn't a folder; name one that can be written to");
    }
  }
}
