package dev.urnwright.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a file or folder from the command line. */
final class FilePaths implements ITypeConverter<Path> {
  /** What would move a terminal's cursor, or turn the direction of writing. */
  private static final Pattern UNPRINTABLE =
      Pattern.compile("[\\p{Cc}\\u202A-\\u202E\\u2066-\\u2069]");

  @Override
  public Path convert(String name) {
    if (name.isEmpty()) {
      throw new TypeConversionException("a file's name isn't empty");
    }
    if (UNPRINTABLE.matcher(name).find()) {
      throw new TypeConversionException(
          "this file's name has letters that can't be printed; give it another name");
    }
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      throw new TypeConversionException(
          "'"
              + name
              + "' has letters that can't be used here; a locale such as C.UTF-8 (LC_ALL) may help");
    }
  }
}
