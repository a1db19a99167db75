package dev.urnwright.input;

import dev.urnwright.event.Provision;
import dev.urnwright.event.Serving;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.wording.Saying;
import java.util.Optional;

/** Binds what holds for all groups. */
final class ServingBinder {
  static final Field<Share> SERVICE_LEVEL =
      Field.optional(
          "service_level",
          Amounts.share("95 %", "1 %", "99.99 %"),
          "how sure it is to be that each group has enough cups");
  static final Field<Double> OVERAGE =
      Field.optional(
          "overage",
          Amounts.percentage("10 %", "0 %", "500 %", percent -> percent / 100),
          "so much more than the mean, instead of a service level");
  static final Field<Share> SPILL =
      Field.optional(
          "spill", Amounts.share("2 %", "0 %", "50 %"), "beverage lost on the way to the cup");
  static final Field<Temperature> SERVICE_TEMPERATURE =
      Field.optional(
          "service_temperature", Amounts.temperature("75 °C"), "how warm it is in the cup");
  static final Field<Temperature> BYPASS_TEMPERATURE =
      Field.optional(
          "bypass_temperature", Amounts.temperature("92 °C"), "how warm the bypass water is");
  static final Field<Temperature> FILLING_TEMPERATURE =
      Field.optional(
          "filling_temperature",
          Amounts.temperature("20 °C"),
          "how warm the brew water is when it is measured by volume");

  private static final Temperature USUAL_SERVICE = Temperature.ofCelsius(75);
  private static final Temperature USUAL_BYPASS = Temperature.ofCelsius(92);
  private static final Temperature USUAL_FILLING = Temperature.ofCelsius(20);

  private final Binding binding;

  ServingBinder(Binding binding) {
    this.binding = binding;
  }

  Serving bind(MapReader event) {
    Share none = Share.ofPercent(0);
    return new Serving(
        provision(event),
        binding
            .defaults()
            .fill(
                event.read(SPILL),
                none,
                "default-spill",
                () -> Saying.of("default.spill").with("share", binding.display().share(none))),
        temperature(event, SERVICE_TEMPERATURE, USUAL_SERVICE),
        temperature(event, BYPASS_TEMPERATURE, USUAL_BYPASS),
        temperature(event, FILLING_TEMPERATURE, USUAL_FILLING));
  }

  private Provision provision(MapReader event) {
    event.oneOf(SERVICE_LEVEL, OVERAGE);
    Optional<Provision> level = event.read(SERVICE_LEVEL).map(Provision.ServiceLevel::new);
    Optional<Provision> overage = event.read(OVERAGE).map(Provision.Overage::new);
    return binding
        .defaults()
        .fill(
            level.or(() -> overage),
            new Provision.Mean(),
            "default-provision",
            () -> Saying.of("default.provision"));
  }

  private Temperature temperature(MapReader event, Field<Temperature> field, Temperature usual) {
    String name = field.name().replace('_', '-');
    return binding
        .defaults()
        .fill(
            event.read(field),
            usual,
            "default-" + name,
            () ->
                Saying.of("default." + name)
                    .with("temperature", binding.display().temperature(usual)));
  }
}
