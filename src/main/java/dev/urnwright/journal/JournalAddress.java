package dev.urnwright.journal;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

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
  private static final String EXPECTED =
      "expected a file, or a URL that begins with jdbc:postgresql://";

  /** What some other database's address begins with; a drive has one letter alone. */
  private static final Pattern FOREIGN = Pattern.compile("(?i)jdbc:.*|[a-z][a-z0-9+.-]+://.*");

  /** User and password before the server's name, which the driver doesn't take anyway. */
  private static final Pattern USER = Pattern.compile("//[^/]*@");

  /**
   * A file, or the JDBC URL of a PostgreSQL database.
   *
   * @param text such as {@code brews.db} or {@code jdbc:postgresql://server/urnwright}
   * @throws JournalException if it is neither, in words that hold no password
   */
  public static JournalAddress of(String text) throws JournalException {
    if (text.startsWith(SERVER)) {
      return server(text);
    }
    if (text.isBlank() || FOREIGN.matcher(text).matches()) {
      throw new JournalException("'" + secretless(text) + "' is no journal; " + EXPECTED);
    }
    try {
      // Whole, or the driver would take names such as :memory: for something of its own.
      Path file = Path.of(text);
      return new JournalAddress(Optional.of(file), "jdbc:sqlite:" + file.toAbsolutePath());
    } catch (InvalidPathException e) {
      throw new JournalException("that can't be a file's name; " + EXPECTED, e);
    }
  }

  private static JournalAddress server(String url) throws JournalException {
    if (USER.matcher(url).find()) {
      throw new JournalException(
          secretless(url)
              + ": a user can't stand before the server's name; write ?user=NAME at the end, and put"
              + " the password into URNWRIGHT_JOURNAL_PASSWORD");
    }
    return new JournalAddress(Optional.empty(), url);
  }

  private static String secretless(String text) {
    return USER.matcher(text.replaceAll("[?;].*$", "")).replaceAll("//");
  }

  /**
   * The one that is meant: named on the command line, by the environment, or the usual place.
   *
   * @param named on the command line
   * @param environment of the process
   * @param system name of the operating system, as Java gives it
   * @throws JournalException if what is named is neither a file nor a server
   */
  public static JournalAddress meant(
      Optional<String> named, Map<String, String> environment, String system)
      throws JournalException {
    return of(
        named
            .or(
                () ->
                    Optional.ofNullable(environment.get(VARIABLE)).filter(text -> !text.isBlank()))
            .orElseGet(() -> usual(environment, system).toString()));
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
    return file.map(Path::toString).orElseGet(() -> secretless(url));
  }
}
