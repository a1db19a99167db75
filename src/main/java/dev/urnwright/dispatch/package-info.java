/**
 * Works out a coffee service's day: what is brewed when, which carafe is filled with what, what
 * each driver takes along, what a week takes to buy.
 *
 * <p>{@link dev.urnwright.dispatch.Dispatcher} turns what a day asks for into an event with a group
 * of carafes for each leg, coffee, strength and kind ({@code DayEvent}), has {@code plan} plan it,
 * and hands the filled carafes out to the sites in the order of their stops. So the brew model, the
 * batches and the clock are those of any event. {@link dev.urnwright.dispatch.NightClock} counts
 * the minutes of a night that may begin the evening before, or in which clocks are changed.
 */
package dev.urnwright.dispatch;
