package dev.urnwright.form;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** Looks a file over before anything is made of it: a workbook, and one that can do no harm. */
final class Archive {
  static final String EXPECTED = "expected a workbook saved as .xlsx";

  private static final int MOST_BYTES = 16 << 20;
  private static final long MOST_UNPACKED = 64L << 20;
  private static final int MOST_STYLES = 4 << 20;
  private static final int MOST_STRINGS = 24 << 20;
  private static final int MOST_PARTS = 5000;
  private static final byte[] OLD = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};
  private static final byte[] ZIP = {'P', 'K'};

  private Archive() {}

  /**
   * The content of a file.
   *
   * @throws RefusedException if it isn't a workbook that is read
   */
  static byte[] bytes(Path file) throws RefusedException {
    byte[] bytes = read(file);
    if (startsWith(bytes, OLD)) {
      throw contains(bytes, "EncryptedPackage")
          ? new RefusedException(
              "this workbook is locked with a password", "expected one without, saved as .xlsx")
          : new RefusedException("this is a workbook of the old kind (.xls)", EXPECTED);
    }
    if (!startsWith(bytes, ZIP)) {
      throw new RefusedException(
          bytes.length == 0 ? "this file is empty" : "this is not a workbook", EXPECTED);
    }
    try {
      look(bytes);
    } catch (IOException | IllegalArgumentException damaged) {
      throw new RefusedException("this workbook is damaged", EXPECTED);
    }
    return bytes;
  }

  private static byte[] read(Path file) throws RefusedException {
    if (Files.isDirectory(file)) {
      throw new RefusedException("this is a folder", EXPECTED);
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new RefusedException("this file is larger than 16 MiB", EXPECTED);
      }
      return bytes;
    } catch (NoSuchFileException missing) {
      throw new RefusedException("there is no such file", EXPECTED);
    } catch (AccessDeniedException denied) {
      throw new RefusedException("this file may not be read", "expected a file that you may read");
    } catch (IOException | SecurityException failed) {
      throw new RefusedException("this file can't be read", EXPECTED);
    }
  }

  private static void look(byte[] bytes) throws IOException, RefusedException {
    boolean workbook = false;
    long unpacked = 0;
    int parts = 0;
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        String name = part.getName().toLowerCase(Locale.ROOT);
        refuse(name);
        workbook |= name.equals("[content_types].xml");
        long size = size(zip, MOST_UNPACKED - unpacked);
        unpacked += size;
        if (unpacked >= MOST_UNPACKED
            || ++parts > MOST_PARTS
            || (name.endsWith("styles.xml") && size > MOST_STYLES)
            || (name.endsWith("sharedstrings.xml") && size > MOST_STRINGS)) {
          throw new RefusedException(
              "this workbook unpacks to more than any event needs", "expected a smaller one");
        }
      }
    }
    if (!workbook) {
      throw new RefusedException("this is an archive, but not a workbook", EXPECTED);
    }
  }

  private static void refuse(String part) throws RefusedException {
    if (part.endsWith("vbaproject.bin") || part.contains("/macrosheets/")) {
      throw new RefusedException(
          "this workbook has macros", "expected one without, saved as .xlsx");
    }
    if (part.contains("/externallinks/") || part.endsWith("/connections.xml")) {
      throw new RefusedException(
          "this workbook takes figures from other files", "expected the figures themselves");
    }
    if (part.endsWith("/workbook.bin")) {
      throw new RefusedException("this is a binary workbook (.xlsb)", EXPECTED);
    }
    if (part.equals("mimetype")) {
      throw new RefusedException("this is a sheet of the kind .ods", EXPECTED);
    }
  }

  private static long size(InputStream in, long most) throws IOException {
    byte[] buffer = new byte[1 << 16];
    long size = 0;
    for (int read = in.read(buffer); read >= 0 && size < most; read = in.read(buffer)) {
      size += read;
    }
    return size;
  }

  private static boolean startsWith(byte[] bytes, byte[] start) {
    for (int i = 0; i < start.length; i++) {
      if (i >= bytes.length || bytes[i] != start[i]) {
        return false;
      }
    }
    return true;
  }

  private static boolean contains(byte[] bytes, String name) {
    String wide = new String(name.getBytes(StandardCharsets.UTF_16LE), StandardCharsets.ISO_8859_1);
    return new String(bytes, StandardCharsets.ISO_8859_1).contains(wide);
  }

  /** Why a file isn't read. */
  static final class RefusedException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String wrong;
    private final String expected;

    RefusedException(String wrong, String expected) {
      super(wrong);
      this.wrong = wrong;
      this.expected = expected;
    }

    String wrong() {
      return wrong;
    }

    String expected() {
      return expected;
    }
  }
}
