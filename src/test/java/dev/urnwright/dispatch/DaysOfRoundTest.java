package dev.urnwright.dispatch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.input.RoundFile;
import dev.urnwright.round.DayOfRound;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Weekdays, exceptions, and days on which the calendar or the clock is odd. */
class DaysOfRoundTest {
  private static final String SITES =
      """
      site,floor,leg,stop,window,carafes,people,cup,strength,weekdays
      Mill House,,North,1,06:30-07:00,4,,,medium,
      Lock House,1st floor,North,2,06:30-07:00,,20,200 ml,medium,mon wed fri
      Lock House,2nd floor,,,,3,,,medium,tue-thu
      Old Forge,,South,1,07:30-08:00,2,,,medium,daily
      """;
  private static final String EXCEPTIONS =
      """
      exceptions:
        - {date: 2027-03-01, closed: town holiday}
        - {date: 2027-03-01, site: Mill House, carafes: 1}
        - {date: 2027-03-02 to 2027-03-03, leg: South, closed: van is in the garage}
        - {date: 2027-03-03, site: Lock House, floor: 1st floor, people: 31}
        - {date: 2027-03-06, site: Mill House, carafes: 5}
        - {date: 2027-03-07, carafes: 9}
      """;

  @TempDir private Path folder;

  @Test
  void weekdaysAreThoseOfTheRowOrOfTheRound() throws IOException {
    // 22 to 28 February 2027 is a week from Monday to Sunday
    assertEquals(Map.of("Mill House", 4, "Lock House 1st floor", 2, "Old Forge", 2), on(22));
    assertEquals(Map.of("Mill House", 4, "Lock House 2nd floor", 3, "Old Forge", 2), on(23));
    assertEquals(
        Map.of(
            "Mill House", 4, "Lock House 1st floor", 2, "Lock House 2nd floor", 3, "Old Forge", 2),
        on(24));
    assertEquals(Map.of("Old Forge", 2), on(27));
    assertEquals(Map.of("Old Forge", 2), on(28));
  }

  @Test
  void theNarrowestExceptionHolds() throws IOException {
    // a holiday for all, but the Mill House works with one carafe
    assertEquals(Map.of("Mill House", 1), inMarch(1));
    // South has no van for two days; Lock House is on North
    assertEquals(Map.of("Mill House", 4, "Lock House 2nd floor", 3), inMarch(2));
    // 31 people of 200 ml are 6.2 l, which takes 4 carafes of 2 l
    assertEquals(
        Map.of("Mill House", 4, "Lock House 1st floor", 4, "Lock House 2nd floor", 3), inMarch(3));
    // named on a Saturday: one delivery more
    assertEquals(Map.of("Mill House", 5, "Old Forge", 2), inMarch(6));
    // for everybody on a Sunday: only who is served on Sundays anyway
    assertEquals(Map.of("Old Forge", 9), inMarch(7));
  }

  @Test
  void whoGetsNothingIsTold() throws IOException {
    DayOfRound day = DayOfRound.of(round().round(), LocalDate.of(2027, 3, 1));

    // Lock House's first floor on a Monday, and the Old Forge; not its second floor, of tue-thu
    assertEquals(2, day.missed().size());
    assertEquals("town holiday", day.missed().get(0).change().what().inWords());
  }

  @Test
  void aLeapDayIsADay() throws IOException {
    // 29 February 2028 is a Tuesday
    DayOfRound day = DayOfRound.of(round().round(), LocalDate.of(2028, 2, 29));

    assertEquals(9, day.deliveries().stream().mapToInt(DayOfRound.Delivery::carafes).sum());
  }

  /**
   * In Lisbon clocks go from 01:00 to 02:00 on 28 March 2027. A van that leaves at 02:30 with 15
   * min to load and 1 min to fill (2 carafes by 2 people) is filled from 02:14; the batch starts 18
   * minutes before that pass, which is 56 min after midnight by the old clock.
   */
  @Test
  void batchesTakeAsLongWhenClocksArePutForward() throws IOException {
    String round =
        Rounds.SMALL.replace("leave: 07:00", "leave: 02:30") + "time_zone: Europe/Lisbon\n";
    RoundFile file = Rounds.good(folder, round, SITES.replace("07:30-08:00", "03:00-03:30"));

    Dispatch day = Rounds.day(file, LocalDate.of(2027, 3, 28));

    Brewing.BatchDay batch = day.brewing().batches().get(0);
    assertEquals(LocalDateTime.of(2027, 3, 28, 2, 14), batch.ready());
    assertEquals(LocalDateTime.of(2027, 3, 28, 0, 56), batch.start());
    assertTrue(day.cautions().stream().anyMatch(note -> note.code().equals("clocks")));
  }

  /** On 31 October 2027 it is 01:00 to 02:00 twice there: an hour more passes before 02:30. */
  @Test
  void batchesTakeAsLongWhenClocksArePutBack() throws IOException {
    String round =
        Rounds.SMALL
                .replace("leave: 07:00", "leave: 02:30")
                .replace("cycle: 18 min", "cycle: 90 min")
            + "time_zone: Europe/Lisbon\n";
    RoundFile file = Rounds.good(folder, round, SITES.replace("07:30-08:00", "03:00-03:30"));

    Brewing.BatchDay batch =
        Rounds.day(file, LocalDate.of(2027, 10, 31)).brewing().batches().get(0);

    // 90 min before 02:14 in winter time is 00:44 in winter time, 01:44 in summer time
    assertEquals(LocalDateTime.of(2027, 10, 31, 2, 14), batch.ready());
    assertEquals(LocalDateTime.of(2027, 10, 31, 1, 44), batch.start());
  }

  @Test
  void aBrewRoomMayOpenTheEveningBefore() throws IOException {
    String round =
        Rounds.SMALL
            .replace("leave: 06:00", "leave: 00:20")
            .replace("kitchen: {", "kitchen: {opens: 23:00, ");
    RoundFile file = Rounds.good(folder, round, SITES.replace("06:30-07:00", "00:30-01:00"));

    Dispatch day = Rounds.day(file, LocalDate.of(2027, 2, 22));

    // 6 carafes take 3 min; 00:20 − 15 − 3 = 00:02, and 18 min before that the batch starts
    assertEquals(LocalDateTime.of(2027, 2, 22, 0, 2), day.brewing().batches().get(0).ready());
    assertEquals(LocalDateTime.of(2027, 2, 21, 23, 44), day.brewing().batches().get(0).start());
  }

  private Map<String, Integer> on(int dayOfFebruary) throws IOException {
    return of(LocalDate.of(2027, 2, dayOfFebruary));
  }

  private Map<String, Integer> inMarch(int day) throws IOException {
    return of(LocalDate.of(2027, 3, day));
  }

  private Map<String, Integer> of(LocalDate date) throws IOException {
    Map<String, Integer> carafes = new TreeMap<>();
    for (DayOfRound.Delivery delivery : DayOfRound.of(round().round(), date).deliveries()) {
      String floor = delivery.drop().place().floor();
      carafes.put(
          delivery.drop().place().site() + (floor.isEmpty() ? "" : " " + floor),
          delivery.carafes());
    }
    return carafes;
  }

  private RoundFile round() throws IOException {
    return Rounds.good(folder, Rounds.SMALL + EXCEPTIONS, SITES);
  }
}
