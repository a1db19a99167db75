package dev.urnwright.wording;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.MustacheException;
import com.samskivert.mustache.Template;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.NumberStyle;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** One language's words, and how it writes numbers. */
public final class Words {
  /** How a template or other words call for words: {@code {{>word.run.title}}}. */
  public static final String MARK = "word.";

  /** The words that the program ships in English, which every key has. */
  public static final Words ENGLISH = new Words(Locale.ENGLISH, List.of(shipped(Locale.ENGLISH)));

  private static final String FOLDER = "/templates/";
  private static final String JOIN = "list";

  private final Locale locale;
  private final NumberStyle style;
  private final List<WordFile> files;
  private final Mustache.Compiler compiler;
  private final Map<String, Template> compiled = new ConcurrentHashMap<>();

  /**
   * Words of a language.
   *
   * @param locale the language, and where it is spoken if that matters
   * @param files where to look for words, the first that has them counts
   */
  public Words(Locale locale, List<WordFile> files) {
    this.locale = locale;
    this.style = NumberStyle.of(locale);
    this.files = List.copyOf(files);
    this.compiler = Mustache.compiler().escapeHTML(false).strictSections(true);
  }

  /** What a language's file is called. */
  public static String fileName(Locale locale) {
    return "words_" + locale.getLanguage() + ".properties";
  }

  /** The shipped words of a language. */
  static WordFile shipped(Locale locale) {
    String name = fileName(locale);
    try (InputStream in = Words.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IllegalStateException("no words are shipped as " + name);
      }
      return WordFile.of(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The language. */
  public Locale locale() {
    return locale;
  }

  /** How it writes numbers. */
  public NumberStyle style() {
    return style;
  }

  /**
   * The words of a key, with marks for what goes into them.
   *
   * @throws IllegalArgumentException if no file has it
   */
  public String raw(String key) {
    return find(key).map(Found::words).orElseThrow(() -> unknown(key));
  }

  /** The words of a key and where they stand. */
  public Optional<Found> find(String key) {
    return files.stream().flatMap(file -> found(file, key).stream()).findFirst();
  }

  /** Numbers in words have a point in every file, since a country may change it. */
  private Optional<Found> found(WordFile file, String key) {
    return Optional.ofNullable(file.lines().get(key))
        .map(entry -> new Found(file.name(), entry.line(), style.of(entry.words())));
  }

  /**
   * Words that were found.
   *
   * @param file that they stand in
   * @param line from 1
   * @param words with marks
   */
  public record Found(String file, int line, String words) {}

  /**
   * A saying in these words.
   *
   * @throws BrokenWordsException if the words need something that it lacks
   */
  public String text(Saying saying) {
    String words = raw(saying.key());
    if (words.indexOf('{') < 0) {
      return words;
    }
    Map<String, Object> values = new HashMap<>();
    saying.values().forEach((name, value) -> values.put(name, shown(value)));
    try {
      return compiled.computeIfAbsent(saying.key(), key -> compiler.compile(words)).execute(values);
    } catch (MustacheException | UnsupportedOperationException wrong) {
      throw broken(saying.key(), wrong);
    }
  }

  private BrokenWordsException broken(String key, RuntimeException wrong) {
    Found found = find(key).orElseThrow(() -> unknown(key));
    String what =
        wrong instanceof MustacheException.Context missing
            ? "there is nothing called '" + missing.key + "'"
            : String.valueOf(wrong.getMessage());
    return new BrokenWordsException(
        found.file() + ":" + found.line() + ": " + what + "; the shipped words are right", wrong);
  }

  /** The text of a key that needs no values. */
  public String text(String key) {
    return text(Saying.of(key));
  }

  /** A count in this language. */
  public Counted count(long number) {
    return new Counted(number, isOne(number));
  }

  /** French takes the singular below two, the others at one. */
  private boolean isOne(long number) {
    return locale.getLanguage().equals("fr") ? Math.abs(number) < 2 : number == 1;
  }

  private Object shown(Object value) {
    if (value instanceof Figure figure) {
      return figure.in(style);
    }
    if (value instanceof Saying part) {
      return text(part);
    }
    if (value instanceof Long number) {
      return count(number);
    }
    if (value instanceof List<?> parts) {
      return parts.stream()
          .map(part -> String.valueOf(shown(part)))
          .collect(Collectors.joining(raw(JOIN)));
    }
    if (value instanceof String || value instanceof Boolean || value instanceof LocalTime) {
      return value;
    }
    throw new IllegalArgumentException("words can't take a " + value.getClass().getName());
  }

  private static IllegalArgumentException unknown(String key) {
    return new IllegalArgumentException("no language has words for " + key);
  }
}
