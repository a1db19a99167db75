package dev.urnwright.xlsx;

import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.quantity.Mass;
import dev.urnwright.schedule.DoseRange;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How the workbook shares a dose among batches: equally, as formulas can, or in the parts that the
 * planner found, when several kinds of brewer made equal batches impossible or a clock asked for
 * others.
 *
 * @param equal whether the planned batches are as equal as the formulas make them
 * @param steps the dose for the fills, in scale steps
 * @param least the least dose of any brewer that can be used
 * @param greatest the greatest dose of any brewer whose least dose is not more than the whole
 * @param each what every batch takes at least
 * @param larger how many batches take one step more
 */
record BatchShares(boolean equal, long steps, long least, long greatest, long each, long larger) {
  static BatchShares of(Book book, CoffeePlan plan) {
    Mass step = book.plan().event().equipment().scaleStep();
    double perDose = book.plan().brewing(plan).beveragePerDose(plan.needed().brew().ratio());
    long steps = Math.round(plan.brewed().drawn().times(1 / perDose).roundUpTo(step).steps(step));
    List<DoseRange> ranges = EquipmentSheet.ranges(book.plan(), plan);
    long least = ranges.isEmpty() ? 0 : ReferenceSheet.NO_DOSE;
    long greatest = ranges.isEmpty() ? Math.max(1, steps) : 0;
    for (DoseRange range : ranges) {
      if (range.usable()) {
        least = Math.min(least, range.least());
        greatest = Math.max(greatest, range.least() <= steps ? range.greatest() : 0);
      }
    }
    int count = plan.batches().size();
    long floor = steps / count;
    long each = floor >= least ? floor : Math.max(least, -Math.floorDiv(-steps, count));
    long larger = floor >= least ? steps % count : 0;
    boolean fewest = greatest > 0 && count == -Math.floorDiv(-steps, greatest);
    boolean alike =
        IntStream.range(0, count)
            .allMatch(
                i ->
                    Math.round(plan.batches().get(i).brew().dose().steps(step))
                        == each + (i < larger ? 1 : 0));
    return new BatchShares(
        fewest && alike && !book.isTimed(), steps, least, greatest, each, larger);
  }
}
