/**
 * Everything worked out for an event.
 *
 * <p>{@link dev.urnwright.plan.Planner} puts demand, brew model and batches together and returns a
 * {@link dev.urnwright.plan.Plan}, or every reason why the event can't be served as asked. A plan
 * is complete: whoever prints it, in whatever form, only rounds and arranges what stands in it.
 *
 * <p>A plan has two layers. What is <em>needed</em> is exact; what is to be <em>done</em> (batches,
 * fills) is rounded to what the scale and the jug can show, dose and concentrate upwards, and
 * carries the strength that the rounded quantities really give.
 */
package dev.urnwright.plan;
