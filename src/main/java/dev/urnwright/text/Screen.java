package dev.urnwright.text;

import java.io.PrintWriter;
import java.util.List;

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

  /** An item of a list of warnings. */
  void caution(String text) {
    item(palette.caution().apply("!"), text);
  }

  /** An item of a list of remarks. */
  void remark(String text) {
    item("-", text);
  }

  private void item(String mark, String text) {
    String blanks = INDENT + "  ";
    List<String> lines = Paragraph.hang(blanks, text, columns);
    line(INDENT + mark + " " + lines.get(0).substring(blanks.length()));
    lines.stream().skip(1).forEach(this::line);
  }
}
