package dev.urnwright.demand;

import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Provision;
import dev.urnwright.quantity.Share;

/**
 * How many cups are planned.
 *
 * @param cups the planned number
 * @param mean how many are drunk on average
 * @param chanceEnough the probability that no more than {@code cups} are wanted, from 0 to 1
 */
public record CupDemand(int cups, double mean, double chanceEnough) {
  /** Binary noise in n·p·c must not call for another cup: 10 × 0.3 is three cups, not four. */
  private static final double NOISE = 1e-9;

  /**
   * What a group drinks of one coffee.
   *
   * @param guests the group's
   * @param ofThisCoffee the share of the drinkers who drink this coffee
   * @param provision how many cups are planned for the uncertain number
   */
  public static CupDemand of(GuestGroup.Guests guests, Share ofThisCoffee, Provision provision) {
    CupsDrunk drunk =
        new CupsDrunk(
            guests.headcount(),
            guests.drinkers().fraction() * ofThisCoffee.fraction(),
            guests.cupsEach());
    int cups = planned(drunk, provision);
    return new CupDemand(cups, drunk.mean(), drunk.atMost(cups));
  }

  private static int planned(CupsDrunk drunk, Provision provision) {
    if (provision instanceof Provision.ServiceLevel service) {
      return drunk.enoughWith(service.level().fraction());
    }
    double extra = provision instanceof Provision.Overage overage ? overage.extra() : 0;
    return Math.toIntExact((long) Math.ceil(drunk.mean() * (1 + extra) * (1 - NOISE) - NOISE));
  }
}
