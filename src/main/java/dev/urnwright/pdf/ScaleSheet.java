package dev.urnwright.pdf;

import dev.urnwright.scale.Scaled;
import dev.urnwright.sheet.ScaleView;
import dev.urnwright.wording.Words;
import java.io.IOException;
import java.io.OutputStream;

/** Prints a scaled brew for the people at its brewer. */
public final class ScaleSheet {
  static final String TEMPLATE = "scale.xhtml";

  private ScaleSheet() {}

  /**
   * Writes one page, or more where much is to be said. The stream stays open.
   *
   * @param templates what it is made from
   * @throws IOException if the stream can't be written to
   * @throws BrokenTemplateException if a template of the firm's own is wrong
   */
  public static void write(Scaled scaled, TemplateFolder templates, OutputStream out)
      throws IOException {
    Words words = templates.words(scaled.request().print().language());
    new Typesetter(templates, words)
        .write(TEMPLATE, ScaleView.of(scaled, words), Drawings.NONE, out);
  }
}
