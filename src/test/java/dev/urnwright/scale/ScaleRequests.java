package dev.urnwright.scale;

import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Brewer;
import dev.urnwright.event.Paper;
import dev.urnwright.event.Print;
import dev.urnwright.event.Window;
import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Length;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.quantity.Volume;
import dev.urnwright.scale.ScaleRequest.Brewing;
import dev.urnwright.scale.ScaleRequest.Reference;
import dev.urnwright.scale.ScaleRequest.Target;
import dev.urnwright.scale.ScaleRequest.Trial;
import dev.urnwright.scale.ScaleRequest.Wish;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Requests for the tests: 20 g brewed by hand, and brewers of any size. */
final class ScaleRequests {
  static final Location PLACE = new Location("cafe.yaml", 1, 1);
  static final Brewing DRIP =
      new Brewing(Method.PERCOLATION, Share.ofPercent(0), Optional.empty(), 0.40);
  static final Brewing STEEPED =
      new Brewing(Method.IMMERSION, Share.ofPercent(0), Optional.empty(), 0.40);
  static final ReferenceBrew TWENTY_GRAMS = brew(20, 320, 277, 1.38);

  private ScaleRequests() {}

  static ReferenceBrew brew(double dose, double water, double beverage, double percent) {
    return new ReferenceBrew(
        Mass.ofGrams(dose),
        Mass.ofGrams(water),
        Optional.of(Mass.ofGrams(beverage)),
        Strength.ofPercent(percent));
  }

  static Reference reference(ReferenceBrew brew) {
    return new Reference(
        brew, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), PLACE);
  }

  static Reference timed(ReferenceBrew brew, Duration time) {
    return new Reference(
        brew, Optional.empty(), Optional.of(time), Optional.empty(), Optional.empty(), PLACE);
  }

  static Brewer brewer(double least, double greatest, double water, Duration cycle) {
    return new Brewer(
        "Tall brewer",
        1,
        Mass.ofGrams(least),
        Mass.ofGrams(greatest),
        Mass.ofGrams(water),
        Optional.empty(),
        Optional.of(cycle),
        new Brewer.Supply(Optional.empty(), Optional.empty()),
        PLACE);
  }

  static Target on(Brewer brewer) {
    return new Target(brewer, Optional.empty(), Optional.empty());
  }

  static Target inBasket(Brewer brewer, double diameter) {
    return new Target(brewer, Optional.of(flat(diameter)), Optional.empty());
  }

  static Target atFlow(Brewer brewer, double litresPerMinute) {
    return new Target(brewer, Optional.empty(), Optional.of(Volume.ofLitres(litresPerMinute)));
  }

  static Basket flat(double diameter) {
    return new Basket(Basket.Shape.FLAT, Length.ofMillimetres(diameter), Optional.empty());
  }

  static Wish full() {
    return new Wish(Optional.empty(), Optional.empty());
  }

  static Wish grams(double beverage) {
    return new Wish(Optional.of(Mass.ofGrams(beverage)), Optional.empty());
  }

  static Trial trial(ReferenceBrew brew) {
    return new Trial(brew, Optional.empty(), PLACE);
  }

  static ScaleRequest of(
      Brewing brewing, Reference reference, Target target, Wish wish, Trial... trials) {
    return new ScaleRequest(
        "Bar filter",
        "Bar filter",
        new Print(UnitSystem.METRIC, Paper.A4, Window.USUAL),
        Mass.ofGrams(1),
        brewing,
        reference,
        target,
        wish,
        List.of(trials),
        List.of(),
        PLACE);
  }

  static Scaled scaled(Reference reference, Target target, Wish wish, Trial... trials) {
    return new Scaler().scale(of(DRIP, reference, target, wish, trials)).value().orElseThrow();
  }
}
