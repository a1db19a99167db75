package dev.urnwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.samskivert.mustache.Mustache;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The shipped files of words: each language says all that English says, of the same values. */
class WordFilesTest {
  private static final Pattern MARK = Pattern.compile("\\{\\{[#^/]?(.*?)}}");
  private static final Pattern WORD = Pattern.compile("\\{\\{>word\\.([\\w.-]+)}}");
  private static final Path FOLDER = Path.of("templates");

  private static WordFile file(String language) {
    return Words.shipped(Locale.forLanguageTag(language));
  }

  @ParameterizedTest
  @ValueSource(strings = {"es", "fr", "de"})
  void everyKeyOfEnglishHasWordsAndNoOther(String language) {
    assertEquals(file("en").lines().keySet(), file(language).lines().keySet());
  }

  @ParameterizedTest
  @ValueSource(strings = {"es", "fr", "de"})
  void nothingIsFilledInThatEnglishDoesNotHave(String language) {
    file(language)
        .lines()
        .forEach(
            (key, entry) -> {
              Set<String> english =
                  marks(Words.ENGLISH.find(key).map(Words.Found::words).orElse(""));
              assertTrue(english.containsAll(marks(entry.words())), key + ": " + entry.words());
              // A plural may be the same as its singular; whatever else is told must be told.
              english.removeAll(marks(entry.words()));
              english.removeIf(mark -> mark.equals("one") || mark.endsWith(".one"));
              assertEquals(Set.of(), english, key);
            });
  }

  private static Set<String> marks(String words) {
    Set<String> marks = new TreeSet<>();
    Matcher mark = MARK.matcher(words);
    while (mark.find()) {
      marks.add(mark.group(1));
    }
    return marks;
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es", "fr", "de"})
  void everySectionIsClosed(String language) {
    file(language).lines().values().forEach(entry -> Mustache.compiler().compile(entry.words()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es", "fr", "de"})
  void noKeyStandsTwice(String language) throws IOException {
    List<String> keys =
        Files.readAllLines(FOLDER.resolve("words_" + language + ".properties")).stream()
            .filter(line -> !line.startsWith("#") && line.contains(" = "))
            .map(line -> line.substring(0, line.indexOf(" = ")))
            .toList();
    assertEquals(new TreeSet<>(keys).size(), keys.size());
    assertEquals(file(language).lines().size(), keys.size());
  }

  @Test
  void everyWordOfTheTemplatesExists() throws IOException {
    Set<String> missing = new TreeSet<>();
    int found = 0;
    try (Stream<Path> templates = Files.list(FOLDER)) {
      for (Path template : templates.filter(f -> f.toString().endsWith(".xhtml")).toList()) {
        Matcher word = WORD.matcher(Files.readString(template));
        while (word.find()) {
          found++;
          if (Words.ENGLISH.find(word.group(1)).isEmpty()) {
            missing.add(template + ": " + word.group(1));
          }
        }
      }
    }
    assertEquals(Set.of(), missing);
    assertTrue(found > 100, "templates call for words: " + found);
  }

  @Test
  void aSayingIsFilledInAndAgreesWithItsNumber() {
    Saying one = Saying.of("run.tap").with("number", 1).with("of", 2);
    assertEquals("tap 1 of 2", one.toString());
    Words french = new Words(Locale.FRENCH, List.of(file("fr"), file("en")));
    // In French nothing and one and a half take the singular, in English one alone (CLDR, plurals).
    assertTrue(french.count(0).one());
    assertFalse(Words.ENGLISH.count(0).one());
    assertTrue(Words.ENGLISH.count(1).one());
    assertFalse(french.count(2).one());
  }

  @Test
  void whatAFirmLeavesOutIsTheShippedWord() {
    WordFile own = WordFile.of("words_it.properties", "head.page = pagina\n# more to come\n");
    Words words = new Words(Locale.ITALIAN, List.of(own, file("en")));
    assertEquals("pagina", words.text("head.page"));
    assertEquals("of", words.text("head.of"));
    assertEquals(1, words.find("head.page").orElseThrow().line());
  }

  @Test
  void numbersInWordsFollowTheCountry() {
    String german = new Words(Locale.GERMANY, List.of(file("de"))).text("note.close-strengths");
    assertTrue(german.contains("0,24\u00a0%"), german);
    Locale mexico = Locale.forLanguageTag("es-MX");
    String spanish = new Words(mexico, List.of(file("es"))).text("note.close-strengths");
    assertTrue(spanish.contains("0.24\u00a0%"), spanish);
  }
}
