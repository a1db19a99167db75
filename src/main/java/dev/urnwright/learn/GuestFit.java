package dev.urnwright.learn;

import dev.urnwright.event.Learned;
import dev.urnwright.quantity.Share;
import java.util.List;

/**
 * What came back unpoured teaches of one kind of event.
 *
 * <p>Cups poured tell the product of drinkers' share and cups for each drinker, never the two
 * apart. So the two parts are two readings of the same entries: a share of drinkers if each of them
 * takes the cups believed, or cups for each guest whoever drinks them. Where both are asked for,
 * the share of drinkers is the one read, and cups for each drinker are what makes the product
 * right.
 *
 * @param cupsPerGuest cups for each guest who came, drinker or not
 * @param drinkers share of guests who drink, at the cups each that were believed
 * @param odd entries unlike the rest
 */
public record GuestFit(Learned<Double> cupsPerGuest, Learned<Share> drinkers, List<Oddity> odd) {
  /** Copies the list. */
  public GuestFit {
    odd = List.copyOf(odd);
  }
}
