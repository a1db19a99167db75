package dev.urnwright.cli;

import dev.urnwright.calendar.RunCalendar;
import dev.urnwright.input.Typed;
import dev.urnwright.pdf.PrepSheets;
import dev.urnwright.pdf.TemplateFolder;
import dev.urnwright.plan.Plan;
import dev.urnwright.xlsx.PlanWorkbook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/** The files of a plan. All are written whole aside before any takes its place. */
final class PlanFiles implements AutoCloseable {
  private final List<Part> parts;

  private PlanFiles(List<Part> parts) {
    this.parts = List.copyOf(parts);
  }

  /** Writes one file's content. */
  private interface Rendering {
    void write(Plan plan, OutputStream out) throws IOException;
  }

  /**
   * One file and what comes into it.
   *
   * @param file where it goes
   * @param rendering writes its content
   */
  private record Part(OutputFile file, Rendering rendering) {
    byte[] content(Plan plan) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try {
        rendering.write(plan, bytes);
      } catch (IOException e) {
        throw new UncheckedIOException(e); // memory doesn't fail, so this is a fault of ours
      }
      return bytes.toByteArray();
    }
  }

  /**
   * The files of an event's plan: sheets, workbook and, when there is a run on a day, its calendar.
   *
   * @param typed the event as the user typed it
   * @param event they are named after
   * @param output where they go, and what the sheets are made from
   * @throws RefusedException if the folder can't be had or one of the places is taken
   */
  static PlanFiles of(Plan plan, Typed.Mapping typed, Path event, OutputOptions output)
      throws IOException, RefusedException {
    TemplateFolder templates = output.templates();
    List<Part> parts = new ArrayList<>();
    parts.add(
        new Part(
            output.file(event, "-plan.pdf"),
            (sheets, out) -> PrepSheets.write(sheets, templates, out)));
    parts.add(
        new Part(
            output.file(event, "-plan.xlsx"),
            (planned, out) -> PlanWorkbook.write(planned, typed, out)));
    if (RunCalendar.isFor(plan)) {
      Instant now = Instant.now();
      parts.add(
          new Part(output.file(event, "-run.ics"), (run, out) -> RunCalendar.write(run, now, out)));
    }
    return new PlanFiles(parts);
  }

  List<Path> targets() {
    return parts.stream().map(part -> part.file().target()).toList();
  }

  /**
   * Draws all at the same time, since each keeps one core busy, and writes them aside.
   *
   * @throws RefusedException if the folder or the disk doesn't take them
   */
  void render(Plan plan) throws RefusedException {
    List<CompletableFuture<byte[]>> contents = new ArrayList<>();
    for (Part part : parts) {
      contents.add(CompletableFuture.supplyAsync(() -> part.content(plan)));
    }
    for (int i = 0; i < parts.size(); i++) {
      parts.get(i).file().writeAside(result(contents.get(i)));
    }
  }

  /**
   * Moves all to their places.
   *
   * @throws RefusedException if a place has been taken meanwhile
   */
  void putInPlace() throws RefusedException {
    for (Part part : parts) {
      part.file().putInPlace();
    }
  }

  @Override
  public void close() {
    parts.forEach(part -> part.file().close());
  }

  private static byte[] result(CompletableFuture<byte[]> content) {
    try {
      return content.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw e;
    }
  }
}
