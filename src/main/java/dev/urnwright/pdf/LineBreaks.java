package dev.urnwright.pdf;

import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.css.style.CalculatedStyle;
import org.xhtmlrenderer.layout.breaker.BreakPoint;
import org.xhtmlrenderer.layout.breaker.BreakPointsProvider;
import org.xhtmlrenderer.layout.breaker.DefaultLineBreakingStrategy;
import org.xhtmlrenderer.layout.breaker.LineBreakingStrategy;

/**
 * Breaks lines as usual, but never a number at its decimal mark or a time at its colon. Most texts
 * are plain words, for which the usual rules come to a break after each space; finding that without
 * them saves much of the time that goes into text.
 */
final class LineBreaks implements LineBreakingStrategy {
  /** Letters from here on may follow rules of their own. */
  private static final char BEYOND_LATIN = '\u0250';

  /** What is known not to end a decimal number in a way of its own. */
  private static final String AFTER_NUMBER = "0123456789.,:% \u00a0";

  private final LineBreakingStrategy usual = new DefaultLineBreakingStrategy();

  @Override
  public BreakPointsProvider getBreakPointsProvider(
      String text, String language, CalculatedStyle style) {
    if (isPlain(text)) {
      return afterSpaces(text);
    }
    return careful(text, language, style);
  }

  /** By the usual rules, but for numbers and times. */
  BreakPointsProvider careful(String text, String language, CalculatedStyle style) {
    BreakPointsProvider all = usual.getBreakPointsProvider(text, language, style);
    return () -> {
      BreakPoint point = all.next();
      while (isPoint(point) && isInNumber(text, point.getPosition())) {
        point = all.next();
      }
      return point;
    };
  }

  private static boolean isPoint(@Nullable BreakPoint point) {
    return point != null && point.getPosition() >= 0;
  }

  private static boolean isInNumber(String text, int at) {
    return at > 0
        && at < text.length()
        && ",.:".indexOf(text.charAt(at - 1)) >= 0
        && Character.isDigit(text.charAt(at));
  }

  private static BreakPointsProvider afterSpaces(String text) {
    int[] from = {0};
    return () -> {
      int end = text.length();
      if (from[0] == end) {
        return BreakPoint.getDonePoint();
      }
      int at = text.indexOf(' ', from[0]);
      while (at >= 0 && at < end && text.charAt(at) == ' ') {
        at++;
      }
      from[0] = at < 0 ? end : at;
      return new BreakPoint(from[0]);
    };
  }

  /** Whether the usual rules break a text after its spaces, and nowhere else. */
  static boolean isPlain(String text) {
    int last = text.length() - 1;
    boolean decimals = false;
    char before = ' ';
    for (int i = 0; i <= last; i++) {
      char letter = text.charAt(i);
      char after = i < last ? text.charAt(i + 1) : ' ';
      if (!isPlain(before, letter, after) || (decimals && AFTER_NUMBER.indexOf(letter) < 0)) {
        return false;
      }
      decimals = Character.isDigit(letter) ? decimals : ",.:".indexOf(letter) >= 0;
      before = letter;
    }
    return true;
  }

  private static boolean isPlain(char before, char letter, char after) {
    return switch (letter) {
      case ' ', '·', '×', '+', '=' -> true;
      case '\u00a0' -> before != ' ' && after != ' ';
      case '.', ',', ':' ->
          Character.isLetterOrDigit(before) && (after == ' ' || Character.isDigit(after));
      case '%' ->
          (before == '\u00a0' || Character.isDigit(before)) && (after == ' ' || after == ',');
      default -> letter < BEYOND_LATIN && Character.isLetterOrDigit(letter);
    };
  }
}
