package dev.urnwright.schedule;

import java.util.Comparator;
import java.util.List;

/**
 * Whether heaters keep ahead of the hot water drawn from them, and when to switch them on.
 *
 * <p>All heaters are taken as one tank. Cold water that replaces what is drawn is heated again at
 * the heaters' rate; the stock of hot water never exceeds what they hold.
 *
 * @param capacityLitres what they hold together
 * @param litresPerMinute what they heat together, from the tap to hot
 */
public record HotWater(double capacityLitres, double litresPerMinute) {
  private static final double DROP = 1e-9;

  /**
   * Hot water that is drawn.
   *
   * @param minute when
   * @param litres how much, 0 or more
   */
  public record Draw(int minute, double litres) {}

  /**
   * What the draws ask of the heaters.
   *
   * @param switchOn minute at which they must be switched on, full and cold
   * @param firstDraw minute of the first draw
   * @param shortLitres what can't be had hot in time however early they are switched on; 0 when
   *     they keep ahead
   * @param shortAt minute at which most is missing; of no meaning when nothing is
   */
  public record Supply(int switchOn, int firstDraw, double shortLitres, int shortAt) {
    /** Whether there is enough hot water at all times. */
    public boolean keepsAhead() {
      return shortLitres <= DROP;
    }
  }

  /**
   * Works backward: the stock needed before a draw is what the draw and all later ones take, less
   * what is heated meanwhile.
   *
   * @param draws one at least, in any order
   */
  public Supply supply(List<Draw> draws) {
    List<Draw> latestFirst =
        draws.stream().sorted(Comparator.comparingInt(Draw::minute).reversed()).toList();
    double needed = 0; // hot litres just before the draw looked at last
    double most = 0;
    int mostAt = 0;
    int later = latestFirst.get(0).minute();
    for (Draw draw : latestFirst) {
      needed = Math.max(0, needed - (later - draw.minute()) * litresPerMinute) + draw.litres();
      later = draw.minute();
      if (needed > most) {
        most = needed;
        mostAt = draw.minute();
      }
    }
    double missing = Math.max(0, most - capacityLitres);
    double first = Math.min(needed, capacityLitres);
    // A tank is heated as a whole: it must all be hot before the first draw is.
    int toHeat = (int) Math.ceil(Math.max(first, capacityLitres) / litresPerMinute - DROP);
    return new Supply(later - toHeat, later, missing, mostAt);
  }
}
