package dev.urnwright.plan;

import dev.urnwright.brew.Blend;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Equipment;
import dev.urnwright.plan.Fill.Draw;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import java.util.List;
import java.util.Optional;

/** Makes one fill out of concentrate that has been weighed, with a scale and a jug. */
public final class FillMaking {
  private final Mass step;
  private final Volume mark;

  /** With this equipment's scale and jug. */
  public FillMaking(Equipment equipment) {
    this.step = equipment.scaleStep();
    this.mark = equipment.jugMark();
  }

  /**
   * What a fill is for.
   *
   * @param strength in the cup
   * @param finished the least that the guests need, with the ice melted
   */
  public record Wanted(Strength strength, Mass finished) {}

  /**
   * What a fill is called.
   *
   * @param id distinct in the plan
   * @param groupName whom it serves
   * @param dispenser the kind, when the event lists any
   */
  public record Label(String id, String groupName, Optional<Dispenser> dispenser) {}

  /**
   * The water that comes nearest to the strength without overfilling the dispenser, and never makes
   * less than the guests need. A step of concentrate more than needed can ask for several of water.
   *
   * @param concentrate weighed in
   * @param of its strength
   * @param ice that melts into the cups
   * @param full what the dispenser takes, when that is known
   */
  public Mass bypass(Wanted wanted, Mass concentrate, Strength of, Mass ice, Optional<Mass> full) {
    double forStrength = concentrate.grams() * of.fraction() / wanted.strength().fraction();
    double others = concentrate.grams() + ice.grams();
    Mass nearest = Mass.ofGrams(Math.max(0, forStrength - others)).roundTo(step);
    Mass enough = Mass.ofGrams(Math.max(0, wanted.finished().grams() - others)).roundUpTo(step);
    Mass fits =
        full.map(
                all ->
                    Mass.ofGrams(Math.max(0, all.grams() - concentrate.grams())).roundDownTo(step))
            .orElse(nearest);
    return nearest.min(fits).max(enough);
  }

  /**
   * The fill, with how full it looks and what the jug says.
   *
   * @param draws adding up to the blend's concentrate
   * @param warm how warm it is when it is filled in
   */
  public Fill fill(Label label, List<Draw> draws, Blend blend, Temperature warm) {
    Volume volume = Volume.ofWater(blend.liquid(), warm);
    Volume jug = Volume.ofWater(blend.bypass(), warm).roundTo(mark);
    Blend byJug =
        new Blend(
            blend.concentrate(), jug.massOfWaterAt(warm), blend.ice(), blend.concentrateStrength());
    return new Fill(
        label.id(),
        label.groupName(),
        label.dispenser(),
        draws,
        blend,
        new Fill.Level(volume, label.dispenser().map(d -> Fill.fullness(volume, d))),
        new Fill.JugPour(jug, byJug.strength()));
  }
}
