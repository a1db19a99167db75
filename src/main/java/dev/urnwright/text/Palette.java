package dev.urnwright.text;

import java.util.function.UnaryOperator;

/**
 * How emphasis looks. Each part adds marks around a text and leaves its letters alone.
 *
 * @param title of the event and its parts
 * @param figure what is read from afar
 * @param caution what can hurt
 * @param quiet what can be skipped
 */
public record Palette(
    UnaryOperator<String> title,
    UnaryOperator<String> figure,
    UnaryOperator<String> caution,
    UnaryOperator<String> quiet) {
  /** No marks at all: for files, pipes and terminals without colour. */
  public static final Palette PLAIN =
      new Palette(
          UnaryOperator.identity(),
          UnaryOperator.identity(),
          UnaryOperator.identity(),
          UnaryOperator.identity());
}
