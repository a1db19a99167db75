package dev.urnwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/** Finds out whether a file was written by this program, from what it says of its maker. */
final class Authorship {
  private static final String NAME = "Urnwright";

  /** Sheets of the largest events stay far below. */
  private static final long MOST_BYTES = 256L << 20;

  /** A picture or a calendar names its maker at its beginning. */
  private static final int HEAD_BYTES = 4096;

  private Authorship() {}

  /** Whether the file says so; a kind of file that isn't known was made by somebody else. */
  static boolean isOurs(Path file) throws IOException {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    if (name.endsWith(".pdf")) {
      return Files.size(file) < MOST_BYTES && pdf(Files.readAllBytes(file));
    }
    if (name.endsWith(".xlsx")) {
      return workbook(file);
    }
    if (name.endsWith(".svg") || name.endsWith(".png")) {
      try (InputStream in = Files.newInputStream(file)) {
        return latin1(in.readNBytes(HEAD_BYTES)).contains(NAME);
      }
    }
    if (name.endsWith(".json")) {
      try (InputStream in = Files.newInputStream(file)) {
        return latin1(in.readNBytes(HEAD_BYTES)).contains("\"title\": \"An event for " + NAME);
      }
    }
    if (name.endsWith(".ics")) {
      try (InputStream in = Files.newInputStream(file)) {
        return latin1(in.readNBytes(HEAD_BYTES)).contains("\nPRODID:-//" + NAME + "//");
      }
    }
    return false;
  }

  private static boolean pdf(byte[] content) {
    return latin1(content).replace("/Creator (", "/Creator(").contains("/Creator(" + NAME);
  }

  private static boolean workbook(Path file) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      ZipEntry entry = zip.getEntry("docProps/app.xml");
      if (entry == null) {
        return false;
      }
      try (InputStream in = zip.getInputStream(entry)) {
        return new String(in.readNBytes(HEAD_BYTES), StandardCharsets.UTF_8)
            .contains("<Application>" + NAME);
      }
    } catch (ZipException e) {
      return false; // not a workbook, whatever it is called
    }
  }

  private static String latin1(byte[] content) {
    return new String(content, StandardCharsets.ISO_8859_1);
  }
}
