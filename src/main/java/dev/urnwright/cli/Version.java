package dev.urnwright.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version of the program, from the jar it came in. */
final class Version implements IVersionProvider {
  /** The version alone, such as {@code 0.1.0}. */
  static String number() {
    return Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
        .orElse("development");
  }

  @Override
  public String[] getVersion() {
    return new String[] {"Urnwright " + number()};
  }
}
