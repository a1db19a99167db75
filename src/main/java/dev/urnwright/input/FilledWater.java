package dev.urnwright.input;

import dev.urnwright.quantity.Dimension;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Measure;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.wording.Saying;

/** Brew water that may have been given by volume. */
final class FilledWater {
  private final Binding binding;
  private final Temperature filling;

  FilledWater(Binding binding, Temperature filling) {
    this.binding = binding;
    this.filling = filling;
  }

  /** As a mass: that of a volume at the filling temperature, which is noted. */
  Mass weighed(Measure measure, String whose) {
    if (measure.dimension() == Dimension.MASS) {
      return measure.mass();
    }
    binding
        .defaults()
        .noteOf(
            whose,
            "water-by-volume",
            () ->
                Saying.of("note.water-by-volume")
                    .with("temperature", binding.display().temperature(filling)));
    return measure.volume().massOfWaterAt(filling);
  }
}
