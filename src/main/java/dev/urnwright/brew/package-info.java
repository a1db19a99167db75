/**
 * The brew model: where water and solids go in one brew, how extraction follows the ratio, one
 * concentrate diluted to many strengths, ice that melts.
 *
 * <p>Masses are in grams; strength and extraction are fractions inside formulas and types outside.
 * {@link dev.urnwright.brew.BrewModel} is one coffee on one kind of brewing and answers the
 * questions in both directions: what does this dose and water give, and what gives this strength.
 * {@link dev.urnwright.brew.Blend} is concentrate with water in it, and {@link
 * dev.urnwright.brew.StrengthBudget} tells how sure the strength of either is. This package knows
 * nothing of guests, files, screens or sheets.
 */
package dev.urnwright.brew;
