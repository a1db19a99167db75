package dev.urnwright.input;

import dev.urnwright.event.Kitchen.WaterCare;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import java.util.Optional;

/** Binds how warm things are in the kitchen, and what rinsing takes. */
final class WaterCareBinder {
  static final Field<Boolean> PREHEAT =
      Field.optional(
          "preheat", Words.yesOrNo(), "whether dispensers are rinsed hot before filling");
  static final Field<Temperature> TAP =
      Field.optional(
          "tap",
          Amounts.temperature("15 °C", "0 °C", "40 °C"),
          "the water that heaters are filled with");
  static final Field<Temperature> AIR =
      Field.optional(
          "air", Amounts.temperature("20 °C", "-30 °C", "50 °C"), "around the dispensers");
  static final Field<Temperature> CONCENTRATE =
      Field.optional("concentrate", Amounts.temperature("88 °C"), "as it leaves the brewer");
  static final Field<Volume> RINSE =
      Field.optional(
          "rinse", Amounts.volume("300 ml", "0 ml", "20 l"), "hot water to rinse one filter");

  private static final WaterCare USUAL = WaterCare.USUAL;

  private final Binding binding;
  private final KitchenUse use;

  WaterCareBinder(Binding binding, KitchenUse use) {
    this.binding = binding;
    this.use = use;
  }

  WaterCare bind(Optional<MapReader> map, boolean heaters) {
    return new WaterCare(
        temperature(
            use.timed() && heaters,
            map.flatMap(kitchen -> kitchen.read(TAP)),
            USUAL.tap(),
            "default-tap",
            "Heaters are filled from the tap at "),
        temperature(
            use.hot(),
            map.flatMap(kitchen -> kitchen.read(AIR)),
            USUAL.air(),
            "default-air",
            "The air around the dispensers is at "),
        temperature(
            use.hot(),
            map.flatMap(kitchen -> kitchen.read(CONCENTRATE)),
            USUAL.concentrate(),
            "default-concentrate-temperature",
            "Concentrate leaves the brewer at "),
        use.fill(
            use.timed(),
            map.flatMap(kitchen -> kitchen.read(RINSE)),
            USUAL.rinse(),
            "default-rinse",
            () -> "Filters are not rinsed: no hot water is counted for it"),
        use.fill(
            use.hot() && use.dispensers(),
            map.flatMap(kitchen -> kitchen.read(PREHEAT)),
            USUAL.preheat(),
            "default-preheat",
            () -> "Dispensers are rinsed hot before they are filled"));
  }

  private Temperature temperature(
      boolean matters,
      Optional<Temperature> given,
      Temperature usual,
      String code,
      String sentence) {
    return use.fill(
        matters, given, usual, code, () -> sentence + binding.display().temperature(usual));
  }
}
