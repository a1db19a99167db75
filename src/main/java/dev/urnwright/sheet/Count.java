package dev.urnwright.sheet;

/**
 * So many of something, in the singular or the plural.
 *
 * @param number 0 or more
 * @param noun in the singular; its plural ends in s or es
 */
record Count(int number, String noun) {
  @Override
  public String toString() {
    String ending = number == 1 ? "" : noun.endsWith("ch") ? "es" : "s";
    return number + "\u00a0" + noun + ending;
  }
}
