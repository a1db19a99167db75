package dev.urnwright.plan;

import dev.urnwright.brew.Blend;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Equipment;
import dev.urnwright.quantity.Mass;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Turns exact blends into fills that can be weighed: concentrate rounded up, water to the nearest
 * step unless that left a guest short.
 */
final class FillRounding {
  private final Mass step;
  private final FillMaking making;

  FillRounding(Equipment equipment) {
    this.step = equipment.scaleStep();
    this.making = new FillMaking(equipment);
  }

  /**
   * The part of a group's blend that goes into one of its dispensers.
   *
   * @param need whose
   * @param dispenser the kind, when the event lists any
   * @param fills how many alike
   * @param taps how many of them stand open side by side
   * @param concentrate for each, rounded up
   * @param finished for each, exact
   */
  record Share(
      GroupNeed need,
      Optional<Dispenser> dispenser,
      int fills,
      int taps,
      Mass concentrate,
      Mass finished) {
    Mass concentrateOfAll() {
      return concentrate.times(fills);
    }
  }

  Share share(GroupNeed need, Optional<Chosen> chosen, Blend exact) {
    int fills = chosen.map(Chosen::fills).orElse(1);
    return new Share(
        need,
        chosen.map(Chosen::dispenser),
        fills,
        chosen.map(Chosen::taps).orElse(1),
        exact.concentrate().times(1.0 / fills).roundUpTo(step),
        exact.finished().times(1.0 / fills));
  }

  /**
   * Whose turn it is to draw concentrate.
   *
   * @param share index of the share
   * @param number of the fill within it, from 0
   * @param draws grams from each batch, by its index; empty to draw from what is there
   */
  record Turn(int share, int number, Map<Integer, Double> draws) {}

  /** All fills, first those of the groups that are served first. */
  List<Turn> inServiceOrder(List<Share> shares) {
    return IntStream.range(0, shares.size())
        .boxed()
        .sorted(Comparator.comparing(i -> ServiceOrder.of(shares.get(i).need().group())))
        .flatMap(
            i -> IntStream.range(0, shares.get(i).fills()).mapToObj(n -> new Turn(i, n, Map.of())))
        .toList();
  }

  /**
   * The fills of each share, drawn from the batches.
   *
   * @param sequence every fill of every share once
   * @param tap with enough for all shares
   */
  List<List<Fill>> fill(
      String coffeeKey, List<Share> shares, List<Turn> sequence, ConcentrateTap tap) {
    Fill[][] fills = new Fill[shares.size()][];
    for (int i = 0; i < fills.length; i++) {
      fills[i] = new Fill[shares.get(i).fills()];
    }
    int number = 0;
    for (Turn turn : sequence) {
      Share share = shares.get(turn.share());
      number++;
      fills[turn.share()][turn.number()] =
          fill(
              coffeeKey + "-F" + number,
              share,
              turn.draws().isEmpty() ? tap.draw(share.concentrate()) : tap.draw(turn.draws()));
    }
    return Arrays.stream(fills).map(List::of).toList();
  }

  private Fill fill(String id, Share share, ConcentrateTap.Drawn drawn) {
    GroupNeed need = share.need();
    Mass ice = share.finished().times(need.ice().fraction());
    Mass bypass =
        making.bypass(
            new FillMaking.Wanted(need.group().strength(), share.finished()),
            share.concentrate(),
            drawn.strength(),
            ice,
            share.dispenser().map(d -> d.capacity().massOfWaterAt(need.filledAt())));
    return making.fill(
        new FillMaking.Label(id, need.group().name(), share.dispenser()),
        drawn.draws(),
        new Blend(share.concentrate(), bypass, ice, drawn.strength()),
        need.filledAt());
  }
}
