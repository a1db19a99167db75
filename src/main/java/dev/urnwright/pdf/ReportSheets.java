package dev.urnwright.pdf;

import dev.urnwright.report.EventReport;
import dev.urnwright.sheet.ReportView;
import dev.urnwright.wording.Words;
import java.io.IOException;
import java.io.OutputStream;

/** Prints what became of an event. */
public final class ReportSheets {
  static final String TEMPLATE = "report.xhtml";

  private ReportSheets() {}

  /**
   * Writes a part for each coffee, on the event's paper. The stream stays open.
   *
   * @throws IOException if the stream can't be written to
   * @throws BrokenTemplateException if a template of the firm's own is wrong
   */
  public static void write(EventReport report, TemplateFolder templates, OutputStream out)
      throws IOException {
    Words words = templates.words(report.plan().event().print().language());
    new Typesetter(templates, words)
        .write(TEMPLATE, ReportView.of(report, words), Drawings.NONE, out);
  }
}
