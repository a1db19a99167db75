/**
 * The plan for a terminal: plain text of at most eighty columns.
 *
 * <p>{@link dev.urnwright.text.PlanText} arranges a plan in the order in which it is worked off:
 * what to weigh and brew, what to fill, what to buy, what can go wrong. {@link
 * dev.urnwright.text.Paragraph} wraps a text to a width, counted in columns of a terminal rather
 * than in characters. Colours come in from outside as a {@link dev.urnwright.text.Palette}, so that
 * nothing here knows what a terminal is. What the user wrote is cleaned of control characters
 * before it is shown. Numbers are never cut, names are wrapped.
 */
package dev.urnwright.text;
