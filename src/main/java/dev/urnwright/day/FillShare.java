package dev.urnwright.day;

import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.quantity.Strength;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * What one fill takes of each batch, exact.
 *
 * @param group whose fill
 * @param fill as planned
 * @param finished grams in the cups
 * @param draws grams of each batch, by its id
 */
record FillShare(GroupPlan group, Fill fill, double finished, Map<String, Double> draws) {
  /** Shares this close to all of it are all of it. */
  private static final double NOISE = 1e-9;

  /**
   * The planned fill with concentrate as strong as it is: the batches keep their parts, and their
   * sum carries the solids that were planned, or is undiluted where even that is too weak.
   */
  static FillShare of(GroupPlan group, Fill fill, Function<String, Strength> strengths) {
    double finished = fill.blend().finished().grams();
    double planned = fill.blend().concentrate().grams();
    double solids =
        fill.draws().stream()
            .mapToDouble(
                draw -> draw.concentrate().grams() * strengths.apply(draw.batchId()).fraction())
            .sum();
    double needed = fill.blend().solids().grams() * planned / solids;
    double most = finished * (1 - group.iceShare().fraction());
    double factor = Math.min(needed, most) / planned;
    Map<String, Double> draws = new LinkedHashMap<>();
    fill.draws().forEach(draw -> draws.put(draw.batchId(), draw.concentrate().grams() * factor));
    return new FillShare(group, fill, finished, draws);
  }

  /** As much of it, out of batches that came to be stronger: less concentrate has the solids. */
  FillShare stretched(Function<String, Strength> before, Function<String, Strength> now) {
    double factor = solids(before) / solids(now);
    return factor < 1 ? new FillShare(group, fill, finished, scaled(factor)) : this;
  }

  private double solids(Function<String, Strength> strengths) {
    return draws.entrySet().stream()
        .mapToDouble(draw -> draw.getValue() * strengths.apply(draw.getKey()).fraction())
        .sum();
  }

  private Map<String, Double> scaled(double factor) {
    Map<String, Double> less = new LinkedHashMap<>();
    draws.forEach((batch, grams) -> less.put(batch, grams * factor));
    return less;
  }

  /** So much of it: as strong, and fewer cups. */
  FillShare times(double factor) {
    return new FillShare(group, fill, finished * factor, scaled(factor));
  }

  /** What its guests need at least, in the cups; nothing where they can't all have some. */
  double least() {
    double share = finished / planned();
    return share < 1 - NOISE ? 0 : group.needed().finished().grams() / group.fills().size() * share;
  }

  /** As much as was planned for it. */
  double planned() {
    return fill.blend().finished().grams();
  }
}
