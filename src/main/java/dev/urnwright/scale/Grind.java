package dev.urnwright.scale;

import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;

/**
 * How coarse coffee is ground, and how long water is to touch it: 1 to 4 min, 4 to 6 min, 6 to 8
 * min (Specialty Coffee Association of America, Golden Cup standard, 2015).
 */
public enum Grind {
  /** As for small cones. */
  FINE("fine", 1, 4),
  /** As for drip brewers. */
  DRIP("drip", 4, 6),
  /** As for urns. */
  COARSE("coarse", 6, 8);

  private final String word;
  private final Duration least;
  private final Duration most;

  Grind(String word, int leastMinutes, int mostMinutes) {
    this.word = word;
    this.least = Duration.ofMinutes(leastMinutes);
    this.most = Duration.ofMinutes(mostMinutes);
  }

  /** As people write it. */
  public String word() {
    return word;
  }

  /** The least contact time that goes with it. */
  public Duration least() {
    return least;
  }

  /** The greatest contact time that goes with it. */
  public Duration most() {
    return most;
  }

  /** The grind that goes with a contact time; empty below 1 min and above 8 min. */
  public static Optional<Grind> suiting(Duration contact) {
    return Arrays.stream(values()).filter(grind -> grind.suits(contact)).findFirst();
  }

  /** Whether a contact time goes with it. */
  public boolean suits(Duration contact) {
    return contact.compareTo(least) >= 0 && contact.compareTo(most) <= 0;
  }
}
