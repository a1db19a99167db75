package dev.urnwright.plan;

import dev.urnwright.brew.Blend;
import dev.urnwright.event.Dispenser;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One dispenser filled, rounded: what to weigh in.
 *
 * @param id distinct in the plan, such as {@code house-F3}
 * @param groupName whom it serves
 * @param dispenser the kind; empty when the event lists no dispensers
 * @param draws which batches the concentrate comes from; adds up to the blend's concentrate
 * @param blend concentrate and bypass to weigh in, and this fill's part of the group's ice
 * @param level how full that looks
 * @param byJug the bypass measured with the jug instead of the scale
 */
public record Fill(
    String id,
    String groupName,
    Optional<Dispenser> dispenser,
    List<Draw> draws,
    Blend blend,
    Level level,
    JugPour byJug) {
  /** Copies the list. */
  public Fill {
    draws = List.copyOf(draws);
  }

  /**
   * The draws as a scale can tell them: of the first batches down to its step, one at least, and of
   * the last one what is missing then.
   *
   * @param step of the scale
   */
  public List<Draw> drawsByScale(Mass step) {
    List<Draw> weighed = new ArrayList<>();
    Mass missing = blend.concentrate();
    for (Draw draw : draws) {
      boolean last = weighed.size() == draws.size() - 1;
      Mass part = last ? missing : draw.concentrate().roundDownTo(step).max(step).min(missing);
      weighed.add(new Draw(draw.batchId(), part));
      missing = missing.minus(part);
    }
    return weighed;
  }

  /** How much of a dispenser a volume takes, at most all of it. */
  static Share fullness(Volume volume, Dispenser dispenser) {
    return Share.ofFraction(Math.min(1, volume.litres() / dispenser.capacity().litres()));
  }

  /**
   * Concentrate out of one batch.
   *
   * @param batchId which
   * @param concentrate how much of it
   */
  public record Draw(String batchId, Mass concentrate) {}

  /**
   * How full a dispenser looks when it has been filled.
   *
   * @param volume of concentrate and bypass, warm as they are filled in
   * @param full share of the capacity; empty when the capacity isn't known
   */
  public record Level(Volume volume, Optional<Share> full) {}

  /**
   * The bypass by volume.
   *
   * @param bypass the nearest mark of the jug, at the event's bypass temperature
   * @param strength what that gives in the cup
   */
  public record JugPour(Volume bypass, Strength strength) {}
}
