package dev.urnwright.xlsx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.urnwright.event.GuestGroup;
import dev.urnwright.journal.EntryRow;
import dev.urnwright.journal.JournalCsv;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import java.io.File;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * LibreOffice, made to calculate every formula anew, gives the planner's figures: also for the odds
 * of fractional cups, which POI's evaluator can't sum.
 *
 * <p>Skipped where LibreOffice is not on the path.
 */
class LibreOfficeTest {
  private static final int SECONDS = 400;

  /** 0: always recalculate. Without it cached values stay and the test would prove nothing. */
  private static final String ALWAYS_RECALCULATE =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <oor:items xmlns:oor="http://openoffice.org/2001/registry"
          xmlns:xs="http://www.w3.org/2001/XMLSchema"
          xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
        <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
          <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop>
        </item>
      </oor:items>
      """;

  @TempDir Path folder;

  @Test
  void calculatesWhatThePlannerPlanned() throws Exception {
    Optional<Path> soffice = soffice();
    assumeTrue(soffice.isPresent(), "LibreOffice (soffice) is not on the path");
    Map<String, Plan> plans = new LinkedHashMap<>();
    int climbing = 0;
    for (long seed = 200; plans.size() < 6; seed++) {
      String name = "plan" + seed;
      new Planner()
          .plan(new RandomEvents(seed, seed, true).next())
          .value()
          .filter(plan -> plan.batches().size() < 40)
          .ifPresent(plan -> plans.put(name, plan));
    }
    for (String file : Samples.FILES) {
      plans.put(
          file.substring(file.lastIndexOf('/') + 1, file.lastIndexOf('.')), Samples.plan(file));
    }
    for (var plan : plans.entrySet()) {
      Files.write(folder.resolve(plan.getKey() + ".xlsx"), Recalculation.bytes(plan.getValue()));
    }
    Path out = Files.createDirectory(folder.resolve("out"));
    convert(soffice.get(), out, plans.keySet());
    for (var plan : plans.entrySet()) {
      Recalculation written = Recalculation.of(plan.getValue());
      climbing += climbing(written, plan.getValue());
      Recalculation calculated =
          Recalculation.of(Files.readAllBytes(out.resolve(plan.getKey() + ".xlsx")));
      assertEquals(List.of(), calculated.errors(), plan.getKey());
      List<String> differences = written.differencesFrom(calculated, 1e-5, 1e-7);
      assertEquals(List.of(), differences.stream().limit(10).toList(), plan.getKey());
    }
    assertTrue(climbing > 0, "no plan needed the odds of fractional cups");
  }

  @Test
  void reallyCalculatesAnew() throws Exception {
    Optional<Path> soffice = soffice();
    assumeTrue(soffice.isPresent(), "LibreOffice (soffice) is not on the path");
    Plan plan = null;
    for (long seed = 300; plan == null; seed++) {
      plan = new Planner().plan(new RandomEvents(seed, seed, true).next()).value().orElse(null);
    }
    Recalculation doubled = Recalculation.of(plan);
    Grid groups = Layout.of(plan, Units.of(plan)).groups();
    double headcount = doubled.cell(groups, "headcount", 0).getNumericCellValue();
    doubled.cell(groups, "headcount", 0).setCellValue(2 * headcount);
    try (var file = Files.newOutputStream(folder.resolve("doubled.xlsx"))) {
      doubled.workbook().write(file);
    }
    Path out = Files.createDirectory(folder.resolve("out"));
    convert(soffice.get(), out, List.of("doubled"));
    Recalculation calculated = Recalculation.of(Files.readAllBytes(out.resolve("doubled.xlsx")));
    assertEquals(
        2 * plan.groups().get(0).demand().mean(),
        calculated.cell(groups, "mean", 0).getNumericCellValue(),
        1e-6);
  }

  /** A spreadsheet would carry out what begins with these signs. */
  @Test
  void namesAreNoFormulasThere() throws Exception {
    Optional<Path> soffice = soffice();
    assumeTrue(soffice.isPresent(), "LibreOffice (soffice) is not on the path");
    List<String> names = List.of("=1+1", "+1+1", "-1+1", "@SUM(1;1)", "=HYPERLINK(\"x\";\"y\")");
    GuestGroup[] groups =
        names.stream().map(name -> Events.group(name, 30, 200, 1.3)).toArray(GuestGroup[]::new);
    Plan plan = new Planner().plan(Events.simple(Events.ratio(13), groups)).value().orElseThrow();
    Files.write(folder.resolve("names.xlsx"), Recalculation.bytes(plan));
    StringWriter csv = new StringWriter();
    JournalCsv.write(
        names.stream().map(name -> new EntryRow(Map.of("coffee", name))).toList(), csv);
    Files.writeString(folder.resolve("brews.csv"), csv.toString());
    Path out = Files.createDirectory(folder.resolve("out"));
    convertFiles(soffice.get(), out, List.of("names.xlsx", "brews.csv"));
    Recalculation calculated = Recalculation.of(Files.readAllBytes(out.resolve("names.xlsx")));
    Grid sheet = Layout.of(plan, Units.of(plan)).groups();
    for (int i = 0; i < names.size(); i++) {
      Cell cell = calculated.cell(sheet, "name", i);
      assertEquals(CellType.STRING, cell.getCellType(), names.get(i));
      assertEquals(names.get(i), cell.getStringCellValue());
    }
    try (XSSFWorkbook brews = new XSSFWorkbook(out.resolve("brews.xlsx").toFile())) {
      int column = EntryRow.COLUMNS.indexOf("coffee");
      for (int i = 0; i < names.size(); i++) {
        Cell cell = brews.getSheetAt(0).getRow(i + 1).getCell(column);
        assertEquals(CellType.STRING, cell.getCellType(), names.get(i));
        assertEquals("'" + names.get(i), cell.getStringCellValue());
      }
    }
  }

  /** Rows whose cups are found by summing over the drinkers. */
  private static int climbing(Recalculation workbook, Plan plan) {
    Grid odds = Layout.of(plan, Units.of(plan)).odds();
    return (int)
        IntStream.range(0, plan.groups().size())
            .filter(i -> workbook.cell(odds, "climb", i).getNumericCellValue() == 1)
            .count();
  }

  private void convert(Path soffice, Path out, Collection<String> names)
      throws IOException, InterruptedException {
    convertFiles(soffice, out, names.stream().map(name -> name + ".xlsx").toList());
  }

  private void convertFiles(Path soffice, Path out, List<String> files)
      throws IOException, InterruptedException {
    Path profile = Files.createDirectories(folder.resolve("profile").resolve("user"));
    Files.writeString(profile.resolve("registrymodifications.xcu"), ALWAYS_RECALCULATE);
    List<String> command =
        new ArrayList<>(
            List.of(
                soffice.toString(),
                "-env:UserInstallation=" + profile.getParent().toUri(),
                "--headless",
                "--convert-to",
                "xlsx",
                "--outdir",
                out.toString()));
    files.forEach(file -> command.add(folder.resolve(file).toString()));
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("soffice.log").toFile())
            .start();
    assertTrue(process.waitFor(SECONDS, TimeUnit.SECONDS), "LibreOffice did not finish");
  }

  private static Optional<Path> soffice() {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
        .map(folder -> Path.of(folder, "soffice"))
        .filter(Files::isExecutable)
        .findFirst();
  }
}
