package dev.urnwright.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** Takes a file from the disk to a text that can be parsed. */
final class SourceFile {
  private static final int MOST_BYTES = 16 << 20;
  private static final String EXPECTED_TEXT = "expected a text saved as UTF-8";
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private SourceFile() {}

  /** The text of a file; empty when that is a problem. */
  static Optional<String> text(Path file, Problems problems) {
    return bytes(file, problems).flatMap(bytes -> decoded(bytes, problems));
  }

  private static Optional<byte[]> bytes(Path file, Problems problems) {
    if (Files.isDirectory(file)) {
      return refuse(problems, "this is a folder", problems.document().file());
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      return bytes.length > MOST_BYTES
          ? refuse(problems, "this file is larger than 16 MiB", problems.document().file())
          : Optional.of(bytes);
    } catch (NoSuchFileException missing) {
      return refuse(problems, "there is no such file", problems.document().file());
    } catch (AccessDeniedException denied) {
      return refuse(problems, "this file may not be read", "expected a file that you may read");
    } catch (IOException | SecurityException failed) {
      return refuse(problems, "this file can't be read", problems.document().file());
    }
  }

  private static Optional<String> decoded(byte[] bytes, Problems problems) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) {
      text = text.substring(1);
    }
    if (result.isError()) {
      Position place = Position.after(text);
      problems.at(
          problems.at(place.line(), place.column()), "here the file is not UTF-8", EXPECTED_TEXT);
      return Optional.empty();
    }
    return printable(text, problems) ? Optional.of(text) : Optional.empty();
  }

  private static boolean printable(String text, Problems problems) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean line = c == '\n' || c == '\r' || c == '\t' || c == '\u0085';
      if ((Character.isISOControl(c) && !line) || c == '\uFFFE' || c == '\uFFFF') {
        Position place = Position.after(text.substring(0, i));
        problems.at(
            problems.at(place.line(), place.column()),
            String.format("here stands the control character U+%04X", (int) c),
            EXPECTED_TEXT);
        return false;
      }
    }
    return true;
  }

  private static <T> Optional<T> refuse(Problems problems, String wrong, String expected) {
    problems.at(problems.wholeFile(), wrong, expected);
    return Optional.empty();
  }

  /**
   * A place in a text.
   *
   * @param line from 1
   * @param column from 1, in code points
   */
  private record Position(int line, int column) {
    static Position after(String text) {
      int line = 1;
      int start = 0;
      for (int i = 0; i < text.length(); i++) {
        char c = text.charAt(i);
        boolean half = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
        if ((c == '\n' || c == '\r') && !half) {
          line++;
          start = i + 1;
        }
      }
      return new Position(line, text.codePointCount(start, text.length()) + 1);
    }
  }
}
