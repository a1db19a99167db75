package dev.urnwright.form;

import dev.urnwright.input.EventFile;
import dev.urnwright.input.EventReader;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Workbooks for tests: filled in, then changed as somebody might. */
final class Forms {
  static final List<String> FILES =
      List.of(
          "samples/autumn-conference.yaml",
          "samples/harvest-supper.yaml",
          "samples/corner-cafe.yaml",
          "samples/office-carafes.yaml",
          "samples/too-tight.yaml",
          "templates/event.yaml");

  static final String SMALL =
      """
      event: Mill fair
      coffee: {name: House}
      groups:
        - name: Crew
          headcount: 40
          cup: 240 ml
          strength: 1.3 %
      """;

  private Forms() {}

  static EventFile text(Path file) {
    return new EventReader().open(file).value().orElseThrow();
  }

  /** The bytes of a form that says what a text says. */
  static byte[] of(String yaml, Path folder) throws IOException {
    return of(Files.writeString(folder.resolve("form.yaml"), yaml));
  }

  static byte[] of(Path yaml) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    EventWorkbook.write(text(yaml).typed(), out);
    return out.toByteArray();
  }

  /** What is said of the small form, changed. */
  static List<String> said(Path folder, Consumer<XSSFWorkbook> change) throws IOException {
    return opened(folder, change).problems().stream().map(Problem::toString).toList();
  }

  static Checked<EventFile> opened(Path folder, Consumer<XSSFWorkbook> change) throws IOException {
    Path file = folder.resolve("event.xlsx");
    try (XSSFWorkbook workbook =
            new XSSFWorkbook(new java.io.ByteArrayInputStream(of(SMALL, folder)));
        OutputStream out = Files.newOutputStream(file)) {
      change.accept(workbook);
      workbook.write(out);
    }
    return EventWorkbook.open(file);
  }
}
