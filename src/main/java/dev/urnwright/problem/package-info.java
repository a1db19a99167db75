/**
 * What is wrong with an event, where it stands, and what would be right.
 *
 * <p>Problems are collected, never thrown one by one: whoever reads or plans an event returns a
 * {@link dev.urnwright.problem.Checked}, which holds either the thing wanted or all that stands in
 * its way.
 */
package dev.urnwright.problem;
