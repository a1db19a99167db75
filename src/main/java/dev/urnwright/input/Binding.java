package dev.urnwright.input;

import dev.urnwright.quantity.Display;

/**
 * What the binders of one file share.
 *
 * @param problems collects what is wrong
 * @param defaults collects what was left out
 * @param display writes quantities for the notes, in the units that the user prints
 * @param currencies sees that all prices are in one
 */
record Binding(Problems problems, Defaults defaults, Display display, Currencies currencies) {}
