package dev.urnwright.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The distribution of the cups against a general library's, for many groups. */
class CupsLibraryTest {
  /**
   * Absolute; two libraries' incomplete beta functions for up to a million guests differ by no
   * more. The rows of the resource keep this distance from the level, so the cups must agree
   * exactly.
   */
  private static final double LIBRARIES = 1e-9;

  @ParameterizedTest(name = "{0} guests, p {1}, {2} cups each, level {3}: {4} cups")
  @CsvFileSource(resources = "cups-scipy.csv", delimiter = '|', numLinesToSkip = 8)
  void isThatOfAGeneralLibrary(
      int guests, double p, double each, double level, int cups, double enough, double fewer) {
    CupsDrunk drunk = new CupsDrunk(guests, p, each);
    assertEquals(cups, drunk.enoughWith(level));
    assertEquals(enough, drunk.atMost(cups), LIBRARIES);
    assertEquals(fewer, drunk.atMost(cups - 1), LIBRARIES);
    assertEquals(guests * p * each, drunk.mean(), 1e-9 * guests);
  }
}
