package dev.urnwright.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Paper;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.sheet.SheetPlans;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Events that strain the page: nothing leaves it and nothing is printed over anything else. */
class StrainedSheetsTest {
  /** The margins of the style sheet, less a hair for the slant of a letter. */
  private static final double MARGIN = 33.5;

  static Stream<Arguments> strains() throws IOException {
    return Stream.of(
        Arguments.of("usual", SheetPlans.usual(UnitSystem.METRIC, Paper.A4)),
        Arguments.of("34 dispensers on the clock", SheetPlans.sample("autumn-conference")),
        Arguments.of("carafes on the clock, US", SheetPlans.sample("office-carafes")),
        Arguments.of("usual, US", SheetPlans.usual(UnitSystem.US, Paper.LETTER)),
        Arguments.of(
            "40 groups, long names", SheetPlans.crowded(40, 2, UnitSystem.METRIC, Paper.A4)),
        Arguments.of("12 coffees, US", SheetPlans.crowded(36, 12, UnitSystem.US, Paper.LETTER)),
        Arguments.of(
            "60 batches", SheetPlans.crowded(40, 1, 75, "Short", UnitSystem.METRIC, Paper.LETTER)),
        Arguments.of(
            "unbroken names",
            SheetPlans.crowded(3, 2, 20, "W".repeat(200), UnitSystem.US, Paper.LETTER)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("strains")
  void nothingLeavesThePage(String name, Plan plan) throws IOException {
    try (PrintedPages pages = PrintedPages.of(out -> PrepSheets.write(plan, out))) {
      assertEquals(List.of(), pages.outside(MARGIN));
      assertEquals(List.of(), pages.overlapping());
    }
  }

  @Test
  void theStrainIsReal() {
    Plan many = SheetPlans.crowded(40, 1, 75, "Short", UnitSystem.METRIC, Paper.LETTER);
    assertTrue(many.batches().size() >= 60, many.batches().size() + " batches");
    assertEquals(200, SheetPlans.LONG_NAME.length());
  }

  @Test
  void hostileNamesAreOnlyEverText() throws IOException {
    String hostile = "<b>bold</b> & \"quoted\" 'single' ]]> {{event}} &nbsp; ";
    Plan plan = SheetPlans.crowded(2, 2, 20, hostile, UnitSystem.METRIC, Paper.A4);
    try (PrintedPages pages = PrintedPages.of(out -> PrepSheets.write(plan, out))) {
      String overview = pages.texts().get(0);
      assertTrue(
          overview.contains("<b>bold</b> & \"quoted\" 'single' ]]> {{event}} &nbsp;"), overview);
    }
  }

  @Test
  void lettersBeyondLatinArePrintedAndThoseTheTypefaceLacksShowAsMissing() throws IOException {
    Plan plan =
        SheetPlans.crowded(1, 1, 20, "Čaj ½ Ωμέγα Жук → ✓ 漢\u0007 ", UnitSystem.METRIC, Paper.A4);
    try (PrintedPages pages = PrintedPages.of(out -> PrepSheets.write(plan, out))) {
      String overview = pages.texts().get(0);
      assertTrue(overview.contains("Čaj ½ Ωμέγα Жук → ✓ \ufffd\ufffd"), overview);
    }
  }
}
