package dev.urnwright.input;

import dev.urnwright.event.Uncertainties;
import dev.urnwright.event.Uncertainties.Scales;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Unit;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds how far off things may be. */
final class UncertaintyBinder {
  private static final Field<Mass> SCALE =
      Field.optional(
          "scale",
          Amounts.mass("2 g", "0 g", "100 g"),
          "of the scale under dose, concentrate and bypass");
  private static final Field<Mass> REFERENCE_SCALE =
      Field.optional(
          "reference_scale",
          Amounts.mass("0.4 g", "0 g", "100 g"),
          "of the scale under the reference brew");
  private static final Field<Strength> REFRACTOMETER =
      Field.optional(
          "refractometer",
          Amounts.percentage("0.03 %", "0 %", "1 %", Strength::ofPercent),
          "of what it reads, in points of strength");
  private static final Field<Share> BREW_WATER =
      Field.optional(
          "brew_water",
          Amounts.share("1 %", "0 %", "20 %"),
          "of the water filled into a brewer, as a part of it");
  private static final Field<Absorption> ABSORPTION =
      Field.optional(
          "absorption",
          Amounts.absorption("0.15 g/g", "0 g/g", "2 g/g"),
          "of what the grounds of one batch keep");
  private static final Field<Extraction> EXTRACTION =
      Field.optional(
          "extraction",
          Amounts.percentage("0.4 %", "0 %", "5 %", Extraction::ofPercent),
          "of what one batch extracts, in points");
  private static final Field<Share> CUP =
      Field.optional("cup", Amounts.share("3 %", "0 %", "30 %"), "of what is poured into a cup");

  private static final Fields FIELDS =
      Fields.of(
          "uncertainty",
          SCALE,
          REFERENCE_SCALE,
          REFRACTOMETER,
          BREW_WATER,
          ABSORPTION,
          EXTRACTION,
          CUP);

  static final Field<Node> UNCERTAINTY =
      Field.optional(
          "uncertainty",
          Part.mapping(FIELDS),
          "standard uncertainties: two times out of three the truth is nearer than that");

  private final Binding binding;
  private final Display display;
  private final List<Saying> assumed = new ArrayList<>();

  UncertaintyBinder(Binding binding) {
    this.binding = binding;
    this.display = binding.display();
  }

  Uncertainties bind(MapReader event) {
    Optional<MapReader> map =
        event.read(UNCERTAINTY).flatMap(node -> MapReader.of(node, FIELDS, binding.problems()));
    Uncertainties usual = Uncertainties.usual(display.scaleStep());
    Uncertainties uncertainties =
        new Uncertainties(
            new Scales(
                fill(map, SCALE, usual.scales().kitchen(), grams(usual.scales().kitchen())),
                fill(
                    map,
                    REFERENCE_SCALE,
                    usual.scales().reference(),
                    grams(usual.scales().reference()))),
            fill(
                map, REFRACTOMETER, usual.refractometer(), display.strength(usual.refractometer())),
            fill(map, BREW_WATER, usual.brewWater(), display.share(usual.brewWater())),
            fill(map, ABSORPTION, usual.absorption(), display.absorption(usual.absorption())),
            fill(map, EXTRACTION, usual.extraction(), display.extraction(usual.extraction())),
            fill(map, CUP, usual.cup(), display.share(usual.cup())));
    assumed.stream()
        .reduce(
            (all, next) -> Saying.of("default.uncertainty.and").with("all", all).with("next", next))
        .ifPresent(
            all ->
                binding
                    .defaults()
                    .note(
                        "default-uncertainty",
                        Saying.of("default.uncertainty").with("assumed", all)));
    return uncertainties;
  }

  private Figure grams(Mass mass) {
    return display.uncertainty(mass.grams(), Unit.GRAM);
  }

  private <T> T fill(Optional<MapReader> map, Field<T> field, T usual, Figure written) {
    Optional<T> given = map.flatMap(reader -> reader.read(field));
    if (given.isEmpty()) {
      assumed.add(
          Saying.of("default.uncertainty." + field.name().replace('_', '-')).with("size", written));
    }
    return given.orElse(usual);
  }
}
