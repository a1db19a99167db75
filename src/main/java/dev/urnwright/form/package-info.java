/**
 * An event as a workbook to fill in: the same keys, values and messages as in a text.
 *
 * <p>{@link dev.urnwright.form.EventWorkbook} writes and opens it. Which sheets, columns and
 * drop-downs there are follows from the reader's own tables ({@link dev.urnwright.input.Table}), so
 * that a new key appears by itself: a list is a sheet with a row for each entry, nested mappings
 * become columns, and what holds for the whole event is listed line by line. What comes back is
 * read in a stream, within limits, as words with their cells ({@link dev.urnwright.input.Typed}),
 * and bound by {@code input} like any other event. A file that could do harm, or isn't a workbook,
 * is refused before anything is made of it.
 */
package dev.urnwright.form;
