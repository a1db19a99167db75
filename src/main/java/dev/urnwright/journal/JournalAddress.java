package dev.urnwright.journal;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where a journal is kept.
 *
 * @param file the user's own file; empty for a server
 * @param url what the database's driver connects to
 */
public record JournalAddress(Optional<Path> file, String url) {
  /** Names another journal than the usual one. */
  public static final String VARIABLE = "URNWRIGHT_JOURNAL";

  private static final String SERVER = "jdbc:postgresql:";

  /**
   * A file, or the JDBC URL of a PostgreSQL database.
   *
   * @param text such as {@code brews.db} or {@code jdbc:postgresql://server/urnwright}
   */
  public static JournalAddress of(String text) {
    if (text.startsWith(SERVER)) {
      return new JournalAddress(Optional.empty(), text);
    }
    Path file = Path.of(text);
    return new JournalAddress(Optional.of(file), "jdbc:sqlite:" + file);
  }

  /**
   * The one that is meant: named on the command line, by the environment, or the usual place.
   *
   * @param named on the command line
   * @param environment of the process
   * @param system name of the operating system, as Java gives it
   */
  public static JournalAddress meant(
      Optional<String> named, Map<String, String> environment, String system) {
    return named
        .or(() -> Optional.ofNullable(environment.get(VARIABLE)).filter(text -> !text.isBlank()))
        .map(JournalAddress::of)
        .orElseGet(() -> of(usual(environment, system).toString()));
  }

  /** Where programs of that system keep what belongs to a user. */
  private static Path usual(Map<String, String> environment, String system) {
    Path home = Path.of(environment.getOrDefault("HOME", "."));
    String lower = system.toLowerCase(Locale.ROOT);
    if (lower.startsWith("windows")) {
      return Path.of(environment.getOrDefault("APPDATA", "."), "Urnwright", "journal.db");
    }
    if (lower.startsWith("mac")) {
      return home.resolve("Library/Application Support/Urnwright/journal.db");
    }
    return Optional.ofNullable(environment.get("XDG_DATA_HOME"))
        .filter(data -> !data.isBlank())
        .map(Path::of)
        .orElse(home.resolve(".local/share"))
        .resolve("urnwright/journal.db");
  }

  /** For people: the file, or the server without what may be secret. */
  public String shown() {
    return file.map(Path::toString).orElseGet(() -> url.replaceAll("[?].*$", ""));
  }
}
