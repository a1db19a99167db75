/**
 * What the journal teaches the next plan.
 *
 * <p>{@link dev.urnwright.learn.BrewFitter} learns from weighed batches what the grounds keep and
 * how extraction follows the ratio, {@link dev.urnwright.learn.GuestFitter} from what came back how
 * much guests drink. Each starts from what the event file says and leaves it as entries grow in
 * number: few entries move a plan little. Each result is a {@link dev.urnwright.event.Learned} with
 * its interval, and entries unlike the rest are named as an {@link dev.urnwright.learn.Oddity},
 * with the reason. {@link dev.urnwright.learn.Teaching} finds the entries that are about an event,
 * and {@link dev.urnwright.learn.Lessons} puts what was learned into it. Records of the journal
 * come in as values; nothing here knows where they are kept.
 */
package dev.urnwright.learn;
