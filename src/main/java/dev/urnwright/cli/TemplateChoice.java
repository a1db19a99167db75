package dev.urnwright.cli;

import dev.urnwright.pdf.TemplateFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Which templates sheets are made from. */
final class TemplateChoice {
  private TemplateChoice() {}

  /**
   * A firm's own folder, or else the shipped templates.
   *
   * @throws RefusedException if that is no folder
   */
  static TemplateFolder of(Optional<Path> own) throws RefusedException {
    if (own.isPresent() && !Files.isDirectory(own.get())) {
      throw new RefusedException(
          own.get() + ": is not a folder; make one with 'urnwright templates'");
    }
    return own.map(TemplateFolder::of).orElse(TemplateFolder.SHIPPED);
  }
}
