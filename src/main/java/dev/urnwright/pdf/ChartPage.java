package dev.urnwright.pdf;

import dev.urnwright.plan.Plan;
import dev.urnwright.sheet.PrepView;
import dev.urnwright.wording.Words;
import java.io.IOException;
import java.io.OutputStream;

/** Prints a plan's control charts alone. */
public final class ChartPage {
  static final String TEMPLATE = "chart-page.xhtml";

  private ChartPage() {}

  /**
   * Writes one page for each chart, on the event's paper. The stream stays open.
   *
   * @throws IOException if the stream can't be written to
   * @throws IllegalStateException if a template is wrong; the message says which and where
   */
  public static void write(Plan plan, OutputStream out) throws IOException {
    Words words = TemplateFolder.SHIPPED.words(plan.event().print().language());
    PrepView view = PrepView.of(plan, words);
    new Typesetter(TemplateFolder.SHIPPED, words)
        .write(TEMPLATE, view, Drawings.of(view, words), out);
  }
}
