package dev.urnwright.pdf;

import dev.urnwright.plan.Plan;
import dev.urnwright.sheet.PrepView;
import dev.urnwright.wording.Words;
import java.io.IOException;
import java.io.OutputStream;

/** Prints a plan's prep sheets. */
public final class PrepSheets {
  static final String TEMPLATE = "prep-sheets.xhtml";

  static final String LEFT = "left-sheets.xhtml";

  private PrepSheets() {}

  /**
   * Writes all sheets on the event's paper, each beginning on a new page. The stream stays open.
   *
   * @param templates what they are made from
   * @throws IOException if the stream can't be written to
   * @throws BrokenTemplateException if a template of the firm's own is wrong; the message says
   *     which and where
   */
  public static void write(Plan plan, TemplateFolder templates, OutputStream out)
      throws IOException {
    write(TEMPLATE, plan, templates, out);
  }

  /**
   * Writes the sheets of what is left of a plan on the day: as {@link #write(Plan, TemplateFolder,
   * OutputStream)}, without those to buy, load and charge by.
   *
   * @param templates what they are made from
   * @throws IOException if the stream can't be written to
   * @throws BrokenTemplateException if a template of the firm's own is wrong
   */
  public static void writeLeft(Plan left, TemplateFolder templates, OutputStream out)
      throws IOException {
    write(LEFT, left, templates, out);
  }

  private static void write(String template, Plan plan, TemplateFolder templates, OutputStream out)
      throws IOException {
    Words words = templates.words(plan.event().print().language());
    PrepView view = PrepView.of(plan, words);
    new Typesetter(templates, words).write(template, view, Drawings.of(view, words), out);
  }

  /** The same with the shipped templates. */
  public static void write(Plan plan, OutputStream out) throws IOException {
    write(plan, TemplateFolder.SHIPPED, out);
  }
}
