package dev.urnwright.event;

import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Water;
import java.util.List;

/**
 * What holds for all groups.
 *
 * @param provision how many cups are planned for uncertain guests
 * @param spill beverage lost on the way to the cup, as a share of what is drunk
 * @param serviceTemperature how warm the cup is; its volume is at this temperature
 * @param bypassTemperature how warm the bypass water is, and a dispenser when it is filled
 * @param fillingTemperature how warm the brew water is when it is measured by volume
 */
public record Serving(
    Provision provision,
    Share spill,
    Temperature serviceTemperature,
    Temperature bypassTemperature,
    Temperature fillingTemperature) {
  /** Refuses ice and steam: all three are temperatures of liquid water, from 0 to 99.97 °C. */
  public Serving {
    for (Temperature each : List.of(serviceTemperature, bypassTemperature, fillingTemperature)) {
      if (!Water.isLiquidAt(each)) {
        throw new IllegalArgumentException("water is liquid from 0 to 99.97 °C: " + each);
      }
    }
  }
}
