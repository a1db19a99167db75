package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StandardOutputTest {
  @Test
  void aReaderThatHasSeenEnoughIsNoLoss() {
    assertEquals(Optional.empty(), afterFailing("Broken pipe").loss());
  }

  @Test
  void aFullDiskIsALoss() {
    assertEquals(
        Optional.of("No space left on device"),
        afterFailing("No space left on device").loss().map(IOException::getMessage));
  }

  @Test
  void afterTheFirstFailureNothingMoreIsTried() {
    int[] tries = {0};
    StandardOutput output =
        new StandardOutput(
            new OutputStream() {
              @Override
              public void write(int b) throws IOException {
                tries[0]++;
                throw new IOException("gone");
              }
            });
    output.write('a');
    output.write('b');
    assertEquals(1, tries[0]);
    assertTrue(output.loss().isPresent());
  }

  private static StandardOutput afterFailing(String message) {
    StandardOutput output =
        new StandardOutput(
            new OutputStream() {
              @Override
              public void write(int b) throws IOException {
                throw new IOException(message);
              }
            });
    output.write('a');
    return output;
  }
}
