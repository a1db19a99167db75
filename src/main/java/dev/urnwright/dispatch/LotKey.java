package dev.urnwright.dispatch;

import dev.urnwright.round.Drop;

/**
 * Carafes that are filled alike for one leg.
 *
 * @param leg its name
 * @param content what is in them
 */
record LotKey(String leg, Drop.Content content) {
  static LotKey of(Drop drop) {
    return new LotKey(drop.stop().leg(), drop.content());
  }

  /** The name of their group of guests; distinct, and good to read in a message. */
  String name() {
    return leg + ": " + content.carafe() + ", " + content.coffee() + ", " + content.strengthName();
  }
}
