package dev.urnwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the files of an event are called. */
final class FileNames {
  private static final Pattern PLANNED =
      Pattern.compile("(.+)-plan(?:-(\\d{1,9}))?\\.xlsx", Pattern.CASE_INSENSITIVE);

  private FileNames() {}

  /**
   * A file in that folder or else beside the event, named after it: {@code breakfast.yaml} gives
   * {@code breakfast-plan.pdf} for the ending {@code -plan.pdf}. What is planned from a plan's
   * workbook is numbered, so that the workbook itself is left as it is: {@code breakfast-plan.xlsx}
   * gives {@code breakfast-plan-2.pdf}.
   */
  static Path of(Path event, Optional<Path> folder, String ending) {
    String name = name(event, ending);
    return folder.map(dir -> dir.resolve(name)).orElseGet(() -> event.resolveSibling(name));
  }

  /** A file beside another, named after it. */
  static Path beside(Path other, String ending) {
    return other.resolveSibling(stem(other) + ending);
  }

  private static String name(Path event, String ending) {
    Matcher planned = PLANNED.matcher(event.getFileName().toString());
    if (!planned.matches()) {
      return stem(event) + ending;
    }
    String number = planned.group(2);
    long next = number == null ? 2 : Long.parseLong(number) + 1;
    int point = ending.lastIndexOf('.');
    return planned.group(1) + ending.substring(0, point) + "-" + next + ending.substring(point);
  }

  private static String stem(Path event) {
    String name = event.getFileName().toString();
    int point = name.lastIndexOf('.');
    return point > 0 ? name.substring(0, point) : name;
  }
}
