package dev.urnwright.day;

import dev.urnwright.brew.Readings;
import dev.urnwright.brew.Readings.Reading;
import dev.urnwright.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether readings can be believed.
 *
 * @param stands whether three in a row agree, or there is none to judge
 * @param remarks what to do about them, in sentences; a temperature is questioned, never corrected
 *     for in silence
 */
public record Verdict(boolean stands, List<String> remarks) {
  /** Coffee refractometers are calibrated, and most read true, at this temperature. */
  public static final Temperature CALIBRATION = Temperature.ofCelsius(20);

  /** A sample further from it than this is questioned. */
  private static final double TOLERATED_KELVINS = 5;

  private static final String CAUSES =
      " Usual causes: the sample is not at room temperature; the prism was not wiped clean and dry;"
          + " it was not zeroed with distilled water; the beverage was not stirred.";

  /** Copies the list. */
  public Verdict {
    remarks = List.copyOf(remarks);
  }

  /** Judges the readings of one liquid. */
  public static Verdict of(Readings readings) {
    List<String> remarks = new ArrayList<>();
    int taken = readings.taken().size();
    if (taken > 0 && taken < Readings.AGREEING) {
      remarks.add(
          "Read again: "
              + (taken == 1 ? "one reading is" : "two readings are")
              + " not enough, three in a row must agree within 0.01\u00a0%.");
    } else if (taken > 0 && !readings.stand()) {
      remarks.add(
          String.format(
              Locale.ROOT,
              "Read again: the last three are %.2f\u00a0%% apart, and must agree within 0.01\u00a0%%.%s",
              readings.spreadPercent(),
              CAUSES));
    }
    readings.taken().stream()
        .map(Reading::sample)
        .flatMap(Optional::stream)
        .filter(sample -> Math.abs(sample.kelvinsAbove(CALIBRATION)) > TOLERATED_KELVINS)
        .findFirst()
        .ifPresent(
            sample ->
                remarks.add(
                    String.format(
                        Locale.ROOT,
                        "A sample was read at %.0f\u00a0°C. Most refractometers are calibrated at"
                            + " %.0f\u00a0°C and read wrong away from it: let the sample come to room"
                            + " temperature, covered, and read again. Nothing was corrected for it.",
                        sample.celsius(),
                        CALIBRATION.celsius())));
    return new Verdict(taken == 0 || readings.stand(), remarks);
  }
}
