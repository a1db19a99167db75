package dev.urnwright.plan;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.Melting;
import dev.urnwright.demand.CupDemand;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Serving;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import java.util.Optional;

/**
 * What one group drinks of one coffee, before it is known how strong the concentrate is.
 *
 * @param group who
 * @param coffee what
 * @param demand how many cups
 * @param cupMass beverage in one cup, the melted ice included
 * @param drinks all cups and what is spilt
 * @param ice share of the finished beverage that is ice
 * @param filledAt how warm concentrate and water are when a dispenser is filled
 */
record GroupNeed(
    GuestGroup group,
    Coffee coffee,
    CupDemand demand,
    Mass cupMass,
    Mass drinks,
    Share ice,
    Temperature filledAt) {
  /** Works out the cups of one coffee of a group. */
  static GroupNeed of(Event event, GuestGroup group, GuestGroup.CoffeeShare share) {
    Serving serving = event.serving();
    CupDemand demand = CupDemand.of(group.guests(), share.share(), serving.provision());
    // The cup's volume is that of the beverage as it is served, so the same cup holds less hot.
    Mass cup = group.cup().poured().massOfWaterAt(group.cup().servedAt());
    return new GroupNeed(
        group,
        event.coffee(share.coffee()),
        demand,
        cup,
        cup.times(demand.cups() * (1 + serving.spill().fraction())),
        group
            .ice()
            .map(ice -> Melting.iceShare(ice.pouredAt(), group.cup().servedAt()))
            .orElse(Share.ofFraction(0)),
        group.ice().map(GuestGroup.OverIce::pouredAt).orElse(serving.bypassTemperature()));
  }

  /** What is drawn from dispensers, as warm as it was filled in. */
  Volume drawn() {
    return Volume.ofWater(drinks.times(1 - ice.fraction()), filledAt);
  }

  /**
   * The finished mass: all drinks, and what is left in the dispensers. A heel has not met its ice;
   * it counts as the finished beverage that it would have made.
   */
  Mass finished(Optional<Chosen> dispensers) {
    double heel =
        dispensers
            .map(c -> c.dispenser().heel().massOfWaterAt(filledAt).grams() * c.fills())
            .orElse(0.0);
    return drinks.plus(Mass.ofGrams(heel / (1 - ice.fraction())));
  }

  /** The weakest concentrate that can still serve this group. */
  Strength leastConcentrate() {
    return Strength.ofFraction(Math.min(1, group.strength().fraction() / (1 - ice.fraction())));
  }

  /** Whether a concentrate is strong enough. */
  boolean isReachedBy(Strength concentrate) {
    return Blend.reaches(concentrate, group.strength(), ice);
  }
}
