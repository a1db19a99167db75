package dev.urnwright.input;

import dev.urnwright.event.Kitchen.WaterCare;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import dev.urnwright.wording.Saying;
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
            "default-tap"),
        temperature(
            use.hot(), map.flatMap(kitchen -> kitchen.read(AIR)), USUAL.air(), "default-air"),
        temperature(
            use.hot(),
            map.flatMap(kitchen -> kitchen.read(CONCENTRATE)),
            USUAL.concentrate(),
            "default-concentrate-temperature"),
        use.fill(
            use.timed(),
            map.flatMap(kitchen -> kitchen.read(RINSE)),
            USUAL.rinse(),
            "default-rinse",
            () -> Saying.of("default.rinse")),
        use.fill(
            use.hot() && use.dispensers(),
            map.flatMap(kitchen -> kitchen.read(PREHEAT)),
            USUAL.preheat(),
            "default-preheat",
            () -> Saying.of("default.preheat")));
  }

  private Temperature temperature(
      boolean matters, Optional<Temperature> given, Temperature usual, String code) {
    return use.fill(
        matters,
        given,
        usual,
        code,
        () ->
            Saying.of(code.replaceFirst("-", "."))
                .with("temperature", binding.display().temperature(usual)));
  }
}
