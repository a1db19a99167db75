package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Short runs of {@link Fuzz}, always over the same things. */
class FuzzTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "events, 1000",
    "workbooks, 150",
    "journals, 150",
    "commands, 150",
    "templates, 25",
    "rounds, 100"
  })
  void whatIsHostileIsRefusedInWords(String what, int seeds) throws Exception {
    try (Fuzz fuzz = Fuzz.of(Hostilities.called(what), folder)) {
      for (long seed = 1; seed <= seeds; seed++) {
        Optional<String> fault = fuzz.fault(seed);
        if (fault.isPresent()) {
          fail(what + " of seed " + seed + ": " + fault.get());
        }
      }
      assertTrue(fuzz.accepted() > seeds / 50, "hardly any was good: " + fuzz.accepted());
    }
  }
}
