/**
 * Prints prep sheets as PDF.
 *
 * <p>{@link dev.urnwright.pdf.PrepSheets} fills the templates of the folder {@code templates} with
 * a {@link dev.urnwright.sheet.PrepView} and has them laid out as XHTML with CSS 2.1; {@link
 * dev.urnwright.pdf.ChartPage} does the same for the control chart alone. Templates are strict: a
 * name that the view doesn't have is an error, not an empty place. They may use pictures and style
 * sheets of their own folder and nothing else: no file, no network, no entity. Charts are vectors
 * and all text is in embedded typefaces.
 */
package dev.urnwright.pdf;
