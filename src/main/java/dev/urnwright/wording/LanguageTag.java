package dev.urnwright.wording;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** How a language is written down: {@code es}, or {@code es-US} with the country. */
public final class LanguageTag {
  /** What every tag matches. */
  public static final String PATTERN = "^\\s*[A-Za-z]{2,3}(-[A-Za-z]{2})?\\s*$";

  private static final Pattern TAG = Pattern.compile(PATTERN);

  private LanguageTag() {}

  /** The language, and its country if that is told; empty where there is no such language. */
  public static Optional<Locale> read(String text) {
    return Optional.of(text.strip())
        .filter(tag -> TAG.matcher(tag).matches())
        .map(Locale::forLanguageTag)
        .filter(locale -> isIn(Locale.getISOLanguages(), locale.getLanguage()))
        .filter(
            locale ->
                locale.getCountry().isEmpty()
                    || isIn(Locale.getISOCountries(), locale.getCountry()));
  }

  private static boolean isIn(String[] codes, String code) {
    return Arrays.asList(codes).contains(code);
  }
}
