package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Events in workbooks, from the command line. */
class WorkbookCommandsTest {
  private static final List<String> FILES =
      List.of(
          "samples/autumn-conference.yaml",
          "samples/harvest-supper.yaml",
          "samples/corner-cafe.yaml",
          "samples/office-carafes.yaml",
          "templates/event.yaml");

  private static final int SECONDS = 300;

  @TempDir private Path folder;

  /** A plan of a plan of a plan is the same plan. */
  @ParameterizedTest
  @FieldSource("FILES")
  void thePlannedWorkbookCanBePlannedAgain(String file) {
    String first = json(Path.of(file));
    Path text = Path.of(file);
    String stem = text.getFileName().toString().replace(".yaml", "");
    assertEquals(ExitCode.DONE, Run.of("plan", text, "--out", folder).code());
    Path planned = folder.resolve(stem + "-plan.xlsx");
    assertEquals(first, json(planned));
    Run again = Run.of("plan", planned);
    assertEquals("", again.err());
    assertTrue(again.out().contains("wrote " + folder.resolve(stem + "-plan-2.pdf")), again.out());
    assertEquals(first, json(folder.resolve(stem + "-plan-2.xlsx")));
  }

  @Test
  void whatIsChangedOnTheFormChangesThePlan() throws IOException {
    Path planned = plannedSupper();
    change(planned, "My groups", "B5", 26);
    assertEquals(ExitCode.DONE, Run.of("plan", planned).code());
    String text = Run.of("convert", planned, folder.resolve("changed.yaml")).err();
    assertEquals("", text);
    assertTrue(Files.readString(folder.resolve("changed.yaml")).contains("headcount: 26"));
  }

  @Test
  void whatIsChangedElsewhereIsNotLostInSilence() throws IOException {
    Path planned = plannedSupper();
    change(planned, "Groups", address(planned, "Groups"), 400);
    Run run = Run.of("plan", planned);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(
        run.err().contains("!Groups!") && run.err().contains(" was changed to 400; expected the"),
        run.err());
  }

  @Test
  void convertsBothWaysAndWritesOverNothing() throws IOException {
    Path workbook = folder.resolve("supper.xlsx");
    Run there = Run.of("convert", "samples/harvest-supper.yaml", workbook);
    assertEquals(ExitCode.DONE, there.code());
    assertTrue(there.out().contains("comments stayed in samples/harvest-supper.yaml"), there.out());
    Path text = folder.resolve("supper.yaml");
    assertEquals(ExitCode.DONE, Run.of("convert", workbook, text).code());
    assertEquals(json(Path.of("samples/harvest-supper.yaml")), json(text));
    byte[] before = Files.readAllBytes(workbook);
    assertEquals(ExitCode.PROBLEMS, Run.of("convert", text, workbook).code());
    assertEquals(Arrays.toString(before), Arrays.toString(Files.readAllBytes(workbook)));
    Run old = Run.of("convert", text, folder.resolve("supper.xls"));
    assertEquals(ExitCode.PROBLEMS, old.code());
    assertFalse(Files.exists(folder.resolve("supper.xls")));
  }

  @Test
  void anEmptyFormIsBegunAndSaysWhatItLacks() {
    Path form = folder.resolve("breakfast.xlsx");
    assertEquals(ExitCode.DONE, Run.of("begin", form).code());
    Run check = Run.of("check", form);
    assertEquals(ExitCode.PROBLEMS, check.code());
    assertEquals(
        List.of(
            form
                + "!My event: this event has no 'event'; expected a name such as Orchard Road"
                + " breakfast",
            form
                + "!My event: this event has no 'groups'; expected a row at least on the sheet"
                + " 'My groups'",
            form
                + "!My event: this event has no 'coffee'; expected a row at least on the sheet"
                + " 'My coffees'",
            "3 problems; mend the file and check again"),
        check.err().lines().toList());
  }

  /** Skipped where LibreOffice is not on the path. */
  @Test
  void libreOfficeSavesWhatIsRead() throws Exception {
    Optional<Path> soffice =
        Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
            .map(dir -> Path.of(dir, "soffice"))
            .filter(Files::isExecutable)
            .findFirst();
    assumeTrue(soffice.isPresent(), "LibreOffice (soffice) is not on the path");
    List<String> written = new ArrayList<>();
    for (String file : FILES) {
      String stem = Path.of(file).getFileName().toString().replace(".yaml", "");
      Run.of("convert", file, folder.resolve(stem + ".xlsx"));
      Run.of("plan", file, "--out", folder);
      written.add(stem);
    }
    Path saved = Files.createDirectory(folder.resolve("saved"));
    List<String> command =
        new ArrayList<>(
            List.of(
                soffice.get().toString(),
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless",
                "--convert-to",
                "xlsx",
                "--outdir",
                saved.toString()));
    for (String stem : written) {
      command.add(folder.resolve(stem + ".xlsx").toString());
      command.add(folder.resolve(stem + "-plan.xlsx").toString());
    }
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("soffice.log").toFile())
            .start();
    assertTrue(process.waitFor(SECONDS, TimeUnit.SECONDS), "LibreOffice did not finish");
    for (int i = 0; i < FILES.size(); i++) {
      String first = json(Path.of(FILES.get(i)));
      assertEquals(first, json(saved.resolve(written.get(i) + ".xlsx")), FILES.get(i));
      assertEquals(first, json(saved.resolve(written.get(i) + "-plan.xlsx")), FILES.get(i));
    }
  }

  private Path plannedSupper() {
    assertEquals(ExitCode.DONE, Run.of("plan", "samples/corner-cafe.yaml", "--out", folder).code());
    return folder.resolve("corner-cafe-plan.xlsx");
  }

  private static String json(Path event) {
    Run run = Run.of("plan", event, "--json", "--no-sheets");
    assertEquals("", run.err());
    return run.out();
  }

  private static void change(Path file, String sheet, String address, double number)
      throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)))) {
      var place = new org.apache.poi.ss.util.CellReference(address);
      Row row = book.getSheet(sheet).getRow(place.getRow());
      row.getCell(place.getCol()).setCellValue(number);
      try (OutputStream out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
  }

  /** The first number on a calculating sheet that may be changed. */
  private static String address(Path file, String sheet) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)))) {
      XSSFSheet page = book.getSheet(sheet);
      for (Row row : page) {
        for (var cell : row) {
          boolean number = cell.getCellType() == org.apache.poi.ss.usermodel.CellType.NUMERIC;
          boolean percent = cell.getCellStyle().getDataFormatString().contains("%");
          if (number && !percent && !cell.getCellStyle().getLocked()) {
            return cell.getAddress().formatAsString();
          }
        }
      }
    }
    throw new AssertionError("nothing may be changed on " + sheet);
  }
}
