package dev.urnwright.sheet;

import dev.urnwright.event.Coffee;

/**
 * What everything that belongs to one coffee is marked with, so that no two are mistaken for one
 * another.
 *
 * @param name the coffee's
 * @param decaf whether it is decaffeinated
 */
public record CoffeeTag(Name name, boolean decaf) {
  static CoffeeTag of(Coffee coffee) {
    return new CoffeeTag(new Name(coffee.name()), coffee.decaf());
  }

  /** In one line: the name, and the word when it is decaf. */
  @Override
  public String toString() {
    return decaf ? name + " (DECAF)" : name.text();
  }
}
