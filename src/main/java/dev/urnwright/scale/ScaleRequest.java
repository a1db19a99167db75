package dev.urnwright.scale;

import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Brewer;
import dev.urnwright.event.Note;
import dev.urnwright.event.Print;
import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Volume;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * What is to be scaled.
 *
 * @param name what sheets call it
 * @param coffee the coffee's name
 * @param print how sheets print
 * @param scaleStep what the scale can tell apart
 * @param brewing what is known of brewing this coffee
 * @param reference the brew that tastes right
 * @param target the brewer that is to make the same
 * @param wish how much, and how strong
 * @param trials brewed on that brewer, in their order
 * @param defaults what was assumed because it was left out
 * @param location where the name stands
 */
public record ScaleRequest(
    String name,
    String coffee,
    Print print,
    Mass scaleStep,
    Brewing brewing,
    Reference reference,
    Target target,
    Wish wish,
    List<Trial> trials,
    List<Note> defaults,
    Location location) {
  /** Copies the lists. */
  public ScaleRequest {
    trials = List.copyOf(trials);
    defaults = List.copyOf(defaults);
  }

  /**
   * What is known of brewing.
   *
   * @param method how water meets coffee
   * @param steamLoss brew water lost as vapour
   * @param absorption when given
   * @param bulkGramsPerMillilitre ground coffee, dry and loose, above 0
   */
  public record Brewing(
      BrewProfile.Method method,
      Share steamLoss,
      Optional<Absorption> absorption,
      double bulkGramsPerMillilitre) {}

  /**
   * The brew that tastes right.
   *
   * @param brew weighed and read
   * @param basket when given
   * @param contact from the first water to the last drop, when given
   * @param bloom water poured first, when given
   * @param grind in a word, when given
   * @param location where it stands
   */
  public record Reference(
      ReferenceBrew brew,
      Optional<Basket> basket,
      Optional<Duration> contact,
      Optional<Mass> bloom,
      Optional<Grind> grind,
      Location location) {}

  /**
   * The brewer.
   *
   * @param brewer what it takes
   * @param basket when given
   * @param flowPerMinute of hot water, when given
   */
  public record Target(Brewer brewer, Optional<Basket> basket, Optional<Volume> flowPerMinute) {}

  /**
   * How much, and how strong.
   *
   * @param beverage finished, all batches together; a full batch when left out
   * @param strength of it; that of the reference when left out
   */
  public record Wish(Optional<Mass> beverage, Optional<Strength> strength) {}

  /**
   * One brew on the new brewer.
   *
   * @param brew weighed and read
   * @param contact when it was timed
   * @param location where it stands
   */
  public record Trial(ReferenceBrew brew, Optional<Duration> contact, Location location) {}
}
