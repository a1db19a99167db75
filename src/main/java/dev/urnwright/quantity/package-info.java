/**
 * The quantities of brewing, each a type of its own: mass, volume, temperature, strength,
 * extraction, absorption, brew ratio, share, power, money.
 *
 * <p>The unit is in the name of every factory and accessor, so that grams are never taken for
 * millilitres nor 1.35 for 0.0135. Only what physics allows can be done with them: masses add,
 * temperatures do not, and a volume becomes a mass only through a density.
 *
 * <p>{@link dev.urnwright.quantity.Measure} reads a number with a unit as people write it, {@link
 * dev.urnwright.quantity.Display} writes it for one unit system, and {@link
 * dev.urnwright.quantity.Water} knows how dense water is. Nothing here knows of events or plans.
 */
package dev.urnwright.quantity;
