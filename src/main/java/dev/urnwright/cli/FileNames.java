package dev.urnwright.cli;

import java.nio.file.Path;
import java.util.Optional;

/** What the files of an event are called. */
final class FileNames {
  private FileNames() {}

  /**
   * A file in that folder or else beside the event, named after it: {@code breakfast.yaml} gives
   * {@code breakfast-plan.pdf} for the ending {@code -plan.pdf}.
   */
  static Path of(Path event, Optional<Path> folder, String ending) {
    String name = stem(event) + ending;
    return folder.map(dir -> dir.resolve(name)).orElseGet(() -> event.resolveSibling(name));
  }

  private static String stem(Path event) {
    String name = event.getFileName().toString();
    int point = name.lastIndexOf('.');
    return point > 0 ? name.substring(0, point) : name;
  }
}
