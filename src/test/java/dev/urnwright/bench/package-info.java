/**
 * How fast the planner and its scheduler are. Not part of the tests: a figure that depends on the
 * machine can't fail a build. See DEVELOPERS.md for how to run it.
 */
package dev.urnwright.bench;
