package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets in another language: by the event file, by the option, by a file of a firm's own. */
class LanguageTest {
  /** Shorter ones may be the same in two languages, or a part of somebody's name. */
  private static final int TELLING = 12;

  private static final String EVENT =
      """
      event: Cena del coro
      %s
      coffee: {name: Casa, extraction: 19 %%, absorption: 2.1 g/g, concentrate: {ratio: 13}}
      groups: [{name: Todos, headcount: 40, cup: 200 ml, strength: 1.30 %%}]
      """;

  @TempDir private Path folder;

  private Path event(String... lines) throws IOException {
    return Files.writeString(
        folder.resolve("cena.yaml"), EVENT.formatted(String.join("\n", lines)));
  }

  private static String printed(Path file) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
    }
  }

  private static Properties words(String language) throws IOException {
    Properties words = new Properties();
    words.load(
        new StringReader(Files.readString(Path.of("templates/words_" + language + ".properties"))));
    return words;
  }

  @ParameterizedTest
  @ValueSource(strings = {"es", "fr", "de"})
  void noEnglishIsLeftOnTheSheets(String language) throws IOException {
    Run run =
        Run.of("plan", "samples/harvest-supper.yaml", "--language", language, "--out", folder);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    String text = printed(folder.resolve("harvest-supper-plan.pdf"));
    String typed = Files.readString(Path.of("samples/harvest-supper.yaml"));
    Properties english = words("en");
    Properties other = words(language);
    Set<String> left = new TreeSet<>();
    int said = 0;
    for (String key : english.stringPropertyNames()) {
      String word = english.getProperty(key).replace('~', ' ');
      String translated = other.getProperty(key).replace('~', ' ');
      boolean told = word.contains("{{") || word.length() < TELLING || typed.contains(word);
      if (!told && !translated.contains(word)) {
        if (text.replace('\u00a0', ' ').contains(word)) {
          left.add(key + ": " + word);
        }
        said += text.replace('\u00a0', ' ').contains(translated) ? 1 : 0;
      }
    }
    assertEquals(Set.of(), left);
    assertTrue(said > 40, "words of the language that are printed: " + said);
    assertTrue(text.contains("1,30\u00a0%"), "a decimal comma");
    assertFalse(text.contains("1.30\u00a0%"), "no decimal point");
    assertTrue(
        run.out().contains("Overview") || run.out().contains("Strength"), "a terminal in English");
  }

  @Test
  void theEventSaysItAndTheOptionWins() throws IOException {
    Path event = event("language: es");
    assertEquals(ExitCode.DONE, Run.of("plan", event).code());
    assertTrue(printed(folder.resolve("cena-plan.pdf")).contains("Quién lo bebe"));
    assertEquals(ExitCode.DONE, Run.of("plan", event, "--language", "fr").code());
    assertTrue(printed(folder.resolve("cena-plan.pdf")).contains("Qui le boit"));
  }

  @Test
  void aLanguageOfAFirmsOwnIsAFileMore() throws IOException {
    Path event = event("language: it");
    Run unknown = Run.of("plan", event);
    assertEquals(ExitCode.PROBLEMS, unknown.code());
    assertTrue(unknown.err().contains("one of de, en, es, fr"), unknown.err());
    Path own = Files.createDirectory(folder.resolve("ours"));
    Files.writeString(own.resolve("words_it.properties"), "overview.who = Chi lo beve\n");
    Run run = Run.of("plan", event, "--templates", own);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    String text = printed(folder.resolve("cena-plan.pdf"));
    assertTrue(text.contains("Chi lo beve"));
    assertTrue(text.contains("Where the brew water goes"), "English where nothing else is said");
  }

  @Test
  void aLanguageWithoutWordsIsAProblemOfTheFile() throws IOException {
    Path event = event("language: it");
    String expected = event + ":" + line(event, "language: it") + ":11: there are no words in";
    for (String command : new String[] {"check", "plan", "report"}) {
      Run run = Run.of(command, event);
      assertEquals(ExitCode.PROBLEMS, run.code(), command);
      assertTrue(run.err().replaceAll("\\s+", " ").contains(expected), run.err());
    }
    assertEquals(ExitCode.DONE, Run.of("plan", event, "--language", "fr").code());
    Path own = Files.createDirectory(folder.resolve("ours"));
    Files.writeString(own.resolve("words_it.properties"), "overview.who = Chi lo beve\n");
    assertEquals(ExitCode.DONE, Run.of("check", event, "--templates", own).code());
  }

  private static int line(Path file, String text) throws IOException {
    return Files.readAllLines(file).indexOf(text) + 1;
  }

  @Test
  void wordsThatNothingSaysAreNamedWithTheNearest() throws IOException {
    Path own = Files.createDirectory(folder.resolve("ours"));
    Files.writeString(
        own.resolve("words_fr.properties"),
        """
        overview.whoo = Qui
        overview.who = Qui
        caution.caffeine = Au plus {{mots}} par tasse
        caution.decaf = Sans {{nothing}}
        """);
    Path event = event("language: es");
    Run run = Run.of("check", event, "--templates", own);
    String said = run.err().replaceAll("\\s+", " ");
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(
        said.contains(
            "words_fr.properties:1:1: nothing is said by the words 'overview.whoo'; did you mean"
                + " 'overview.who'?"),
        said);
    assertTrue(
        said.contains(
            "words_fr.properties:3:1: there is nothing called 'mots' in the words"
                + " 'caution.caffeine'; did you mean 'most'?"),
        said);
    assertTrue(said.contains("words_fr.properties:4:1: there is nothing called 'nothing'"), said);
    assertEquals(ExitCode.PROBLEMS, Run.of("plan", event, "--templates", own).code());
    assertFalse(Files.exists(folder.resolve("cena-plan.pdf")));
  }

  @Test
  void wordsOfAFirmsOwnTemplateAreKnown() throws IOException {
    Path own = Files.createDirectory(folder.resolve("ours"));
    Files.writeString(
        own.resolve("remarks.xhtml"), "<div class=\"sheet\">{{>word.our.motto}}</div>");
    Files.writeString(own.resolve("words_es.properties"), "our.motto = Siempre fresco\n");
    Run run = Run.of("plan", event("language: es"), "--templates", own);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(printed(folder.resolve("cena-plan.pdf")).contains("Siempre fresco"));
  }

  @Test
  void theShippedWordsCopiedOutAreRight() throws IOException {
    Path own = folder.resolve("ours");
    assertEquals(ExitCode.DONE, Run.of("templates", own).code());
    Run run = Run.of("check", event("language: es"), "--templates", own);
    assertEquals(ExitCode.DONE, run.code(), run.err());
  }

  @Test
  void aBrokenWordIsNamedWithItsFileAndLine() throws IOException {
    Path own = Files.createDirectory(folder.resolve("ours"));
    Files.writeString(
        own.resolve("words_es.properties"),
        "# ours\noverview.strength.hint = casi {{strength.likly}}\n");
    Run run = Run.of("plan", event("language: es"), "--templates", own);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(
        run.err()
            .replaceAll("\\s+", " ")
            .contains("words_es.properties:2: there is nothing called"),
        run.err());
    assertFalse(Files.exists(folder.resolve("cena-plan.pdf")));
  }

  @Test
  void aBrokenSentenceIsNamedLikewise() throws IOException {
    Path own = Files.createDirectory(folder.resolve("ours"));
    Files.writeString(
        own.resolve("words_es.properties"), "# ours\n\nnote.density = casi {{desnity}}\n");
    Run run = Run.of("plan", event("language: es"), "--templates", own);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(
        run.err()
            .replaceAll("\\s+", " ")
            .contains("words_es.properties:3:1: there is nothing called"),
        run.err());
  }

  @Test
  void whatIsNoLanguageIsAProblemOfTheFileAndAMisuseOfTheOption() throws IOException {
    Run file = Run.of("check", event("language: castellano"));
    assertEquals(ExitCode.PROBLEMS, file.code());
    assertTrue(file.err().contains("cena.yaml:2:11"), file.err());
    assertTrue(file.err().replaceAll("\\s+", " ").contains("de, en, es and fr"), file.err());
    assertEquals(2, Run.of("plan", event(""), "--language", "castellano").code());
  }

  /** Paper and units by country: CLDR, paper sizes and measurement systems. */
  @ParameterizedTest
  @CsvSource({"es,A4,g", "es-US,LETTER,oz", "es-MX,LETTER,g", "fr-CA,LETTER,g", "de-CH,A4,g"})
  void paperAndUnitsFollowTheCountry(String tag, String paper, String unit) throws IOException {
    assertEquals(ExitCode.DONE, Run.of("plan", event("language: " + tag)).code());
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("cena-plan.pdf").toFile())) {
      float height = pdf.getPage(0).getMediaBox().getHeight();
      assertEquals(paper.equals("A4") ? 842 : 792, height, 1);
      String text = new PDFTextStripper().getText(pdf);
      assertTrue(text.contains("\u00a0" + unit), unit);
    }
    List<String> given = List.of("language: es-US", "units: metric", "paper: A4");
    assertEquals(ExitCode.DONE, Run.of("plan", event(given.toArray(String[]::new))).code());
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("cena-plan.pdf").toFile())) {
      assertEquals(842, pdf.getPage(0).getMediaBox().getHeight(), 1);
    }
  }
}
