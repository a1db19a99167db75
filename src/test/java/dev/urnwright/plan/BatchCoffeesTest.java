package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.event.Coffee;
import dev.urnwright.event.Event;
import dev.urnwright.plan.Run.BatchTime;
import dev.urnwright.schedule.BrewerUnit;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which coffee is what, and what a brewer made before. */
class BatchCoffeesTest {
  private static final String PROFILE =
      "reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %},"
          + " concentrate: {ratio: 13}}\n";

  private static final String EVENT =
      "event: A generic event\ndate: 2027-04-17\ncoffees:\n"
          + "  house: {name: House, "
          + PROFILE
          + "  house-late: {name: Late, decaf: yes, "
          + PROFILE
          + "  night: {name: Night, decaf: yes, "
          + PROFILE
          + """
          groups:
            - {name: Hall, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30,
               coffee: {house: 40 %, house-late: 30 %, night: 30 %}}
          brewers: [{name: Tall, dose: 20 g to 1.2 kg, water: 16 l, cycle: 10 min}]
          dispensers: [{name: Urn, count: 4, capacity: 6 l, hold: 2 h}]
          """;

  @TempDir Path folder;
  private Batch any;
  private BatchCoffees coffees;

  @BeforeEach
  void plan() throws IOException {
    Plan plan = new Written(folder).plan(EVENT);
    Event event = plan.event();
    any = plan.run().orElseThrow().batches().get(0).batch();
    coffees = new BatchCoffees(event);
  }

  @Test
  void theLongestKeyIsMeant() {
    assertEquals(Optional.of("House"), coffees.of("house-1").map(Coffee::name));
    assertEquals(Optional.of("Late"), coffees.of("house-late-F2").map(Coffee::name));
    assertEquals(Optional.empty(), coffees.of("other-1"));
    assertEquals(Optional.empty(), coffees.of("house"));
  }

  /** On one brewer: house at 8, decaf at 9 and 10, house at 11; another brewer makes house at 9. */
  @Test
  void whatWasMadeJustBeforeOnTheSameBrewerCounts() {
    BatchTime first = batch("house-1", 1, 8);
    BatchTime decaf = batch("house-late-1", 1, 9);
    BatchTime again = batch("night-1", 1, 10);
    BatchTime last = batch("house-2", 1, 11);
    BatchTime elsewhere = batch("house-3", 2, 9);
    List<BatchTime> all = List.of(last, elsewhere, again, decaf, first);
    assertEquals(Optional.of("House"), coffees.toRinse(decaf, all).map(Coffee::name));
    assertEquals(Optional.empty(), coffees.toRinse(again, all)); // decaf was made before
    assertEquals(Optional.empty(), coffees.toRinse(last, all)); // no decaf
    assertEquals(Optional.empty(), coffees.toRinse(decaf, List.of(decaf, elsewhere, last)));
    BatchTime later = batch("night-2", 1, 12);
    assertEquals(
        Optional.of("House"),
        coffees.toRinse(later, List.of(first, decaf, again, last, later)).map(Coffee::name));
  }

  private BatchTime batch(String id, int unit, int hour) {
    LocalDateTime start = LocalDate.of(2027, 4, 17).atTime(hour, 0);
    BrewerUnit of = any.unit().orElseThrow();
    return new BatchTime(
        new Batch(
            id, 1, Optional.of(new BrewerUnit(of.brewer(), unit)), any.brew(), any.waterByVolume()),
        start,
        start.plusMinutes(10));
  }
}
