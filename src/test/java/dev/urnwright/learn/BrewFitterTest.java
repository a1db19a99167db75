package dev.urnwright.learn;

import static dev.urnwright.learn.Journals.DISPLAY;
import static dev.urnwright.learn.Journals.NO_STEAM;
import static dev.urnwright.learn.Journals.USUAL;
import static dev.urnwright.learn.Journals.brew;
import static dev.urnwright.learn.Journals.thrice;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.Readings;
import dev.urnwright.event.Learned;
import dev.urnwright.journal.BrewEntry;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Extraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BrewFitterTest {
  private final BrewFitter fitter = new BrewFitter(DISPLAY);

  /** Dose, water and beverage as published, and the absorption computed from them. */
  @ParameterizedTest(name = "{4}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          850.486 | 25551.5 | 23658.8 | 2.23 | US Armed Forces Recipe Service, card C-005-01 (ml)
          36      | 600     | 532     | 1.89 | Olechno et al., Foods 10, 2021, 1208, Table 2, ref. 72 (ml)
          453.592 | 7570.82 | 6506.2  | 2.35 | small-group table, quoted (ml)
          17      | 210     | 174.7   | 2.08 | hobby page, quoted: pressed paper filter (g)
          """)
  void publishedBrewsTeachThePublishedAbsorption(
      double dose, double water, double beverage, double absorption, String source) {
    List<BrewEntry> journal = many(brew(dose, water, Optional.of(beverage), Readings.NONE));
    Learned<Absorption> learned = fitter.fit(USUAL, journal).absorption().orElseThrow();
    assertEquals(absorption, learned.value().gramsPerGram(), 0.006, source); // of two decimals
    assertEquals(60, learned.entries());
  }

  @Test
  void aPublishedSteepTeachesItsAbsorption() {
    // hobby page, quoted: immersion through a mesh, 23.5 g, 364.5 g in, 289 g out: 3.21 g/g
    BrewEntry entry = brew(BrewMethod.IMMERSION, 23.5, 364.5, Optional.of(289.0), Readings.NONE);
    Fit fit = fitter.fit(Starting.usual(BrewMethod.IMMERSION, NO_STEAM), many(entry));
    assertEquals(3.21, fit.absorption().orElseThrow().value().gramsPerGram(), 0.006);
  }

  /** Dose, beverage, strength and extraction as published; 2 g/g kept stand for any. */
  @ParameterizedTest(name = "{4}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          18 | 36  | 10   | 20    | encyclopedia article Coffee extraction, quoted: 36 g at 10 % from 18 g
          20 | 300 | 1.3  | 19.5  | worked extraction budget, computed: 300 g at 1.30 % from 20 g
          4  | 58  | 1.3  | 18.85 | roaster's page on the chart, quoted: [64 − 4 × 1.5] × 0.013 / 4, in ounces
          16 | 169 | 1.81 | 19.12 | common practice, no source
          """)
  void publishedBrewsTeachThePublishedExtraction(
      double dose, double beverage, double strength, double extraction, String source) {
    List<BrewEntry> journal =
        many(brew(dose, beverage + 2 * dose, Optional.of(beverage), thrice(strength)));
    List<Fit.Point> points = fitter.fit(USUAL, journal).extraction();
    Fit.Point brewed = points.stream().filter(Fit.Point::brewed).findFirst().orElseThrow();
    assertEquals(extraction, brewed.extraction().value().percent(), 0.01, source);
    // a curve of one point is lifted as a whole
    assertEquals(
        extraction, points.get(points.size() - 1).extraction().value().percent(), 0.01, source);
  }

  @Test
  void oneBatchMovesTheProfileOnlyInPart() {
    // 960 − 810 over 60 = 2.5 g/g; (16 × 2.1 + 100 × 2.5) / 116 = 2.444828
    // 810 × 1.40 % / 60 = 18.9 %: 1.1 points under 20 %, of which 0.9 count: 19.01 %
    Fit fit = fitter.fit(USUAL, List.of(brew(60, 960, Optional.of(810.0), thrice(1.40))));
    assertEquals(2.444828, fit.absorption().orElseThrow().value().gramsPerGram(), 1e-6);
    assertEquals(1, fit.extraction().size());
    assertEquals(19.01, fit.extraction().get(0).extraction().value().percent(), 1e-9);
    assertEquals(20, fit.extraction().get(0).extraction().before().percent(), 1e-9);
    assertTrue(fit.odd().isEmpty());
  }

  @Test
  void anOddBatchIsNamedAndCounts() {
    List<BrewEntry> journal = new ArrayList<>();
    for (double beverage : new double[] {831, 828, 834, 830, 832}) {
      journal.add(brew(60, 960, Optional.of(beverage), thrice(1.40)));
    }
    double without = absorption(journal);
    BrewEntry odd = brew(60, 960, Optional.of(700.0), thrice(1.40));
    journal.add(odd);
    Fit fit = fitter.fit(USUAL, journal);
    assertEquals(List.of(odd.id(), odd.id()), fit.odd().stream().map(Oddity::entry).toList());
    assertTrue(fit.odd().stream().allMatch(Oddity::counted));
    assertTrue(fit.odd().get(0).reason().startsWith("its grounds kept 4.33\u00a0g/g"));
    assertEquals("Event, coffee-1", fit.odd().get(0).name());
    assertTrue(absorption(journal) > without + 0.1);
    assertEquals(6, fit.absorption().orElseThrow().entries());
  }

  @Test
  void whatCannotBeOrTellsNothingIsNamedAndLeftOut() {
    Fit fit =
        fitter.fit(
            USUAL,
            List.of(
                brew(60, 960, Optional.of(1000.0), thrice(1.4)),
                brew(10, 960, Optional.of(100.0), thrice(1.4)),
                brew(60, 960, Optional.empty(), thrice(4.9)),
                brew(60, 100, Optional.empty(), thrice(1.4)),
                brew(60, 960, Optional.empty(), thrice(1.4).and(thrice(1.6).taken().get(0))),
                brew(BrewMethod.IMMERSION, 60, 960, Optional.of(800.0), thrice(1.4))));
    assertEquals(6, fit.odd().size());
    assertTrue(fit.odd().stream().noneMatch(Oddity::counted));
    assertTrue(fit.absorption().isEmpty());
    // 1:1.67 with 2.1 g/g kept gives nothing; it was named too
    assertTrue(fit.extraction().isEmpty());
    assertFalse(fit.teaches());
  }

  @Test
  void anUnweighedBatchIsReadWithWhatTheOthersKept() {
    // the others keep 2.1 g/g, as believed: 1.40 % × (16 − 2.1) = 19.46 %
    List<BrewEntry> journal =
        new ArrayList<>(many(brew(60, 960, Optional.of(834.0), Readings.NONE)));
    journal.addAll(many(brew(60, 960, Optional.empty(), thrice(1.40))));
    List<Fit.Point> points = fitter.fit(USUAL, journal).extraction();
    assertEquals(19.46, points.get(0).extraction().value().percent(), 0.01);
  }

  @Test
  void ratiosFarApartTiltTheCurve() {
    // 22 % at 1:18 and 18 % at 1:12, 2.1 g/g kept: T = 22 / 15.9 and 18 / 9.9
    List<BrewEntry> journal =
        new ArrayList<>(many(brew(100, 1200, Optional.of(990.0), thrice(18 / 9.9))));
    journal.addAll(many(brew(100, 1800, Optional.of(1590.0), thrice(22 / 15.9))));
    List<Fit.Point> points = fitter.fit(USUAL, journal).extraction();
    // ends of what was brewed, and the curve's own ratio of 1:16 between them
    assertEquals(
        List.of(12.0, 16.0, 18.0), points.stream().map(p -> p.ratio().gramsPerGram()).toList());
    Learned<Extraction> middle = points.get(1).extraction();
    assertEquals(18, points.get(0).extraction().value().percent(), 0.02);
    assertEquals(18 + 4 * 4 / 6.0, middle.value().percent(), 0.02);
    assertEquals(22, points.get(2).extraction().value().percent(), 0.02);
  }

  private double absorption(List<BrewEntry> journal) {
    return fitter.fit(USUAL, journal).absorption().orElseThrow().value().gramsPerGram();
  }

  private static List<BrewEntry> many(BrewEntry entry) {
    return Collections.nCopies(60, entry);
  }
}
