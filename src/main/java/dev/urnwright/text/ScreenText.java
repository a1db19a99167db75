package dev.urnwright.text;

/**
 * One line of text as a terminal shows it: without control characters, and with a width in columns.
 */
final class ScreenText {
  private static final int ZERO_WIDTH_JOINER = 0x200D;

  /**
   * First and last code points of what takes two columns: the ranges of East Asian Width W and F
   * (Unicode Standard Annex 11) that hold letters, and the pictures people put into names.
   */
  private static final int[][] WIDE = {
    {0x1100, 0x115F}, {0x231A, 0x231B}, {0x23E9, 0x23EC}, {0x2614, 0x2615}, {0x26BD, 0x26BE},
    {0x2705, 0x2705}, {0x2728, 0x2728}, {0x274C, 0x274C}, {0x2753, 0x2755}, {0x2B50, 0x2B50},
    {0x2E80, 0x303E}, {0x3041, 0xA4CF}, {0xA960, 0xA97F}, {0xAC00, 0xD7A3}, {0xF900, 0xFAFF},
    {0xFE30, 0xFE6F}, {0xFF01, 0xFF60}, {0xFFE0, 0xFFE6}, {0x1F300, 0x1F64F}, {0x1F680, 0x1F6FF},
    {0x1F900, 0x1F9FF}, {0x1FA70, 0x1FAFF}, {0x20000, 0x3FFFD},
  };

  private ScreenText() {}

  /**
   * The text on one line, without anything that moves the cursor, rings the bell or turns the
   * writing direction around.
   */
  static String clean(String text) {
    StringBuilder kept = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int point = text.codePointAt(i);
      if (point == '\n' || point == '\t' || point == '\r') {
        kept.append(' ');
      } else if (isShown(point)) {
        kept.appendCodePoint(point);
      }
    }
    return kept.toString();
  }

  /** The columns that a clean text takes. */
  static int width(String text) {
    int columns = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      columns += width(text.codePointAt(i));
    }
    return columns;
  }

  /** The columns that one code point takes: 0, 1 or 2. */
  static int width(int point) {
    if (point < 0x300) {
      return 1;
    }
    return switch (Character.getType(point)) {
      case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> 0;
      default -> isWide(point) ? 2 : 1;
    };
  }

  /** Filled with blanks behind; the text itself where it is wider. */
  static String left(String text, int columns) {
    return text + blanks(columns - width(text));
  }

  /** Filled with blanks before; the text itself where it is wider. */
  static String right(String text, int columns) {
    return blanks(columns - width(text)) + text;
  }

  private static String blanks(int columns) {
    return " ".repeat(Math.max(0, columns));
  }

  private static boolean isShown(int point) {
    if (point >= ' ' && point < 0x7F) {
      return true;
    }
    return switch (Character.getType(point)) {
      case Character.CONTROL, Character.SURROGATE -> false;
      case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
      case Character.FORMAT -> point == ZERO_WIDTH_JOINER;
      default -> true;
    };
  }

  private static boolean isWide(int point) {
    for (int[] range : WIDE) {
      if (point <= range[1]) {
        return point >= range[0];
      }
    }
    return false;
  }
}
