package dev.urnwright.brew;

import dev.urnwright.brew.ExtractionCurve.Knot;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What a brew model rests on, as it was weighed, read or assumed. Absorption and extraction follow
 * from the same weights and readings, so an error in one of these moves both; that is why errors go
 * in here and not into the model.
 *
 * <p>No error takes a quantity out of its range: grounds never keep less than nothing.
 *
 * @param method percolation or immersion
 * @param reference a brew that was weighed and read
 * @param absorption what the grounds keep, unless the reference tells
 * @param extraction when there is no point at all
 * @param points measured extractions at other ratios
 * @param steamLoss share of the brew water lost as vapour
 */
public record Evidence(
    BrewMethod method,
    Optional<Reference> reference,
    Kept absorption,
    Told extraction,
    List<Knot> points,
    Share steamLoss) {
  /** A ratio for a curve that is the same everywhere. */
  private static final BrewRatio ANYWHERE = BrewRatio.ofGramsPerGram(16);

  private static final ToDoubleFunction<Doubt> NONE = doubt -> 0;

  /** Copies the list. */
  public Evidence {
    points = List.copyOf(points);
  }

  /**
   * A brew that was weighed and read.
   *
   * @param dose above 0
   * @param water brew water
   * @param beverage what left the grounds, when it was weighed
   * @param strength as read
   */
  public record Reference(Mass dose, Mass water, Optional<Mass> beverage, Strength strength) {}

  /**
   * What the grounds keep.
   *
   * @param given by the user, before whatever the reference says
   * @param usual what is assumed when it is neither given nor weighed
   */
  public record Kept(Optional<Absorption> given, Absorption usual) {}

  /**
   * An extraction without a point.
   *
   * @param extraction which
   * @param assumed whether nobody read it
   */
  public record Told(Extraction extraction, boolean assumed) {}

  /** What the grounds of the reference kept, {@code a = (W(1 − v) − B) / D}, if it was weighed. */
  public Optional<Absorption> weighed() {
    return reference
        .filter(brew -> brew.beverage().isPresent())
        .map(brew -> Absorption.ofGramsPerGram(weighed(brew, NONE)));
  }

  /** The model, with nothing wrong. */
  public BrewModel model() {
    return model(NONE);
  }

  /**
   * The model, had these errors been made.
   *
   * @param errors in the units of each {@link Doubt}
   */
  public BrewModel model(ToDoubleFunction<Doubt> errors) {
    double kept = Math.max(0, profileAbsorption(errors) + errors.applyAsDouble(Doubt.ABSORPTION));
    return new BrewModel(
        method, curve(errors), Absorption.ofGramsPerGram(Math.min(20, kept)), steamLoss);
  }

  private double profileAbsorption(ToDoubleFunction<Doubt> errors) {
    return absorption
        .given()
        .map(
            given ->
                Math.max(0, given.gramsPerGram() + errors.applyAsDouble(Doubt.ABSORPTION_LEARNED)))
        .orElseGet(
            () ->
                reference
                    .filter(brew -> brew.beverage().isPresent())
                    .map(brew -> weighed(brew, errors))
                    .orElseGet(() -> assumed(errors)));
  }

  private double assumed(ToDoubleFunction<Doubt> errors) {
    return Math.max(
        0, absorption.usual().gramsPerGram() + errors.applyAsDouble(Doubt.ABSORPTION_ASSUMED));
  }

  private double weighed(Reference brew, ToDoubleFunction<Doubt> errors) {
    double beverage =
        brew.beverage().orElseThrow().grams() + errors.applyAsDouble(Doubt.REFERENCE_BEVERAGE);
    return Math.max(0, left(brew, errors) - beverage) / dose(brew, errors);
  }

  private ExtractionCurve curve(ToDoubleFunction<Doubt> errors) {
    List<Knot> knots = new ArrayList<>();
    points.forEach(point -> knots.add(shifted(point, errors)));
    reference
        .filter(brew -> points.stream().noneMatch(point -> point.ratio().equals(ratio(brew))))
        .ifPresent(brew -> knots.add(knot(brew, errors)));
    if (!knots.isEmpty()) {
      return ExtractionCurve.through(knots);
    }
    Knot told = new Knot(ANYWHERE, extraction.extraction(), 0);
    double apart = errors.applyAsDouble(Doubt.EXTRACTION);
    Extraction extracted =
        extraction.assumed()
            ? within(told.extraction(), errors.applyAsDouble(Doubt.EXTRACTION_ASSUMED) + apart)
            : shifted(told, errors).extraction();
    return ExtractionCurve.constant(ANYWHERE, extracted);
  }

  private Knot knot(Reference brew, ToDoubleFunction<Doubt> errors) {
    double water = left(brew, errors) / dose(brew, errors);
    double kept = brew.beverage().isPresent() ? weighed(brew, errors) : profileAbsorption(errors);
    double read = brew.strength().fraction() + errors.applyAsDouble(Doubt.READING);
    double ratio =
        (brew.water().grams() + errors.applyAsDouble(Doubt.REFERENCE_WATER)) / dose(brew, errors);
    return new Knot(
        BrewRatio.ofGramsPerGram(ratio),
        within(
            method.extraction(Math.max(0, read), water, kept),
            errors.applyAsDouble(Doubt.EXTRACTION)),
        0);
  }

  /** A measured extraction stands for a reading: that of a brew with the profile's absorption. */
  private Knot shifted(Knot point, ToDoubleFunction<Doubt> errors) {
    double water = point.ratio().gramsPerGram() * (1 - steamLoss.fraction());
    double kept = profileAbsorption(NONE);
    double moved =
        errors.applyAsDouble(Doubt.EXTRACTION) + errors.applyAsDouble(Doubt.EXTRACTION_LEARNED);
    if (water > kept) {
      double read = method.strength(point.extraction().fraction(), water, kept);
      double misread = Math.max(0, read + errors.applyAsDouble(Doubt.READING));
      moved += method.extraction(misread, water, kept) - method.extraction(read, water, kept);
    }
    return new Knot(point.ratio(), within(point.extraction(), moved), 0);
  }

  private static Extraction within(Extraction extraction, double moved) {
    return within(extraction.fraction(), moved);
  }

  private static Extraction within(double fraction, double moved) {
    return Extraction.ofFraction(Math.min(1, Math.max(0, fraction + moved)));
  }

  private static BrewRatio ratio(Reference brew) {
    return BrewRatio.of(brew.water(), brew.dose());
  }

  private double left(Reference brew, ToDoubleFunction<Doubt> errors) {
    return (brew.water().grams() + errors.applyAsDouble(Doubt.REFERENCE_WATER))
        * (1 - steamLoss.fraction());
  }

  private static double dose(Reference brew, ToDoubleFunction<Doubt> errors) {
    return brew.dose().grams() + errors.applyAsDouble(Doubt.REFERENCE_DOSE);
  }
}
