package dev.urnwright.input;

import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Measure;
import dev.urnwright.quantity.Strength;
import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds a brew that was weighed, and refuses figures that can't belong together. */
final class ReferenceBinder {
  private static final Field<Mass> DOSE =
      Field.required(
          "dose",
          Slip.asked(
              Amounts.mass("60 g", "1 g", "50 kg"),
              dose -> dose.grams() >= 10 && dose.grams() <= 1000),
          "dry ground coffee");
  private static final Field<Measure> WATER =
      Field.required("water", Amounts.water("960 g", "10 g", "1000 kg"), "brew water");
  private static final Field<Mass> BEVERAGE =
      Field.optional(
          "beverage", Amounts.mass("831 g", "1 g", "1000 kg"), "what ran through, weighed");
  private static final Field<Strength> STRENGTH =
      Field.required("strength", Amounts.strength("1.40 %"), "what the refractometer read");
  static final Fields FIELDS = Fields.of("reference", DOSE, WATER, BEVERAGE, STRENGTH);

  private static final double LEAST_RATIO = 2;
  private static final double GREATEST_RATIO = 50;
  private static final double LEAST_EXTRACTION = 0.05;
  private static final double GREATEST_EXTRACTION = 0.35;

  private final Binding binding;
  private final FilledWater filled;

  ReferenceBinder(Binding binding, FilledWater filled) {
    this.binding = binding;
    this.filled = filled;
  }

  Optional<ReferenceBrew> bind(String coffee, Node node) {
    return MapReader.of(node, FIELDS, binding.problems())
        .flatMap(map -> bind("the reference of " + coffee, map));
  }

  /** Binds a brew out of a mapping that may say more of it. */
  Optional<ReferenceBrew> bind(String whose, MapReader map) {
    Optional<Mass> dose = map.read(DOSE);
    Optional<Mass> water = map.read(WATER).map(measure -> filled.weighed(measure, whose));
    Optional<Mass> beverage = map.read(BEVERAGE);
    Optional<Strength> strength = map.read(STRENGTH);
    if (dose.isEmpty()
        || water.isEmpty()
        || strength.isEmpty()
        || (map.has(BEVERAGE) && beverage.isEmpty())) {
      return Optional.empty();
    }
    ReferenceBrew brew = new ReferenceBrew(dose.get(), water.get(), beverage, strength.get());
    return belongsTogether(brew, map) ? Optional.of(brew) : Optional.empty();
  }

  private boolean belongsTogether(ReferenceBrew brew, MapReader map) {
    double ratio = brew.water().grams() / brew.dose().grams();
    if (ratio < LEAST_RATIO || ratio > GREATEST_RATIO) {
      return refuse(
          map.valueOf(WATER),
          "this water is " + rounded(ratio) + " times the dose",
          "expected from 2 to 50 times the dose");
    }
    if (brew.beverage().isEmpty()) {
      return true;
    }
    Mass beverage = brew.beverage().get();
    if (beverage.compareTo(brew.water()) >= 0) {
      return refuse(
          map.valueOf(BEVERAGE),
          "this beverage weighs as much as the brew water, or more",
          "expected less, for the grounds keep some; weigh what ran through");
    }
    double extraction = brew.strength().fraction() * beverage.grams() / brew.dose().grams();
    if (extraction < LEAST_EXTRACTION || extraction > GREATEST_EXTRACTION) {
      return refuse(
          map.start(),
          "dose, beverage and strength make an extraction of " + rounded(extraction * 100) + " %",
          "expected from 5 % to 35 %; check the three");
    }
    return true;
  }

  private boolean refuse(Location place, String wrong, String expected) {
    binding.problems().at(place, wrong, expected);
    return false;
  }

  private static String rounded(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
