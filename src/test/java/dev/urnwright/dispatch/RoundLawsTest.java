package dev.urnwright.dispatch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.bench.OfficeTown;
import dev.urnwright.form.WorkbookCells;
import dev.urnwright.input.RoundFile;
import dev.urnwright.input.RoundReader;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.problem.Checked;
import dev.urnwright.round.DayOfRound;
import dev.urnwright.round.Filling;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What must hold for a round of any size, whatever the town. */
class RoundLawsTest {
  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({"3,1", "40,2", "200,3", "2000,4"})
  void nothingIsLostOnTheWay(int sites, long seed) throws IOException {
    Path file = new OfficeTown(sites, seed).write(folder);
    Checked<RoundFile> read = new RoundReader(WorkbookCells::read).open(file, Optional.empty());
    assertEquals(List.of(), read.problems());
    Dispatch day = Rounds.day(read.value().orElseThrow(), MONDAY);

    carafesAgree(day, sites);
    massAndSolidsAreKept(day);
    timesAreKept(day);
  }

  /** The table, the legs' loads, the stops and the brew room count the same carafes. */
  private static void carafesAgree(Dispatch day, int sites) {
    Map<Object, Integer> asked = new HashMap<>();
    Map<Object, Integer> loaded = new HashMap<>();
    Map<Object, Integer> handed = new HashMap<>();
    Map<Object, Integer> filled = new HashMap<>();
    for (DayOfRound.Delivery delivery : day.day().deliveries()) {
      asked.merge(LotKey.of(delivery.drop()), delivery.carafes(), Integer::sum);
    }
    for (LegDay leg : day.legs()) {
      leg.loads()
          .forEach(
              load ->
                  loaded.merge(
                      new LotKey(leg.leg().name(), load.content()), load.count(), Integer::sum));
      leg.stops().stream()
          .flatMap(stop -> stop.handed().stream())
          .forEach(
              row ->
                  handed.merge(
                      LotKey.of(row.delivery().drop()), row.delivery().carafes(), Integer::sum));
      for (int i = 1; i < leg.stops().size(); i++) {
        assertTrue(leg.stops().get(i - 1).number() <= leg.stops().get(i).number());
      }
    }
    day.brewing()
        .lots()
        .forEach(
            lot -> filled.merge(new LotKey(lot.leg(), lot.content()), lot.count(), Integer::sum));
    assertEquals(asked, loaded);
    assertEquals(asked, handed);
    assertEquals(asked, filled);
    assertEquals(sites, day.sites());
  }

  /** What is filled in is what was brewed less what is left over, in grams and in solids. */
  private static void massAndSolidsAreKept(Dispatch day) {
    for (CoffeePlan coffee : day.plan().coffees()) {
      double concentrate = 0;
      double solids = 0;
      for (Brewing.Lot lot : day.brewing().lots()) {
        if (lot.coffee().key().equals(coffee.coffee().key())) {
          concentrate += lot.count() * lot.each().concentrate().grams();
          solids +=
              lot.count()
                  * lot.each().finished().grams()
                  * lot.each().strength().strength().fraction();
          // rounded to 10 g, a carafe of 2 l is off by a hundredth of a percent
          assertEquals(
              lot.content().strength().percent(),
              lot.each().strength().strength().percent(),
              0.012);
        }
      }
      double brewed = coffee.brewed().brew().beverage().grams();
      double left = coffee.brewed().leftOver().grams();
      assertEquals(brewed - left, concentrate, 1e-6 * brewed);
      double strength = coffee.brewed().brew().strength().fraction();
      // batches of other sizes are rounded otherwise, so their strengths differ a little
      assertEquals(concentrate * strength, solids, 1e-3 * solids);
    }
  }

  /** Every batch is ready before the filling that it is for; nobody fills for two legs at once. */
  private static void timesAreKept(Dispatch day) {
    Filling filling = day.round().room().filling();
    for (int i = 0; i < day.legs().size(); i++) {
      LegDay.Times times = day.legs().get(i).times();
      assertFalse(times.ready().isAfter(times.from()));
      assertFalse(times.to().plus(filling.loading()).isAfter(times.leave()));
      assertEquals(times.from().plus(filling.of(day.legs().get(i).carafes())), times.to());
      if (i > 0) {
        assertFalse(day.legs().get(i - 1).times().to().isAfter(times.from()));
      }
      for (LegDay.Stop stop : day.legs().get(i).stops()) {
        for (LegDay.Handed row : stop.handed()) {
          assertFalse(
              row.useBy()
                  .isBefore(
                      MONDAY
                          .atTime(stop.window().orElseThrow().end())
                          .plus(day.round().rules().fresh())));
        }
      }
    }
  }
}
