package dev.urnwright.sheet;

import dev.urnwright.wording.Words;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;

/** A day spelt out, since 04/05 is April to some and May to others. */
public final class DayWords {
  private static final DateTimeFormatter ENGLISH =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);

  private DayWords() {}

  /** {@code Tuesday 2 March 2027}. */
  public static String of(LocalDate date) {
    return of(date, Words.ENGLISH);
  }

  /** The same as those words' language writes it. */
  public static String of(LocalDate date, Words words) {
    DateTimeFormatter format =
        words.locale().getLanguage().equals(Locale.ENGLISH.getLanguage())
            ? ENGLISH
            : DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL).withLocale(words.locale());
    return format.format(date);
  }
}
