/**
 * What an office coffee service delivers: its sites, the legs of its drivers, the days on which who
 * gets how many carafes, and what came back.
 *
 * <p>{@link dev.urnwright.round.Round} is read from a short text and a table of sites. {@link
 * dev.urnwright.round.DayOfRound} says what one day asks for, {@link
 * dev.urnwright.round.CarafeLedger} where the carafes are, and {@link dev.urnwright.round.ParTuner}
 * what the leftovers teach. Nothing here brews: how the carafes are filled and when is worked out
 * in {@code dispatch}.
 */
package dev.urnwright.round;
