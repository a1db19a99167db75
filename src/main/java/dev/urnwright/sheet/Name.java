package dev.urnwright.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * A name that the user gave something, with a hint how large it can be printed.
 *
 * @param text the name, of any length
 */
public record Name(String text) {
  private static final int SHORT = 20;
  private static final int MEDIUM = 45;
  private static final int LONG = 100;

  /** {@code short}, {@code medium}, {@code long} or {@code endless}: a class of the style sheet. */
  public String size() {
    int letters = text.codePointCount(0, text.length());
    if (letters <= SHORT) {
      return "short";
    }
    if (letters <= MEDIUM) {
      return "medium";
    }
    return letters <= LONG ? "long" : "endless";
  }

  /**
   * The name cut to so many letters, the last of them an ellipsis, where there is room for no more.
   *
   * @param letters 1 or more
   */
  public String shortenedTo(int letters) {
    return text.codePointCount(0, text.length()) <= letters
        ? text
        : text.substring(0, text.offsetByCodePoints(0, letters - 1)).stripTrailing() + "…";
  }

  /**
   * The name in lines of so many letters at most, broken at spaces where there are any.
   *
   * @param letters 1 or more
   */
  public List<String> wrappedAt(int letters) {
    List<String> lines = new ArrayList<>();
    String rest = text.strip();
    while (rest.codePointCount(0, rest.length()) > letters) {
      int most = rest.offsetByCodePoints(0, letters);
      int space = rest.lastIndexOf(' ', most);
      int end = space > 0 ? space : most;
      lines.add(rest.substring(0, end).strip());
      rest = rest.substring(end).strip();
    }
    lines.add(rest);
    return lines;
  }

  @Override
  public String toString() {
    return text;
  }
}
