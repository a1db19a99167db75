package dev.urnwright.scale;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewBalance;
import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.Brewer;
import dev.urnwright.event.Equipment;
import dev.urnwright.event.Uncertainties;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Length;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.BatchSplit;
import dev.urnwright.schedule.DoseRange;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Makes recipes for one brewer: at the usual ratio, or stronger with water round the bed. */
final class RecipeMaker {
  /** Beverage as it runs into the vessel. */
  static final Temperature IN_THE_VESSEL = Temperature.ofCelsius(88);

  /** Brew water as it leaves the spray head. */
  private static final Temperature SPRAYED = Temperature.ofCelsius(93);

  /** Bloom water for each gram of dose, and how long it stands: the usual practice. */
  static final double BLOOM_PER_DOSE = 2;

  private static final Duration BLOOM_WAIT = Duration.ofSeconds(30);
  private static final int SETTLING = 8;
  private static final int TENTHS = 10;

  private final ScaleRequest request;
  private final BrewModel model;
  private final Strength wanted;
  private final StrengthDoubts doubts;
  private final Brewer brewer;
  private final Mass step;

  RecipeMaker(ScaleRequest request, BrewModel model, Strength wanted, StrengthDoubts doubts) {
    this.request = request;
    this.model = model;
    this.wanted = wanted;
    this.doubts = doubts;
    this.brewer = request.target().brewer();
    this.step = request.scaleStep();
  }

  /** The recipe at a ratio that needs no bypass; empty when this brewer can't make so little. */
  Optional<Recipe> plain(BrewRatio ratio) {
    if (request.wish().beverage().isEmpty()) {
      DoseRange range = range(ratio);
      return range.usable()
          ? Optional.of(recipe(1, step.times(range.greatest()), ratio, false))
          : Optional.empty();
    }
    Mass dose = model.doseFor(request.wish().beverage().get(), ratio);
    return BatchSplit.of(dose, ratio, model.beveragePerDose(ratio), equipment(), IN_THE_VESSEL)
        .map(split -> recipe(split.count(), split.batches().get(0).dose(), ratio, false));
  }

  /**
   * The least dose that lies as deep as the guide asks, when the bed is flat and the brewer takes
   * it.
   */
  Optional<Mass> deepEnough() {
    return request
        .target()
        .basket()
        .filter(basket -> basket.shape() == Basket.Shape.FLAT)
        .map(basket -> basket.doseFor(Recipe.Bed.LEAST, density()).roundUpTo(step))
        .filter(dose -> dose.compareTo(brewer.greatestDose()) <= 0);
  }

  /**
   * Where the water that the brewer holds would leave the bed thinner than the guide: more coffee
   * in the basket, the same water through it, and the rest of the water round it.
   */
  Optional<Recipe> deeper(Recipe plain) {
    Optional<Mass> least = deepEnough();
    if (least.isEmpty() || least.get().compareTo(plain.brew().dose()) <= 0) {
      return Optional.empty();
    }
    Mass dose = least.get();
    int batches = 1;
    if (request.wish().beverage().isPresent()) {
      double needed =
          request.wish().beverage().get().grams()
              * wanted.fraction()
              / plain.brew().extraction().fraction();
      batches = (int) Math.floor(needed / dose.grams() + 1e-9);
      if (batches < 1) {
        return Optional.empty();
      }
      dose = Mass.ofGrams(needed / batches).roundUpTo(step);
    }
    return stronger(batches, dose, brewer.greatestWater());
  }

  /** The same dose with so little water through it that it takes no longer than the guide. */
  Optional<Recipe> quicker(Recipe plain) {
    Optional<Duration> time = contactOf(plain.brew().water());
    if (time.isEmpty() || time.get().compareTo(Recipe.Contact.MOST) <= 0) {
      return Optional.empty();
    }
    Mass through =
        plain.brew().water().times((double) Recipe.Contact.MOST.toMillis() / time.get().toMillis());
    return stronger(plain.batches(), plain.brew().dose(), through);
  }

  private Optional<Recipe> stronger(int batches, Mass dose, Mass most) {
    Mass water = most.roundDownTo(step);
    Optional<Mass> vessel = brewer.vessel().map(v -> v.massOfWaterAt(IN_THE_VESSEL));
    BrewRatio ratio = BrewRatio.of(water, dose);
    if (vessel.isPresent()) {
      double held = model.ratioGiving(vessel.get().grams() / dose.grams());
      ratio = BrewRatio.ofGramsPerGram(Math.min(ratio.gramsPerGram(), held));
    }
    boolean brews =
        dose.compareTo(brewer.greatestDose()) <= 0
            && model.brewsAt(ratio)
            && model.strengthAt(ratio).compareTo(wanted) > 0;
    if (!brews) {
      return Optional.empty();
    }
    Mass needed = dose;
    for (int i = 0; i < SETTLING && request.wish().beverage().isPresent(); i++) {
      double extraction = model.curve().at(ratio).fraction();
      Mass exact =
          Mass.ofGrams(
              request.wish().beverage().get().grams() / batches * wanted.fraction() / extraction);
      needed = exact.roundUpTo(step).min(brewer.greatestDose());
      ratio =
          BrewRatio.ofGramsPerGram(Math.min(ratio.gramsPerGram(), water.grams() / needed.grams()));
    }
    return model.brewsAt(ratio)
        ? Optional.of(recipe(batches, needed, ratio, true))
        : Optional.empty();
  }

  private Recipe recipe(int batches, Mass dose, BrewRatio ratio, boolean diluted) {
    Mass water =
        diluted ? ratio.waterFor(dose).roundDownTo(step) : ratio.waterFor(dose).roundTo(step);
    BrewBalance brew = model.brew(dose, water);
    Mass bypass =
        diluted
            ? Blend.of(
                    brew.beverage().times(brew.strength().fraction() / wanted.fraction()),
                    wanted,
                    brew.strength(),
                    Share.ofPercent(0))
                .bypass()
                .roundTo(step)
            : Mass.ZERO;
    Blend cup = new Blend(brew.beverage(), bypass, Mass.ZERO, brew.strength());
    return new Recipe(
        batches,
        brew,
        cup,
        doubts.of(brew, cup),
        pours(dose, water),
        bed(dose),
        contactOf(water).map(RecipeMaker::contact));
  }

  private Recipe.Pours pours(Mass dose, Mass water) {
    double each =
        request
            .reference()
            .bloom()
            .map(bloom -> bloom.grams() / request.reference().brew().dose().grams())
            .orElse(BLOOM_PER_DOSE);
    Mass bloom = dose.times(each).roundTo(step).min(water);
    return new Recipe.Pours(bloom, BLOOM_WAIT, water.minus(bloom));
  }

  private Optional<Recipe.Bed> bed(Mass dose) {
    return request
        .target()
        .basket()
        .map(
            basket -> {
              Length depth = basket.depthOf(dose, density());
              return new Recipe.Bed(
                  depth, depth.times(1 + Basket.SPARE_FOR_SWELLING), verdict(basket, depth));
            });
  }

  static Recipe.Bed.Verdict verdict(Basket basket, Length depth) {
    if (basket.shape() == Basket.Shape.CONE) {
      return Recipe.Bed.Verdict.NOT_GUIDED;
    }
    if (depth.millimetres() < Recipe.Bed.LEAST.millimetres() * (1 - 1e-9)) {
      return Recipe.Bed.Verdict.SHALLOW;
    }
    return depth.millimetres() > Recipe.Bed.MOST.millimetres() * (1 + 1e-9)
        ? Recipe.Bed.Verdict.DEEP
        : Recipe.Bed.Verdict.WITHIN;
  }

  /**
   * How long so much brew water touches coffee: at a known flow its volume over the flow, else the
   * part of the cycle that it is of a full batch.
   */
  private Optional<Duration> contactOf(Mass water) {
    Optional<Volume> flow = request.target().flowPerMinute();
    if (flow.isPresent()) {
      double minutes = Volume.ofWater(water, SPRAYED).litres() / flow.get().litres();
      return Optional.of(Duration.ofSeconds(Math.round(minutes * 60)));
    }
    return brewer
        .cycle()
        .map(
            cycle ->
                Duration.ofSeconds(
                    Math.round(
                        cycle.toSeconds() * water.grams() / brewer.greatestWater().grams())));
  }

  private static Recipe.Contact contact(Duration exact) {
    Duration told = Duration.ofSeconds(Math.round(exact.toSeconds() / (double) TENTHS) * TENTHS);
    return new Recipe.Contact(told, Grind.suiting(told));
  }

  private double density() {
    return request.brewing().bulkGramsPerMillilitre();
  }

  private DoseRange range(BrewRatio ratio) {
    return BatchSplit.ranges(ratio, model.beveragePerDose(ratio), equipment(), IN_THE_VESSEL)
        .get(0);
  }

  private Equipment equipment() {
    return new Equipment(
        List.of(brewer),
        List.of(),
        List.of(),
        step,
        Volume.ofMillilitres(10),
        Uncertainties.usual(step));
  }
}
