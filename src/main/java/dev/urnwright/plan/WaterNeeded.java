package dev.urnwright.plan;

import dev.urnwright.event.Event;
import dev.urnwright.plan.Run.FillTime;
import dev.urnwright.plan.Run.WaterUse;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Volume;
import java.util.Collection;

/** The water that brewing and filling takes, by what it is for. */
record WaterNeeded(Event event) {
  /** Rinsing a dispenser hot takes this share of what it holds. */
  private static final double PREHEAT_SHARE = 0.25;

  WaterUse of(Collection<Batch> batches, Collection<FillTime> fills) {
    return new WaterUse(
        batches.stream().map(batch -> batch.brew().water()).reduce(Mass.ZERO, Mass::plus),
        fills.stream().map(time -> time.fill().blend().bypass()).reduce(Mass.ZERO, Mass::plus),
        event.kitchen().water().rinse().times(batches.size()),
        fills.stream().map(this::preheating).reduce(Volume.ofLitres(0), Volume::plus));
  }

  /** Hot water that preheats a fill's dispenser; none when it isn't preheated. */
  Volume preheating(FillTime fill) {
    return fill.heat().isPresent() && event.kitchen().water().preheat()
        ? fill.fill()
            .dispenser()
            .map(dispenser -> dispenser.capacity().times(PREHEAT_SHARE))
            .orElse(Volume.ofLitres(0))
        : Volume.ofLitres(0);
  }
}
