package dev.urnwright.cli;

import java.nio.file.Path;

/** What the files of an event are called. */
final class FileNames {
  private FileNames() {}

  /**
   * A file beside the event's, named after it: {@code breakfast.yaml} gives {@code
   * breakfast-plan.pdf} for the ending {@code -plan.pdf}.
   */
  static Path beside(Path event, String ending) {
    return event.resolveSibling(stem(event) + ending);
  }

  /** The same in another folder. */
  static Path in(Path folder, Path event, String ending) {
    return folder.resolve(stem(event) + ending);
  }

  private static String stem(Path event) {
    String name = event.getFileName().toString();
    int point = name.lastIndexOf('.');
    return point > 0 ? name.substring(0, point) : name;
  }
}
