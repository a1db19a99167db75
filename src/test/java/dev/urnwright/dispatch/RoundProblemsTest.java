package dev.urnwright.dispatch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.form.WorkbookCells;
import dev.urnwright.input.RoundFile;
import dev.urnwright.input.RoundReader;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Strength;
import dev.urnwright.round.Drop;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong with a round's files is told at its place, all at once. */
class RoundProblemsTest {
  private static final String SITES =
      """
      site,leg,stop,window,carafes,strength
      Mill House,North,1,06:30-07:00,4,medium
      """;

  @TempDir private Path folder;

  @Test
  void everyCellOfATableThatIsWrongIsNamed() throws IOException {
    assertEquals(
        List.of(
            "sites.csv:2:2: no leg is called 'Nort'; did you mean 'North'? known: North, South",
            "sites.csv:2:6: no strength is called 'mediun'; did you mean 'medium'? known: medium,"
                + " strong",
            "sites.csv:3:4: '6-7' is not a time of the day; expected from and to such as"
                + " 08:00-10:00",
            "sites.csv:3:5: '2.5' is not a whole number; expected a whole number such as 4"),
        problems(
            Rounds.SMALL,
            """
            site,leg,stop,window,carafes,strength
            Mill House,Nort,1,06:30-07:00,4,mediun
            Lock House,North,2,6-7,2.5,medium
            """));
  }

  @Test
  void headingsAreChecked() throws IOException {
    List<String> found =
        problems(
            Rounds.SMALL,
            """
            site,leg,stop,windw,carafes,strength,# mine
            Mill House,North,1,06:30-07:00,4,medium,anything
            """);

    assertEquals(1, found.size());
    assertTrue(
        found.get(0).startsWith("sites.csv:1:4: unknown heading 'windw'; did you mean 'window'?"));
  }

  @Test
  void aQuotedValueMayRunOverLines() throws IOException {
    List<String> found =
        problems(
            Rounds.SMALL,
            """
            site,leg,stop,carafes,strength,address
            Mill House,North,1,4,medium,"14 Weir Street,
            at the back"
            Lock House,North,x,4,medium,
            """);

    // a name is one line; and the row after it stands on line 4
    assertEquals(2, found.size());
    assertTrue(found.get(0).startsWith("sites.csv:2:6: "));
    assertTrue(found.get(1).startsWith("sites.csv:4:3: "));
  }

  @Test
  void aRowSaidTwiceIsASlip() throws IOException {
    List<String> found =
        problems(
            Rounds.SMALL,
            """
            site,leg,stop,carafes,strength,weekdays
            Mill House,North,1,4,medium,mon-wed
            Mill House,,,3,medium,thu fri
            Mill House,,,3,medium,wed
            """);

    assertEquals(
        List.of(
            "sites.csv:4:1: 'Mill House' gets the same in a second row, on the same days; expected"
                + " one row; the first is on line 2"),
        found);
  }

  @Test
  void problemsOfBothFilesAreTold() throws IOException {
    List<String> found =
        problems(Rounds.SMALL.replace("count: 40", "count: none"), SITES.replace("medium", "mild"));

    assertEquals(2, found.size());
    assertTrue(found.get(0).startsWith("round.yaml:7:27: "), found.get(0));
    assertTrue(found.get(1).startsWith("sites.csv:2:6: no strength is called 'mild'"));
  }

  @Test
  void exceptionsNameSitesOfTheTable() throws IOException {
    List<String> found =
        problems(
            Rounds.SMALL + "exceptions: [{date: 2027-03-01, site: Mil House, closed: holiday}]\n",
            SITES);

    assertEquals(1, found.size());
    assertTrue(found.get(0).contains("no site is called 'Mil House'; did you mean 'Mill House'?"));
  }

  @Test
  void aDayWithoutDeliveriesIsRefused() throws IOException {
    RoundFile file = Rounds.good(folder, Rounds.SMALL, SITES);

    Checked<Dispatch> sunday =
        new Dispatcher(file.round(), List.of(), true).dispatch(LocalDate.of(2027, 3, 7));

    assertTrue(
        sunday
            .problems()
            .get(0)
            .wrong()
            .startsWith("nothing is delivered on 2027-03-07, a Sunday"));
  }

  @Test
  void tooFewCarafesAreRefused() throws IOException {
    RoundFile file = Rounds.good(folder, Rounds.SMALL, SITES.replace(",4,", ",41,"));

    Checked<Dispatch> day =
        new Dispatcher(file.round(), List.of(), true).dispatch(LocalDate.of(2027, 3, 1));

    assertEquals(
        "41 of Carafe are needed on 2027-03-01, and 40 of 40 are in",
        day.problems().get(0).wrong());
  }

  @Test
  void aRunThatCantBeMadeSpeaksOfCarafes() throws IOException {
    String round = Rounds.SMALL.replace("kitchen: {", "kitchen: {opens: 05:30, ");
    RoundFile file = Rounds.good(folder, round, SITES);

    Checked<Dispatch> day =
        new Dispatcher(file.round(), List.of(), true).dispatch(LocalDate.of(2027, 3, 1));

    String said = day.problems().get(0).toString();
    assertTrue(said.contains("4 carafes"), said);
    assertTrue(said.contains("earlier"), said);
  }

  @Test
  void semicolonsAndDecimalCommasAreRead() throws IOException {
    RoundFile file =
        Rounds.good(
            folder,
            Rounds.SMALL,
            "\uFEFFSite;Leg;Stop;People;Cup;Cups each;Strength\r\n"
                + "Mill House;North;1;20;0,2 l;1,5;1,35 %\r\n");

    Drop drop = file.round().drops().get(0);
    assertEquals(Strength.ofPercent(1.35), drop.content().strength());
    // 20 · 1.5 · 0.2 l = 6 l are 3 carafes of 2 l
    assertEquals(3, drop.par().carafes());
  }

  @Test
  void aWorkbookSaysTheSameWithSheetAndCell() throws IOException {
    Path book = folder.resolve("sites.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(book)) {
      XSSFSheet sheet = workbook.createSheet("Sites");
      row(sheet.createRow(0), "site", "leg", "stop", "carafes", "strength");
      row(sheet.createRow(1), "Mill House", "North", "1", "4", "medium");
      Row second = sheet.createRow(2);
      row(second, "Lock House", "North", "2", "many", "medium");
      second.getCell(2).setCellFormula("1+1");
      workbook.write(out);
    }
    Path round =
        Files.writeString(
            folder.resolve("round.yaml"), Rounds.SMALL.replace("sites.csv", "sites.xlsx"));

    Checked<RoundFile> read = new RoundReader(WorkbookCells::read).open(round, Optional.empty());

    assertEquals(
        List.of("sites.xlsx!Sites!C3: here stands a formula; expected the value itself, typed"),
        told(read.problems()));
  }

  @Test
  void aWorkbookIsReadAsItShows() throws IOException {
    Path book = folder.resolve("sites.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(book)) {
      XSSFSheet sheet = workbook.createSheet("sites");
      row(sheet.createRow(0), "site", "leg", "stop", "carafes", "strength");
      Row first = sheet.createRow(1);
      row(first, "Mill House", "North", "", "", "medium");
      first.getCell(2).setCellValue(7);
      first.getCell(3).setCellValue(4);
      row(sheet.createRow(2), "Lock House", "North", "x", "2", "medium");
      workbook.write(out);
    }
    Path round =
        Files.writeString(
            folder.resolve("round.yaml"), Rounds.SMALL.replace("sites.csv", "sites.xlsx"));

    Checked<RoundFile> read = new RoundReader(WorkbookCells::read).open(round, Optional.empty());

    assertEquals(1, read.problems().size());
    assertTrue(told(read.problems()).get(0).startsWith("sites.xlsx!sites!C3: "));
  }

  /** A spreadsheet that opens a .csv calls its sheet after the file. */
  @Test
  void aTableIsFoundByItsNameOrAsTheOnlyOne() throws IOException {
    assertEquals(List.of(), ofSheets("coffee-sites"));
    assertEquals(List.of(), ofSheets("Prices", "SITES"));
    assertEquals(
        List.of(
            "sites.xlsx: this workbook has no sheet 'Sites'; expected the table on a sheet of that"
                + " name, or on the only one"),
        ofSheets("coffee-sites", "Prices"));
  }

  /** What is wrong with a workbook whose last sheet has a good table. */
  private List<String> ofSheets(String... names) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(folder.resolve("sites.xlsx"))) {
      for (String name : names) {
        workbook.createSheet(name);
      }
      XSSFSheet sheet = workbook.getSheetAt(names.length - 1);
      row(sheet.createRow(0), "site", "leg", "stop", "carafes", "strength");
      row(sheet.createRow(1), "Mill House", "North", "1", "4", "medium");
      workbook.write(out);
    }
    Path round =
        Files.writeString(
            folder.resolve("round.yaml"), Rounds.SMALL.replace("sites.csv", "sites.xlsx"));
    return told(new RoundReader(WorkbookCells::read).open(round, Optional.empty()).problems());
  }

  private static void row(Row row, String... values) {
    for (int i = 0; i < values.length; i++) {
      row.createCell(i).setCellValue(values[i]);
    }
  }

  private List<String> problems(String round, String sites) throws IOException {
    return told(Rounds.read(folder, round, sites).problems());
  }

  private List<String> told(List<Problem> problems) {
    return problems.stream().map(problem -> problem.toString().replace(folder + "/", "")).toList();
  }
}
