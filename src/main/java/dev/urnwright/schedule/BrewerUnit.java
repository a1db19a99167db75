package dev.urnwright.schedule;

import dev.urnwright.event.Brewer;

/**
 * One brewer of a kind.
 *
 * @param brewer the kind
 * @param number counted from 1 to {@link Brewer#count()}
 */
public record BrewerUnit(Brewer brewer, int number) {
  /** The kind's name, with the number when there are several. */
  public String label() {
    return brewer.count() == 1 ? brewer.name() : brewer.name() + " " + number;
  }
}
