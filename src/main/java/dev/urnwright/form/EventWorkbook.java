package dev.urnwright.form;

import dev.urnwright.form.Archive.RefusedException;
import dev.urnwright.input.EventFile;
import dev.urnwright.input.EventReader;
import dev.urnwright.input.Typed;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** An event as a workbook to fill in. */
public final class EventWorkbook {
  private static final String APPLICATION = "Urnwright";

  private EventWorkbook() {}

  /**
   * Reads a workbook that was filled in, or a plan's workbook.
   *
   * @param file an .xlsx of 16 MiB at most
   * @return the event, or all that is wrong with it; which, for a file that isn't a workbook or
   *     that could do harm, is that alone
   */
  public static Checked<EventFile> open(Path file) {
    return open(file, new EventReader());
  }

  /** The same, by a reader that takes sheets in some languages only. */
  public static Checked<EventFile> open(Path file, EventReader reader) {
    List<Grid> grids;
    try {
      grids = Source.grids(file);
    } catch (RefusedException refused) {
      return Checked.refused(
          List.of(
              new Problem(Location.ofFile(file.toString()), refused.wrong(), refused.expected())));
    }
    FormReader.Reading reading = FormReader.read(file.toString(), grids);
    if (!reading.problems().isEmpty() && reading.typed().entries().isEmpty()) {
      return Checked.refused(reading.problems());
    }
    Checked<EventFile> event = reader.read(reading.typed(), FormSheet::nameFor);
    if (reading.problems().isEmpty()) {
      return event;
    }
    List<Problem> problems = new ArrayList<>(reading.problems());
    problems.addAll(event.problems());
    return Checked.refused(problems);
  }

  /**
   * Writes a workbook to fill in.
   *
   * @param event what is filled in already; nothing, for an empty one
   * @param out where to; left open
   * @throws IOException if {@code out} can't be written to
   */
  public static void write(Typed.Mapping event, OutputStream out) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      new FormWriter(workbook, event).write();
      workbook.getProperties().getExtendedProperties().setApplication(APPLICATION);
      workbook.getProperties().getCoreProperties().setCreator(APPLICATION);
      workbook.write(out);
    }
  }

  /** Adds the sheets to fill in, filled in, behind the sheets of a plan. */
  public static void addTo(XSSFWorkbook plan, Typed.Mapping event) {
    Memory.write(plan);
    new FormWriter(plan, event).write();
  }

  /** Nothing filled in. */
  public static Typed.Mapping blank() {
    return new Typed.Mapping(List.of(), Location.ofFile(""));
  }
}
