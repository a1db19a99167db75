package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An event when it is over, from the journal into text, sheet and workbook. */
class ReportCommandTest {
  @TempDir private Path folder;
  private Path event;
  private Path journal;

  @BeforeEach
  void anEventThatIsOver() throws IOException {
    event = ChoirSupper.write(folder, "2027-06-05", ", bag: 1 kg, price: 25.00 EUR");
    journal = folder.resolve("brews.db");
    Run adjusted =
        Run.of(
            "adjust",
            event,
            "--journal",
            journal,
            "--no-sheets",
            "--batch",
            "coffee-1",
            "--beverage",
            "3600",
            "--reading",
            "2.05",
            "--reading",
            "2.05",
            "--reading",
            "2.05");
    assertEquals(ExitCode.DONE, adjusted.code(), adjusted.err());
    Run served =
        Run.of(
            "journal",
            "served",
            event,
            "--journal",
            journal,
            "--back",
            "Early=975 g",
            "--came",
            "Early=27");
    assertEquals(ExitCode.DONE, served.code(), served.err());
  }

  @Test
  void setsMeasuredBesidePlanned() throws IOException {
    Run run = Run.of("report", event, "--journal", journal);
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    String text = run.out().replace('\u00a0', ' ');
    assertTrue(text.contains("2.05 %"), text);
    assertTrue(text.contains("– was not measured"), text);
    assertTrue(text.contains("975 g"), text);
    text.lines().forEach(line -> assertTrue(line.length() <= 80 || line.startsWith("wrote"), line));
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("supper-report.pdf").toFile())) {
      String sheet = new PDFTextStripper().getText(pdf).replace('\u00a0', ' ');
      // 2.05 % × 3600 g / 366 g of dose
      assertTrue(sheet.contains("20.2 %"), sheet);
      assertTrue(sheet.contains("coffee-2"), sheet);
    }
  }

  @Test
  void theWorkbookHasTheNumbers() throws IOException {
    Run.of("report", event, "--journal", journal);
    try (XSSFWorkbook book =
        new XSSFWorkbook(Files.newInputStream(folder.resolve("supper-report.xlsx")))) {
      XSSFRow batch = book.getSheet("Batches").getRow(1);
      assertEquals("coffee-1", batch.getCell(1).getStringCellValue());
      assertEquals(3600, batch.getCell(7).getNumericCellValue(), 1e-9);
      assertEquals(2.05, batch.getCell(9).getNumericCellValue(), 1e-9);
      XSSFRow early = book.getSheet("Groups").getRow(1);
      assertEquals(27, early.getCell(3).getNumericCellValue(), 1e-9);
      // (5850 − 975) / 194.97 g a cup: 200 ml at 75 °C (974.85 g/l), no spill
      assertEquals(25, early.getCell(5).getNumericCellValue(), 0.1);
      // A sixth of the group's coffee came back; half of the dose of 732 g was the group's:
      // 366 g × 975 / 5850 = 61 g at 25 EUR a kilogram are 1.53 EUR
      assertEquals(1.53, early.getCell(7).getNumericCellValue(), 0.011);
      assertEquals("=Late", book.getSheet("Groups").getRow(2).getCell(1).getStringCellValue());
      assertEquals(0, book.getSheet("Groups").getRow(2).getCell(6).getNumericCellValue(), 0);
    }
  }
}
