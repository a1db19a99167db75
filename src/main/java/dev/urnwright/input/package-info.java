/**
 * Reads an event file: YAML in, a {@link dev.urnwright.event.Event} or all of its problems out.
 *
 * <p>{@link dev.urnwright.input.EventReader} takes a file from bytes to YAML nodes, each of which
 * remembers its line and column, and refuses what an event has no use for: anchors, tags, deep
 * nesting. A binder for each record turns nodes into the records of {@code event}, by its table of
 * fields; the table alone says which keys there are, what each takes and what it is for. A problem
 * with one field never hides one with another. Every value that was left out and has a default is
 * noted with that default; nothing else is guessed. The same tables tell others what there is to
 * write ({@link dev.urnwright.input.Table}), and the same binders read what was typed into a
 * workbook ({@link dev.urnwright.input.Typed}).
 */
package dev.urnwright.input;
