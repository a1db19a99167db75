package dev.urnwright.wording;

import java.io.IOException;
import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A file of words: {@code key = words}, one a line, in UTF-8 (the lines of {@link Properties}). A
 * {@code ~} is a space at which no line breaks.
 *
 * @param name of the file
 * @param lines each key's words and where they stand
 */
public record WordFile(String name, Map<String, Entry> lines) {
  /** A value's mark: not those of other words, of comments, or of the value itself. */
  private static final Pattern MARK = Pattern.compile("\\{\\{[#^/&{]?\\s*(\\w+)");

  private static final Pattern KEY = Pattern.compile("^\\s*([\\w.-]+)\\s*[=:\\s]");

  /** Copies the lines. */
  public WordFile {
    lines = new LinkedHashMap<>(lines);
  }

  /**
   * Words and where they stand.
   *
   * @param words with marks for what goes into them
   * @param line from 1
   */
  public record Entry(String words, int line) {
    /** The names of the values that they are filled with, in order; of a count, its own name. */
    public Set<String> values() {
      Set<String> values = new TreeSet<>();
      Matcher mark = MARK.matcher(words);
      while (mark.find()) {
        values.add(mark.group(1));
      }
      return values;
    }
  }

  /** The words in a file's text. */
  public static WordFile of(String name, String text) {
    Properties words = new Properties();
    try {
      words.load(new StringReader(text));
    } catch (IOException e) {
      throw new IllegalStateException("a text in memory can't be read", e);
    }
    Map<String, Integer> places = places(text);
    Map<String, Entry> lines = new LinkedHashMap<>();
    for (String key : new TreeSet<>(words.stringPropertyNames())) {
      lines.put(
          key,
          new Entry(words.getProperty(key).replace('~', '\u00a0'), places.getOrDefault(key, 1)));
    }
    return new WordFile(name, lines);
  }

  /** The last line that a key begins, as the last is the one that counts. */
  private static Map<String, Integer> places(String text) {
    Map<String, Integer> places = new LinkedHashMap<>();
    int number = 0;
    for (String line : text.split("\\R", -1)) {
      number++;
      Matcher key = KEY.matcher(line);
      if (key.find()) {
        places.put(key.group(1), number);
      }
    }
    return places;
  }
}
