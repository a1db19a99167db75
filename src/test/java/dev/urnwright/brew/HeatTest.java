package dev.urnwright.brew;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.Heat.Part;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Power;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatTest {
  /** Published worked examples; theirs take 4200, 4185.5 and 4200 J/(kg·K) where we take 4186. */
  @ParameterizedTest(name = "{0} kg from {1} to {2} °C at {3} W, {4} %: {5} s")
  @CsvSource({
    "1.8, 20, 100, 2000, 70, 432",
    "1, 20, 100, 2000, 90, 186",
    "1, 15, 100, 1500, 100, 238"
  })
  void heating(double kg, double from, double to, double watts, double percent, double seconds) {
    Duration time =
        Heat.heating(
            Mass.ofGrams(kg * 1000),
            celsius(from),
            celsius(to),
            Power.ofWatts(watts),
            Share.ofPercent(percent));
    assertEquals(seconds, time.toSeconds(), 0.006 * seconds);
  }

  @Test
  void heatingTenLitres() {
    // IAPWS-IF97 has 0.906 kWh for 10 l from 15 to 93 °C: 0.906 / 3 h = 18.1 min.
    Mass water = Volume.ofLitres(10).massOfWaterAt(celsius(15));
    Duration time =
        Heat.heating(water, celsius(15), celsius(93), Power.ofWatts(3000), Share.ofPercent(100));
    assertEquals(18.1, time.toSeconds() / 60.0, 0.05);
  }

  @Test
  void whatIsWarmNeedsNoHeating() {
    assertEquals(
        Duration.ZERO,
        Heat.heating(
            Mass.ofGrams(1000),
            celsius(93),
            celsius(90),
            Power.ofWatts(3000),
            Share.ofPercent(90)));
  }

  @Test
  void mixing() {
    // (2 · 85 + 1 · 20) / 3 = 190 / 3
    assertEquals(63.333, Heat.mix(part(2000, 85), part(1000, 20)).celsius(), 0.001);
    // And a vessel of 22 °C that takes as much heat as 300 g of water: (190 + 6.6) / 3.3
    assertEquals(59.576, Heat.mix(part(2000, 85), part(1000, 20), part(300, 22)).celsius(), 0.001);
    var nothing = assertThrows(IllegalArgumentException.class, Heat::mix);
    assertTrue(nothing.getMessage().contains("nothing"), nothing.getMessage());
  }

  @ParameterizedTest(name = "after {0} min {1} °C")
  // 80 °C in air of 20 °C loses 6 K in an hour: 60 K become 54, then 54 · 0.9 = 48.6; at half an
  // hour 60 · √0.9 = 56.921.
  @CsvSource({"0, 80", "30, 76.921", "60, 74", "120, 68.6"})
  void cooling(int minutes, double expected) {
    assertEquals(
        expected,
        Heat.cooled(celsius(80), celsius(20), 6, Duration.ofMinutes(minutes)).celsius(),
        0.001);
  }

  @Test
  void coolingInTwoStepsIsCoolingInOne() {
    Temperature once = Heat.cooled(celsius(80), celsius(20), 6, Duration.ofMinutes(75));
    Temperature half = Heat.cooled(celsius(80), celsius(20), 6, Duration.ofMinutes(30));
    // Of what is left to the air the vessel keeps losing a tenth in an hour.
    Temperature twice =
        Heat.cooled(half, celsius(20), half.kelvinsAbove(celsius(20)) / 10, Duration.ofMinutes(45));
    assertEquals(once.celsius(), twice.celsius(), 1e-9);
  }

  @Test
  void nothingCoolsBelowTheAir() {
    assertEquals(celsius(18), Heat.cooled(celsius(18), celsius(20), 6, Duration.ofMinutes(60)));
    assertEquals(celsius(80), Heat.cooled(celsius(80), celsius(20), 0, Duration.ofMinutes(60)));
    assertThrows(
        IllegalArgumentException.class,
        () -> Heat.cooled(celsius(25), celsius(20), 6, Duration.ofMinutes(60)));
    // all of the difference in an hour is too much, and so is gaining heat from cooler air
    assertThrows(
        IllegalArgumentException.class,
        () -> Heat.cooled(celsius(25), celsius(20), 5, Duration.ofMinutes(60)));
    assertThrows(
        IllegalArgumentException.class,
        () -> Heat.cooled(celsius(25), celsius(20), -1, Duration.ofMinutes(60)));
  }

  private static Part part(double grams, double celsius) {
    return new Part(Mass.ofGrams(grams), celsius(celsius));
  }

  private static Temperature celsius(double celsius) {
    return Temperature.ofCelsius(celsius);
  }
}
