/**
 * What the user asked for: an event, its coffees, groups of guests, brewers, circuits, dispensers.
 *
 * <p>These records hold wishes and equipment, each with its unit, and work nothing out. A value
 * left out by the user has been filled with its default, and every default used stands in {@link
 * dev.urnwright.event.Event#defaults()}. Parts remember where in the user's file they stood, so
 * that whoever can't fulfil one can point at it.
 */
package dev.urnwright.event;
