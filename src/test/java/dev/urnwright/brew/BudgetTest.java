package dev.urnwright.brew;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.urnwright.brew.Budget.Input;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.correlation.Covariance;
import org.apache.commons.math3.stat.descriptive.moment.Mean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BudgetTest {
  /** Five sets of readings, from memory of JCGM 100:2008, table H.2: V, mA, rad. */
  private static final double[][] READINGS = {
    {5.007, 19.663, 1.0456},
    {4.994, 19.639, 1.0438},
    {5.005, 19.640, 1.0468},
    {4.990, 19.685, 1.0428},
    {4.999, 19.678, 1.0433},
  };

  /**
   * JCGM 100:2008, H.2, simultaneous resistance and reactance, all figures from memory: {@code R =
   * V/I·cos φ}, {@code X = V/I·sin φ}, {@code Z = V/I} are printed as 127.732 (0.071) Ω, 219.847
   * (0.295) Ω, 254.260 (0.236) Ω. V, I and φ were read together and are correlated, so they are
   * written as functions of three that aren't: {@code x = mean + L·z}, with {@code L·Lᵀ} the
   * covariance of the means (by the reference library) and the variance of each z one.
   */
  @ParameterizedTest
  @CsvSource({"R, 127.732, 0.071", "X, 219.847, 0.295", "Z, 254.260, 0.236"})
  void correlatedReadingsOfResistanceAndReactance(String name, double printed, double uncertainty) {
    RealMatrix readings = new Array2DRowRealMatrix(READINGS);
    double[] means =
        IntStream.range(0, 3)
            .mapToDouble(i -> new Mean().evaluate(readings.getColumn(i)))
            .toArray();
    RealMatrix ofTheMeans = new Covariance(readings).getCovarianceMatrix().scalarMultiply(1 / 5.0);
    RealMatrix root = new CholeskyDecomposition(ofTheMeans, 1e-6, 0).getL();
    Budget<String> budget =
        Budget.of(
            z -> {
              double[] moved = root.operate(z);
              double volts = means[0] + moved[0];
              double amperes = (means[1] + moved[1]) / 1000;
              double radians = means[2] + moved[2];
              double part =
                  name.equals("R") ? Math.cos(radians) : name.equals("X") ? Math.sin(radians) : 1;
              return volts / amperes * part;
            },
            List.of(
                new Input<>("first", 0, 1),
                new Input<>("second", 0, 1),
                new Input<>("third", 0, 1)));
    assertEquals(printed, budget.value(), 0.0005); // as printed
    // One in the last printed digit: the guide goes on from rounded correlations.
    assertEquals(uncertainty, budget.uncertainty(), 0.001);
  }

  /**
   * JCGM 100:2008, 5.1.6: for products the relative squares add. By hand: E = 1.30 % × 300 / 20 =
   * 19.50 %; √((1/300)² + (0.03/1.30)² + (0.1/20)²) = √(0.00001111 + 0.00053254 + 0.00002500) =
   * 0.023846; times 19.50 % is 0.465 %.
   */
  @Test
  void anExtractionFromThreeReadings() {
    Budget<String> budget =
        Budget.of(
            x -> x[0] * x[1] / x[2],
            List.of(
                new Input<>("beverage, g", 300, 1),
                new Input<>("strength, %", 1.30, 0.03),
                new Input<>("dose, g", 20, 0.1)));
    assertEquals(19.50, budget.value(), 1e-12);
    assertEquals(0.4650, budget.uncertainty(), 0.00005);
    // The reading's part: 0.00053254 / 0.00056865 = 93.65 %.
    assertEquals(0.9365, budget.share(budget.lines().subList(1, 2)), 0.00005);
    // Without it: 19.50 % × √0.00003611 = 0.1172 %.
    assertEquals(0.1172, budget.uncertaintyWithout(budget.lines().subList(1, 2)), 0.00005);
  }

  /** By hand: y = 2·(3a − b), with u(a) = 0.2 and u(b) = 0.8, so u = 2·√(0.6² + 0.8²) = 2. */
  @Test
  void aPartOfAPart() {
    Budget<String> part =
        Budget.of(
            x -> 3 * x[0] - x[1], List.of(new Input<>("a", 1, 0.2), new Input<>("b", 1, 0.8)));
    assertEquals(1, part.uncertainty(), 1e-9);
    Budget<String> whole = new Budget<String>(4, List.of()).with(part, 2);
    assertEquals(2, whole.uncertainty(), 1e-9);
    assertEquals(4, whole.value());
  }

  @Test
  void whatIsKnownExactlyHasNoLine() {
    Budget<String> budget =
        Budget.of(x -> x[0] + x[1], List.of(new Input<>("a", 1, 0), new Input<>("b", 2, 0.5)));
    assertEquals(List.of("b"), budget.lines().stream().map(l -> l.input().source()).toList());
    Budget<String> exact = Budget.of(x -> 7, List.<Input<String>>of());
    assertEquals(0, exact.uncertainty());
    assertEquals(0, exact.share(exact.lines()));
  }

  @Test
  void refusesAnUncertaintyThatIsNone() {
    assertThrows(IllegalArgumentException.class, () -> new Input<>("a", 1, -0.1));
    assertThrows(IllegalArgumentException.class, () -> new Input<>("a", 1, Double.NaN));
    assertThrows(
        IllegalArgumentException.class, () -> new Input<>("a", 1, Double.POSITIVE_INFINITY));
  }
}
