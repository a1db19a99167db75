package dev.urnwright.brew;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.Heat.Part;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Power;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Temperature;
import java.time.Duration;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Heat by small steps of time, by pairs, and in the limits, against the formulas. */
class HeatRederivedTest {
  private static final double SPECIFIC = 4.186; // J/(g·K)

  private final SplittableRandom random = new SplittableRandom(43);

  /**
   * Newton's law in seconds: {@code dθ/dt = −(θ − air)/τ}, by the classical Runge-Kutta steps, with
   * τ found from the first hour's loss: {@code exp(−1 h/τ) = 1 − loss/difference}.
   */
  @Test
  void coolingSecondBySecond() {
    for (int trial = 0; trial < 20; trial++) {
      double start = random.nextDouble(60, 95);
      double air = random.nextDouble(-5, 30);
      double loss = random.nextDouble(0.5, 20);
      int seconds = random.nextInt(0, 4 * 3600);
      double tau = -3600 / Math.log(1 - loss / (start - air));
      double theta = start;
      for (int t = 0; t < seconds; t++) {
        double k1 = -(theta - air) / tau;
        double k2 = -(theta + k1 / 2 - air) / tau;
        double k3 = -(theta + k2 / 2 - air) / tau;
        double k4 = -(theta + k3 - air) / tau;
        theta += (k1 + 2 * k2 + 2 * k3 + k4) / 6;
      }
      assertEquals(theta, cooled(start, air, loss, seconds), 1e-7);
    }
  }

  /** In the limits: nothing lost in no time, the loss itself in an hour, the air in the end. */
  @Test
  void coolingInTheLimits() {
    assertEquals(85, cooled(85, 20, 5, 0), 1e-12);
    assertEquals(80, cooled(85, 20, 5, 3600), 1e-12);
    assertEquals(20, cooled(85, 20, 5, 3600 * 24 * 30), 1e-9);
    // As warm as the air it stays; a hair's breadth above, too, losing nearly all of that hair.
    assertEquals(20, cooled(20, 20, 5, 3600), 0);
    assertEquals(20, cooled(20 + 1e-6, 20, 0.99e-6, 3600), 1e-6);
  }

  /** Joules counted second by second until the water is hot. */
  @Test
  void heatingSecondBySecond() {
    for (int trial = 0; trial < 20; trial++) {
      double grams = random.nextDouble(500, 30_000);
      double from = random.nextDouble(5, 40);
      double to = random.nextDouble(41, 98);
      double watts = random.nextDouble(500, 6000);
      double efficiency = random.nextDouble(0.5, 1);
      double theta = from;
      int seconds = 0;
      while (theta < to - 1e-9) {
        theta += watts * efficiency / (grams * SPECIFIC);
        seconds++;
      }
      assertEquals(seconds, heating(grams, from, to, watts, efficiency), trial + " trial");
    }
  }

  /** By hand: 1000 g by 1 K at 4186 W take one second, and a little more takes two. */
  @Test
  void aBegunSecondCounts() {
    assertEquals(1, heating(1000, 20, 21, 4186, 1));
    assertEquals(2, heating(1000, 20, 21, 4185, 1));
    assertEquals(2, heating(1000, 20, 21, 4186, 0.5));
    assertEquals(0, heating(1000, 21, 21, 4186, 1));
    assertEquals(0, heating(1000, 22, 21, 4186, 1));
  }

  /** Two by two in any order, heat neither made nor lost: Σ m·θ stays. */
  @Test
  void mixingTwoByTwo() {
    for (int trial = 0; trial < 50; trial++) {
      Part a = part(random.nextDouble(1, 5000), random.nextDouble(0, 98));
      Part b = part(random.nextDouble(1, 5000), random.nextDouble(0, 98));
      Part c = part(random.nextDouble(1, 5000), random.nextDouble(0, 98));
      double all = Heat.mix(a, b, c).celsius();
      Part ab = new Part(a.mass().plus(b.mass()), Heat.mix(a, b));
      Part bc = new Part(b.mass().plus(c.mass()), Heat.mix(b, c));
      assertEquals(all, Heat.mix(ab, c).celsius(), 1e-9);
      assertEquals(all, Heat.mix(a, bc).celsius(), 1e-9);
      // what a gives to come to the mixture, the others take
      double given = 0;
      for (Part part : new Part[] {a, b, c}) {
        given += part.mass().grams() * (part.temperature().celsius() - all);
      }
      assertEquals(0, given, 1e-6);
      double coldest =
          Math.min(
              a.temperature().celsius(),
              Math.min(b.temperature().celsius(), c.temperature().celsius()));
      double hottest =
          Math.max(
              a.temperature().celsius(),
              Math.max(b.temperature().celsius(), c.temperature().celsius()));
      assertTrue(all >= coldest - 1e-9 && all <= hottest + 1e-9);
    }
    // one part alone keeps its temperature, and a part of nothing has no say
    assertEquals(85, Heat.mix(part(300, 85)).celsius(), 1e-12);
    assertEquals(85, Heat.mix(part(300, 85), part(0, 10)).celsius(), 1e-12);
  }

  private static double cooled(double start, double air, double loss, int seconds) {
    return Heat.cooled(
            Temperature.ofCelsius(start),
            Temperature.ofCelsius(air),
            loss,
            Duration.ofSeconds(seconds))
        .celsius();
  }

  private static long heating(
      double grams, double from, double to, double watts, double efficiency) {
    return Heat.heating(
            Mass.ofGrams(grams),
            Temperature.ofCelsius(from),
            Temperature.ofCelsius(to),
            Power.ofWatts(watts),
            Share.ofFraction(efficiency))
        .toSeconds();
  }

  private static Part part(double grams, double celsius) {
    return new Part(Mass.ofGrams(grams), Temperature.ofCelsius(celsius));
  }
}
