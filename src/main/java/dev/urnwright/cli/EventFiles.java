package dev.urnwright.cli;

import dev.urnwright.form.EventWorkbook;
import dev.urnwright.input.EventFile;
import dev.urnwright.input.EventReader;
import dev.urnwright.problem.Checked;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Opens events, be they texts or workbooks. */
final class EventFiles {
  private static final List<String> ENDINGS = List.of(".xlsx", ".xlsm", ".xlsb", ".xls", ".ods");

  /** How the files of spreadsheets begin: archives, and those of the old kind. */
  private static final List<String> BEGINNINGS =
      List.of("PK\u0003\u0004", "\u00d0\u00cf\u0011\u00e0");

  private EventFiles() {}

  /** The event in the file, or all that is wrong with it. */
  static Checked<EventFile> open(Path file) {
    return open(file, new EventReader());
  }

  /**
   * The same, where sheets are made of it.
   *
   * @param languages those that sheets can be written in
   */
  static Checked<EventFile> open(Path file, Set<String> languages) {
    return open(file, new EventReader(languages));
  }

  private static Checked<EventFile> open(Path file, EventReader reader) {
    return isWorkbook(file) ? EventWorkbook.open(file, reader) : reader.open(file);
  }

  /** Whether a file is a workbook by its name, or by what it begins with. */
  static boolean isWorkbook(Path file) {
    return hasEnding(file) || beginsLikeOne(file);
  }

  /** Whether a file is called like a workbook. */
  static boolean hasEnding(Path file) {
    String name = file.toString().toLowerCase(Locale.ROOT);
    return ENDINGS.stream().anyMatch(name::endsWith);
  }

  /**
   * Refuses to write a workbook of another kind.
   *
   * @throws RefusedException unless the name ends in .xlsx
   */
  static void requireXlsx(Path file) throws RefusedException {
    if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      throw new RefusedException(file + ": workbooks are written as .xlsx; name it so");
    }
  }

  private static boolean beginsLikeOne(Path file) {
    if (!Files.isRegularFile(file)) {
      return false;
    }
    try (InputStream in = Files.newInputStream(file)) {
      String begin = new String(in.readNBytes(4), StandardCharsets.ISO_8859_1);
      return BEGINNINGS.contains(begin);
    } catch (IOException | SecurityException e) {
      return false; // whoever opens it says why it can't be read
    }
  }
}
