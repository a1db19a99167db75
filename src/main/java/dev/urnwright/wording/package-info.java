/**
 * What is said, apart from the words and the language in which it is said.
 *
 * <p>A {@link dev.urnwright.wording.Saying} is a key and named values: figures, names, times, other
 * sayings. {@link dev.urnwright.wording.Words} of a language, read from the files {@code
 * words_….properties} of the folder {@code templates}, make a text of it. Terminal, JSON, workbook
 * and calendar speak English, which is what a saying's {@code toString} gives; sheets speak the
 * language of the event. The words of sheets themselves stand in the same files and take the same
 * marks as templates do.
 */
package dev.urnwright.wording;
