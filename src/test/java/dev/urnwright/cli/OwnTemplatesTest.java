package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A firm's own templates, from copying them out to what it may get wrong. */
class OwnTemplatesTest {
  @TempDir private Path folder;
  private Path own;
  private Path event;

  @BeforeEach
  void copyOut() throws IOException {
    own = folder.resolve("our-sheets");
    event = Files.copy(Path.of("samples/corner-cafe.yaml"), folder.resolve("cafe.yaml"));
    Run run = Run.of("templates", own);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().contains("wrote " + own.resolve("run.xhtml")), run.out());
  }

  @Test
  void copiesAreTheShippedFiles() throws IOException {
    for (String name : new String[] {"prep-sheets.xhtml", "labels.xhtml", "sheets.css"}) {
      assertEquals(
          Files.readString(Path.of("templates", name)), Files.readString(own.resolve(name)), name);
    }
    Run again = Run.of("templates", own);
    assertEquals(ExitCode.PROBLEMS, again.code());
    assertTrue(again.err().contains("is there already and was left alone"), again.err());
  }

  @Test
  void wordsAndLogoArePrintedAndMissingFilesAreTheShippedOnes() throws IOException {
    ImageIO.write(
        new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB),
        "png",
        own.resolve("logo.png").toFile());
    change(
        "overview.xhtml", "<h1>{{>word.overview.title}}</h1>", "<h1>Tallow Lane at a glance</h1>");
    change("head.xhtml", "<tr>", "<tr><td><img src=\"logo.png\" alt=\"\" /></td>");
    Files.delete(own.resolve("sheets.css"));
    Run run = plan();
    assertEquals(ExitCode.DONE, run.code(), run.err());
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("cafe-plan.pdf").toFile())) {
      assertTrue(new PDFTextStripper().getText(pdf).contains("Tallow Lane at a glance"));
      PDResources resources = pdf.getPage(0).getResources();
      int pictures = 0;
      for (COSName name : resources.getXObjectNames()) {
        pictures += resources.isImageXObject(name) ? 1 : 0;
      }
      assertEquals(1, pictures);
    }
  }

  @Test
  void everyCommandThatPrintsSheetsTakesThem() throws IOException {
    Path supper = ChoirSupper.write(folder, "2027-06-05", "");
    change(
        "overview.xhtml", "<h1>{{>word.overview.title}}</h1>", "<h1>Tallow Lane at a glance</h1>");
    change("left-sheets.xhtml", "{{>remarks}}", "<p>Tallow Lane, what is left</p>");
    change("report.xhtml", "<body>", "<body><p>Tallow Lane looks back</p>");
    Path sheets = folder.resolve("out/sheets");
    Object[] brewed = {"--no-journal", "--batch", "coffee-1", "--beverage", "3600"};
    Run adjust = Run.of(with(brewed, "adjust", supper, "--templates", own, "--out", sheets));
    assertEquals(ExitCode.DONE, adjust.code(), adjust.err());
    assertTrue(printed(sheets.resolve("supper-left.pdf")).contains("Tallow Lane, what is left"));
    Run.of("ladder", supper, "--templates", own, "--tasted", "8");
    assertTrue(printed(folder.resolve("supper-left.pdf")).contains("Tallow Lane at a glance"));
    Path journal = folder.resolve("brews.db");
    Run report = Run.of("report", supper, "--templates", own, "--journal", journal);
    assertEquals(ExitCode.DONE, report.code(), report.err());
    assertTrue(printed(folder.resolve("supper-report.pdf")).contains("Tallow Lane looks back"));
  }

  private static Object[] with(Object[] more, Object... some) {
    return Stream.concat(Stream.of(some), Stream.of(more)).toArray();
  }

  private static String printed(Path file) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(pdf);
    }
  }

  @Test
  void anUnknownNameIsFound() throws IOException {
    change("filling.xhtml", "{{strength.wanted}}", "{{strength.wnated}}");
    isRefused("filling.xhtml:10: there is nothing called 'strength.wnated'");
  }

  @Test
  void aSectionLeftOpenIsFound() throws IOException {
    Files.writeString(own.resolve("shopping.xhtml"), "<div>\n{{#closing}}\n</div>\n");
    isRefused("shopping.xhtml:2: ");
  }

  @Test
  void aTagLeftOpenIsFound() throws IOException {
    Files.writeString(own.resolve("remarks.xhtml"), "<div>\n<p>Ours\n</div>\n");
    isRefused("remarks.xhtml:3: not well-formed XHTML: ");
  }

  @Test
  void aPictureElsewhereIsNotFetched() throws IOException {
    change("head.xhtml", "<tr>", "<tr><td><img src=\"../secret.png\" alt=\"\" /></td>");
    isRefused("no file of that name is in the folder " + own + ": ../secret.png");
  }

  @Test
  void aTemplateElsewhereIsNotTakenIn() throws IOException {
    change("remarks.xhtml", "<div", "{{>../secret}}<div");
    isRefused("no file of that name is in the folder " + own + ": ../secret.xhtml");
  }

  /** Which would go on until the memory is full. */
  @Test
  void aTemplateThatTakesInItselfIsRefused() throws IOException {
    change("overview.xhtml", "<h1>", "{{>overview}}<h1>");
    isRefused("overview.xhtml: is taken in over and over; does it take in itself?");
  }

  /** Or templates could reach into Java itself. */
  @ParameterizedTest
  @ValueSource(strings = {"getClass", "class", "class.classLoader", "heading.getClass.getName"})
  void templatesSeeFiguresAndWordsAlone(String name) throws IOException {
    change("overview.xhtml", "<h1>", "{{" + name + "}}<h1>");
    isRefused("there is nothing called '");
  }

  @Test
  void whatTheLayoutCannotPrintIsRefusedInWords() throws IOException {
    change("overview.xhtml", "<h1>", "<div class=\"chart\" title=\"99\"></div><h1>");
    isRefused("with these templates: there is no chart of the number '99'; take your changes back");
    copyAgain("overview.xhtml");
    Files.writeString(own.resolve("sheets.css"), "* { font-size: 0 }");
    isRefused(own + ": the sheets can't be laid out with these templates: ");
    Files.writeString(own.resolve("sheets.css"), "@import url('http://127.0.0.1:9/x.css');");
    isRefused("no file of that name is in the folder " + own + ": http://127.0.0.1:9/x.css");
  }

  /** A head that is larger than its page asks for another page, and that for one more. */
  @Test
  void pagesWithoutAnEndAreRefused() throws IOException {
    change("sheets.css", ".halves {", "* { border: 1000cm solid black } .halves {");
    isRefused(
        ": the sheets can't be laid out with these templates: they want more than 10000 pages;"
            + " take your changes back one by one to find which");
  }

  private void copyAgain(String name) throws IOException {
    Files.copy(Path.of("templates", name), own.resolve(name), StandardCopyOption.REPLACE_EXISTING);
  }

  @Test
  void aLinkOutOfTheFolderIsNotFollowed() throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.css"), "body { color: red }");
    Files.delete(own.resolve("labels.xhtml"));
    Files.createSymbolicLink(own.resolve("labels.xhtml"), secret);
    assertEquals(ExitCode.DONE, plan().code(), "the shipped file stands in for the link");
  }

  @Test
  void aFolderThatIsNoneIsRefused() {
    Run run = Run.of("plan", event, "--templates", folder.resolve("nowhere"));
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(run.err().contains("is not a folder; make one with 'urnwright templates'"));
  }

  private Run plan() {
    return Run.of("plan", event, "--templates", own);
  }

  private void isRefused(String message) {
    Run run = plan();
    assertEquals(ExitCode.PROBLEMS, run.code(), run.err());
    assertTrue(run.err().contains(message), run.err());
    assertFalse(Files.exists(folder.resolve("cafe-plan.pdf")));
    assertFalse(Files.exists(folder.resolve("cafe-plan.xlsx")));
  }

  private void change(String name, String shipped, String ours) throws IOException {
    Path file = own.resolve(name);
    String text = Files.readString(file);
    Files.writeString(
        file, text.replaceFirst(Pattern.quote(shipped), Matcher.quoteReplacement(ours)));
  }
}
