package dev.urnwright.text;

import java.io.PrintWriter;

/**
 * Where lines go.
 *
 * @param out takes the lines
 * @param palette how emphasis looks
 * @param columns how wide a line may be
 */
record Screen(PrintWriter out, Palette palette, int columns) {
  static final String INDENT = "  ";

  void line(String text) {
    out.println(text);
  }

  void gap() {
    out.println();
  }

  /** The heading of a part, with a rule under it. */
  void title(String text) {
    Paragraph.wrap(text, columns).forEach(each -> line(palette.title().apply(each)));
    line(palette.quiet().apply("-".repeat(columns)));
  }

  /** The heading of a table or list within a part. */
  void heading(String text) {
    gap();
    Paragraph.hang(INDENT, text, columns).forEach(each -> line(palette.title().apply(each)));
  }

  /** An item of a list. */
  void item(String mark, String text) {
    Paragraph.hang(INDENT + mark + " ", text, columns).forEach(this::line);
  }
}
