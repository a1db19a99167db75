package dev.urnwright.input;

import dev.urnwright.quantity.Length;
import dev.urnwright.scale.Basket;
import dev.urnwright.scale.Basket.Shape;
import dev.urnwright.wording.Saying;
import java.util.List;
import java.util.Optional;

/** Binds where the grounds lie, which a reference and a brewer tell alike. */
final class BasketBinder {
  static final Field<Length> DIAMETER =
      Field.optional(
          "basket",
          Amounts.length("18 cm", "2 cm", "1000 mm"),
          "inside diameter of the basket or filter; of a cone, at its rim");
  static final Field<Shape> SHAPE =
      Field.optional(
          "shape",
          Words.choice(List.of("flat", "cone"), List.of(Shape.FLAT, Shape.CONE)),
          "whether the bed is flat or fills a cone");
  static final Field<Length> HEIGHT =
      Field.optional(
          "basket_height",
          Amounts.length("10 cm", "1 cm", "1000 mm"),
          "inside height of the basket, for grounds swell");

  private BasketBinder() {}

  /** The basket; empty when none is given. */
  static Optional<Basket> bind(MapReader map, String whose, Defaults defaults) {
    Optional<Length> diameter = map.read(DIAMETER);
    Optional<Shape> shape = map.read(SHAPE);
    Optional<Length> height = map.read(HEIGHT);
    if (diameter.isEmpty()) {
      defaults.noteOf(whose, "no-basket", () -> Saying.of("note.no-basket"));
      return Optional.empty();
    }
    return Optional.of(
        new Basket(
            defaults.fill(
                whose, shape, Shape.FLAT, "default-shape", () -> Saying.of("default.shape")),
            diameter.get(),
            height));
  }
}
