package dev.urnwright.input;

import dev.urnwright.event.Paper;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.quantity.UnreadableException;
import dev.urnwright.wording.LanguageTag;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Binds the language of the sheets, and what is usual where it is spoken. */
final class LanguageBinder {
  private static final String EXPECTED =
      "expected a language such as es, or es-US with its country; sheets are known in de, en, es"
          + " and fr";

  static final Field<Locale> LANGUAGE =
      Field.optional(
          "language",
          new Scalar<>(
              Shape.Value.of(LanguageTag.PATTERN, EXPECTED),
              text ->
                  LanguageTag.read(text)
                      .orElseThrow(
                          () ->
                              new UnreadableException(
                                  Words.quoted(text) + " is no language", EXPECTED))),
          "what the sheets are written in; its country tells paper and units");

  /** Where people weigh and measure in US customary units. */
  private static final Set<String> CUSTOMARY = Set.of("US", "PR");

  /** Where paper is cut to Letter (CLDR, paper sizes). */
  private static final Set<String> LETTER =
      Set.of("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE");

  private LanguageBinder() {}

  /**
   * Complains of a language that has no words.
   *
   * @param typed what stands in the file
   * @param known the languages that have words
   */
  static void requireWords(Typed typed, Set<String> known, Problems problems) {
    if (!(typed instanceof Typed.Mapping file
        && file.at(LANGUAGE.name()).orElse(file) instanceof Typed.Text tag)) {
      return;
    }
    LanguageTag.read(tag.value())
        .filter(language -> !known.contains(language.getLanguage()))
        .ifPresent(
            language ->
                problems.at(
                    tag.location(),
                    "there are no words in the language " + Words.quoted(tag.value()),
                    "expected one of "
                        + String.join(", ", new TreeSet<>(known))
                        + ", or a file words_"
                        + language.getLanguage()
                        + ".properties in the folder named by --templates"));
  }

  static UnitSystem units(Optional<Locale> language) {
    return language.filter(locale -> CUSTOMARY.contains(locale.getCountry())).isPresent()
        ? UnitSystem.US
        : UnitSystem.METRIC;
  }

  /** By the country, or else as it goes with the units. */
  static Paper paper(Optional<Locale> language, UnitSystem units) {
    boolean letter =
        language
            .map(Locale::getCountry)
            .filter(country -> !country.isEmpty())
            .map(LETTER::contains)
            .orElse(units == UnitSystem.US);
    return letter ? Paper.LETTER : Paper.A4;
  }
}
