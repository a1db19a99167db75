/**
 * From a brew that tastes right on a small brewer to the same cup out of a large one.
 *
 * <p>A {@link dev.urnwright.scale.ScaleRequest} holds the reference, the brewer and the trials that
 * were brewed on it; {@link dev.urnwright.scale.Scaler} makes a {@link dev.urnwright.scale.Scaled}
 * of it: what to weigh in, what to expect and how surely, how deep the bed is, how long water
 * touches coffee. The balance of water and solids is that of {@code brew}, and batches are split as
 * {@code schedule} splits them. What nobody can calculate, such as a grind, is advice with its
 * basis. A trial replaces what was carried over from the reference by what this brewer did.
 */
package dev.urnwright.scale;
