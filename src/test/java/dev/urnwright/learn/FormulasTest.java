package dev.urnwright.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import org.junit.jupiter.api.Test;

class FormulasTest {
  private static final LineFit.Trust TRUST = new LineFit.Trust(0.015, 0.003, 0.005);

  /** t for 97.5 % and 4 degrees of freedom, any table. */
  private static final double T4 = 2.776445;

  @Test
  void oneEntryMovesTheMeanByItsShareOfTheTrust() {
    // 1/0.25² = 16 for what was believed, 1/0.1² = 100 for the entry:
    // (16 × 2.1 + 100 × 2.4) / 116 = 2.358621; 2.776445 / √116 = 0.257787
    MeanFit fit = MeanFit.of(2.1, 0.25, 0.1, new double[] {2.4});
    assertEquals(2.358621, fit.value(), 1e-6);
    assertEquals(0.257787, fit.reach(), 1e-6);
  }

  @Test
  void scatterIsPooledWithTheUsual() {
    // (4 × 0.1² + 2 × 0.3²) / (4 + 1) = 0.044, of two entries 0.3 to either side of their mean
    Scatter scatter = Scatter.pooled(0.1, 0.18, 1);
    assertEquals(0.044, scatter.variance(), 1e-12);
    assertEquals(2.570582, scatter.reach(), 1e-6); // 5 degrees of freedom, any table
  }

  @Test
  void nothingSeenLeavesWhatWasBelieved() {
    MeanFit fit = MeanFit.of(2.1, 0.25, 0.1, new double[0]);
    assertEquals(2.1, fit.value(), 0);
    assertEquals(T4 * 0.25, fit.reach(), 1e-6);
  }

  @Test
  void manyAlikeEntriesLeaveNothingOfIt() {
    double[] many =
        Collections.nCopies(500, 2.6).stream().mapToDouble(Double::doubleValue).toArray();
    MeanFit fit = MeanFit.of(2.1, 0.25, 0.1, many);
    assertEquals(2.6, fit.value(), 1e-4);
    assertTrue(fit.reach() < 0.002);
  }

  @Test
  void onePointLiftsTheWholeLine() {
    // 1/0.005² = 40 000 against 1/0.015² = 4444.44: 0.01 × 40 000 / 44 444.44 = 0.009
    LineFit line = new LineFit(TRUST, new double[] {15}, new double[] {0.01});
    assertEquals(0.009, line.at(15), 1e-12);
    assertEquals(0.009, line.at(20), 1e-12);
    assertEquals(T4 / Math.sqrt(40_000 + 4444.444), line.reachAt(15), 1e-7);
  }

  @Test
  void twoPointsTiltItAsFarAsTheSlopeIsTrusted() {
    // height: 0.005 × 80 000 / 84 444.44 = 0.00473684
    // slope: Σ(x − 15)·y / 0.005² = 400, over 2/0.005² + 1/0.003² = 191 111.1: 0.00209302
    LineFit line = new LineFit(TRUST, new double[] {14, 16}, new double[] {0, 0.01});
    assertEquals(0.00473684, line.at(15), 1e-8);
    assertEquals(0.00473684 + 0.00209302, line.at(16), 1e-8);
    assertEquals(0.00473684 - 0.00209302, line.at(14), 1e-8);
    // past what was brewed it goes on as at the end
    assertEquals(line.at(16), line.at(18), 0);
    assertEquals(T4 * Math.sqrt(1 / 84_444.444 + 1 / 191_111.11), line.reachAt(16), 1e-7);
  }

  @Test
  void manyPointsOnALineAreThatLine() {
    double[] x = new double[400];
    double[] y = new double[400];
    for (int i = 0; i < x.length; i++) {
      x[i] = 12 + i % 5;
      y[i] = 0.02 - 0.004 * (x[i] - 12);
    }
    LineFit line = new LineFit(TRUST, x, y);
    assertEquals(0.02, line.at(12), 1e-5);
    assertEquals(0.004, line.at(16), 1e-5);
  }

  @Test
  void oddIsFarFromTheMiddleOfFiveOrMore() {
    // median 2.2; distances 0.2, 0.1, 0, 0.1, 1.0: MAD 0.1; 3.5 / 0.6745 × 0.1 = 0.5189
    Middle middle = Middle.of(0.01, new double[] {2.0, 2.1, 2.2, 2.3, 3.2});
    assertEquals(2.2, middle.median(), 1e-12);
    assertEquals(0.5189, middle.far(), 1e-4);
    assertTrue(middle.isOdd(3.2));
    assertFalse(middle.isOdd(2.7));
    assertFalse(Middle.of(0.01, new double[] {2.0, 2.1, 2.2, 9}).isOdd(9));
  }
}
