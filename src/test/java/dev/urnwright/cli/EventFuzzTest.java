package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A short run of {@link EventFuzz}, always over the same files. */
class EventFuzzTest {
  private static final int FILES = 1500;

  @TempDir Path folder;

  @Test
  void hostileFilesAreRefusedInWords() throws Exception {
    try (EventFuzz fuzz = EventFuzz.in(folder)) {
      for (long seed = 0; seed < FILES; seed++) {
        Optional<String> fault = fuzz.fault(seed);
        if (fault.isPresent()) {
          fail("file of seed " + seed + ": " + fault.get());
        }
      }
      assertTrue(fuzz.accepted() > FILES / 50, "hardly any was a good event: " + fuzz.accepted());
    }
  }
}
