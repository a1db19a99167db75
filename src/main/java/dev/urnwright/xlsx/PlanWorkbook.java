package dev.urnwright.xlsx;

import dev.urnwright.form.EventWorkbook;
import dev.urnwright.input.Typed;
import dev.urnwright.plan.Plan;
import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The plan as a workbook whose formulas follow its inputs, in Excel and in LibreOffice.
 *
 * <p>Every cell shows the planner's own figure until something is changed. The event's units are
 * the workbook's units throughout.
 */
public final class PlanWorkbook {
  /** The program that the file names as its maker. */
  public static final String APPLICATION = "Urnwright";

  /** The same for every file, so that the same plan gives the same file. */
  private static final Instant CREATED = Instant.parse("2026-01-01T00:00:00Z");

  private PlanWorkbook() {}

  /**
   * Writes a plan.
   *
   * @param plan the plan, with one batch and one fill at least
   * @param out where to; left open
   * @throws IOException if {@code out} can't be written to
   */
  public static void write(Plan plan, OutputStream out) throws IOException {
    write(plan, Optional.empty(), out);
  }

  /**
   * Writes a plan that can be planned again: its last sheets hold the event as it was typed.
   *
   * @param plan the plan, with one batch and one fill at least
   * @param event what was typed
   * @param out where to; left open
   * @throws IOException if {@code out} can't be written to
   */
  public static void write(Plan plan, Typed.Mapping event, OutputStream out) throws IOException {
    write(plan, Optional.of(event), out);
  }

  private static void write(Plan plan, Optional<Typed.Mapping> event, OutputStream out)
      throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      // Formulas call sheets and names that are yet to come; parsing them would also take time.
      workbook.setCellFormulaValidation(false);
      Units units = Units.of(plan);
      Book book =
          new Book(
              workbook, plan, units, new Styles(workbook), Layout.of(plan, units), new Taken(plan));
      InputsSheet.write(book);
      CoffeesSheet.write(book);
      GroupsSheet.write(book);
      DilutionSheet.write(book);
      BatchesSheet.write(book);
      FillsSheet.write(book);
      if (plan.run().isPresent()) {
        RunSheet.write(book, plan.run().get());
        RunTimesSheet.write(book, plan.run().get());
      }
      ShoppingSheet.write(book);
      ChartSheet.write(book);
      CorrectionSheet.write(book);
      CertaintySheet.write(book);
      NotesSheet.write(book);
      EquipmentSheet.write(book);
      ServiceSheet.write(book);
      OddsSheet.write(book);
      ReferenceSheet.write(book);
      event.ifPresent(typed -> EventWorkbook.addTo(workbook, typed));
      describe(workbook, plan);
      workbook.write(out);
    }
  }

  private static void describe(XSSFWorkbook workbook, Plan plan) {
    POIXMLProperties properties = workbook.getProperties();
    properties.getExtendedProperties().setApplication(APPLICATION);
    properties.getCoreProperties().setCreator(APPLICATION);
    properties.getCoreProperties().setTitle(Words.cell(plan.event().name()));
    properties.getCoreProperties().setCreated(Optional.of(Date.from(CREATED)));
    properties.getCoreProperties().setModified(Optional.of(Date.from(CREATED)));
  }
}
