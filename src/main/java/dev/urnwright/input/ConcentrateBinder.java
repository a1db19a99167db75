package dev.urnwright.input;

import dev.urnwright.event.ConcentrateWish;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Span;
import dev.urnwright.quantity.Spelling;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnreadableException;
import dev.urnwright.wording.Saying;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds how strong the concentrate is to be. */
final class ConcentrateBinder {
  private static final Field<BrewRatio> RATIO =
      Field.optional("ratio", Numbers.ratio(), "brew water to coffee");
  private static final Field<Strength> STRENGTH =
      Field.optional("strength", Amounts.strength("1.75 %"), "of the undiluted beverage");
  private static final Field<ConcentrateWish> RANGE =
      Field.optional(
          "range",
          new Scalar<>(
              Shape.Value.of(Spelling.ratios(), "expected two ratios such as 12 to 16"),
              ConcentrateBinder::range),
          "two ratios between which the planner chooses");
  private static final Fields FIELDS = Fields.of("concentrate", RATIO, STRENGTH, RANGE);

  static final Field<Node> CONCENTRATE =
      Field.optional("concentrate", Part.mapping(FIELDS), "how strong it is brewed");

  private final Binding binding;

  ConcentrateBinder(Binding binding) {
    this.binding = binding;
  }

  /** The wish of a coffee; empty when it is a problem. */
  Optional<ConcentrateWish> bind(String coffee, MapReader map) {
    if (!map.has(CONCENTRATE)) {
      binding
          .defaults()
          .noteOf(coffee, "default-concentrate", () -> Saying.of("default.concentrate"));
      return Optional.of(new ConcentrateWish.AsReference());
    }
    return map.read(CONCENTRATE)
        .flatMap(node -> MapReader.of(node, FIELDS, binding.problems()))
        .flatMap(this::wish);
  }

  private Optional<ConcentrateWish> wish(MapReader map) {
    List<Field<?>> given = FIELDS.fields().stream().filter(map::has).toList();
    Optional<ConcentrateWish> ratio = map.read(RATIO).map(ConcentrateWish.ByRatio::new);
    Optional<ConcentrateWish> strength = map.read(STRENGTH).map(ConcentrateWish.ByStrength::new);
    Optional<ConcentrateWish> range = map.read(RANGE);
    if (given.size() != 1) {
      binding
          .problems()
          .at(
              map.start(),
              given.isEmpty()
                  ? "this concentrate has neither ratio, strength nor range"
                  : "this concentrate is given in " + given.size() + " ways",
              "expected one of ratio: 13, strength: 1.75 % or range: 12 to 16");
      return Optional.empty();
    }
    return ratio.or(() -> strength).or(() -> range);
  }

  private static ConcentrateWish range(String text) {
    Span span = Numbers.ratios(text);
    BrewRatio strongest = BrewRatio.parse(span.from());
    BrewRatio weakest = BrewRatio.parse(span.to());
    if (strongest.compareTo(weakest) > 0) {
      throw new UnreadableException(
          Words.quoted(text) + " does not go from less to more",
          "expected two ratios such as 12 to 16");
    }
    return new ConcentrateWish.Between(strongest, weakest);
  }
}
