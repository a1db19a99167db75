package dev.urnwright.day;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.Coffee;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.util.List;
import java.util.Optional;

/**
 * What to do now.
 *
 * @param plan what was planned
 * @param coffees one for each coffee of the plan that anything was measured of
 * @param left the plan of what is still to do, for the sheets; empty when nothing is
 */
public record Adjustment(Plan plan, List<CoffeeDay> coffees, Optional<Plan> left) {
  /** Copies the list. */
  public Adjustment {
    coffees = List.copyOf(coffees);
  }

  /** Whether all readings stand; if not, nothing was worked out for their coffee. */
  public boolean stands() {
    return coffees.stream().allMatch(coffee -> coffee.readAgain().isEmpty());
  }

  /**
   * One coffee's day.
   *
   * @param coffee which
   * @param readAgain batches whose readings don't stand; then the lists below are empty
   * @param measured batches as they came out
   * @param today how it brews, from all measured batches
   * @param fills dispensers still to fill, those that change and those that don't
   * @param standing dispensers diluted already
   * @param batches still to brew, those that change and those that don't
   */
  public record CoffeeDay(
      Coffee coffee,
      List<Doubt> readAgain,
      List<Judged> measured,
      BrewModel today,
      List<FillChange> fills,
      List<Remedy> standing,
      List<BatchChange> batches) {
    /** Copies the lists. */
    public CoffeeDay {
      readAgain = List.copyOf(readAgain);
      measured = List.copyOf(measured);
      fills = List.copyOf(fills);
      standing = List.copyOf(standing);
      batches = List.copyOf(batches);
    }

    /** Cups fewer than planned, over all dispensers still to fill. */
    public int cupsShort() {
      return fills.stream().mapToInt(FillChange::cupsShort).sum();
    }
  }

  /**
   * Readings that don't stand.
   *
   * @param batchId of which batch
   * @param verdict why
   */
  public record Doubt(String batchId, Verdict verdict) {}

  /**
   * A batch as it came out, and what its readings call for.
   *
   * @param batch the batch
   * @param verdict on its readings
   */
  public record Judged(MeasuredBatch batch, Verdict verdict) {}

  /**
   * A dispenser still to fill.
   *
   * @param planned as it was
   * @param now as it is to be filled
   * @param wanted strength in the cup
   * @param cupsShort cups fewer than planned
   */
  public record FillChange(Fill planned, Fill now, Strength wanted, int cupsShort) {
    /** Whether anything is different. */
    public boolean isChanged() {
      return !planned.blend().concentrate().equals(now.blend().concentrate())
          || !planned.blend().bypass().equals(now.blend().bypass());
    }

    /** The same change, told from another plan's fill. */
    FillChange from(Fill before) {
      return new FillChange(before, now, wanted, cupsShort);
    }
  }

  /**
   * A dispenser diluted already.
   *
   * @param fill what is in it
   * @param holds how much
   * @param strength how strong it is
   * @param wanted how strong it should be, before any ice
   * @param dilution what to do; empty when it is too weak and no brewed concentrate is strong
   *     enough and enough
   * @param batchId whose concentrate is added, when some is
   */
  public record Remedy(
      Fill fill,
      Mass holds,
      Strength strength,
      Strength wanted,
      Optional<Dilution> dilution,
      Optional<String> batchId) {}

  /**
   * A batch still to brew.
   *
   * @param planned as it was
   * @param now as it is to be brewed
   * @param limit what keeps it from making up for all that is missing, in a sentence
   */
  public record BatchChange(Batch planned, Batch now, Optional<String> limit) {
    /** Whether anything is different. */
    public boolean isChanged() {
      return !planned.brew().dose().equals(now.brew().dose())
          || !planned.brew().water().equals(now.brew().water());
    }

    /** The same change, told from another plan's batch. */
    BatchChange from(Batch before) {
      return new BatchChange(before, now, limit);
    }
  }
}
