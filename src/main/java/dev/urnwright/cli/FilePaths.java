package dev.urnwright.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a file or folder from the command line. */
final class FilePaths implements ITypeConverter<Path> {
  @Override
  public Path convert(String name) {
    if (name.isEmpty()) {
      throw new TypeConversionException("a file's name isn't empty");
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
