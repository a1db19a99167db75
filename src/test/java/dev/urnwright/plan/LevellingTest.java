package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.plan.Levelling.Work;
import dev.urnwright.plan.Run.ActionKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Work spread over time. */
class LevellingTest {
  @Test
  void oneAfterTheOther() {
    // three doses to grind at 100, two minutes each, by one person: at 100, 98 and 96
    Work grind = work(ActionKind.GRIND, 100, 2, 90, 100);
    Levelling levelling = Levelling.to(1, List.of(grind, grind, grind));
    int[] at = IntStream.range(0, 3).map(levelling::at).sorted().toArray();
    assertEquals(List.of(96, 98, 100), Arrays.stream(at).boxed().toList());
    assertEquals(1, levelling.most());
  }

  @Test
  void whatHasNoTimeStays() {
    Work start = work(ActionKind.START, 100, 1, 100, 100);
    Work grind = work(ActionKind.GRIND, 99, 2, 79, 99);
    Levelling levelling = Levelling.to(1, List.of(grind, start));
    assertEquals(100, levelling.at(1));
    assertEquals(98, levelling.at(0)); // 98 and 99, so that hands are free at 100
    Levelling two = Levelling.to(1, List.of(start, start));
    assertEquals(2, two.most());
  }

  @Test
  void nothingIsCarriedBeforeItIsFilled() {
    // both are filled at 100 for 3 min; the second at 103, so it is carried at 106 at the earliest
    Work fill = work(ActionKind.FILL, 100, 3, 100, 110);
    Work first = new Work(ActionKind.CARRY, 120, 0, 6, 103, 120, List.of(0), 3);
    Work second = new Work(ActionKind.CARRY, 120, 0, 6, 103, 120, List.of(1), 3);
    Levelling levelling = Levelling.to(1, List.of(fill, fill, first, second));
    assertEquals(1, levelling.most());
    assertEquals(203, levelling.at(0) + levelling.at(1));
    assertTrue(levelling.at(2) >= levelling.at(0) + 3 && levelling.at(3) >= levelling.at(1) + 3);
  }

  /** Two are there: the fill waits for one of two starts, and its carrying for the fill. */
  @Test
  void whatFollowsWaitsAsLong() {
    Work start = work(ActionKind.START, 100, 3, 100, 100);
    Work fill = work(ActionKind.FILL, 100, 3, 100, 110);
    Work carry = new Work(ActionKind.CARRY, 103, 0, 1, 103, 120, List.of(2), 3);
    Levelling levelling = Levelling.to(2, List.of(start, start, fill, carry));
    assertEquals(103, levelling.at(2));
    assertEquals(106, levelling.at(3));
  }

  /** The carrying has less time than the fill, and is placed after it all the same. */
  @Test
  void whatFollowsIsPlacedLater() {
    Work start = work(ActionKind.START, 100, 3, 100, 100);
    Work fill = work(ActionKind.FILL, 100, 3, 100, 110);
    Work carry = new Work(ActionKind.CARRY, 103, 0, 1, 103, 106, List.of(1), 3);
    Levelling levelling = Levelling.to(1, List.of(start, fill, carry));
    assertEquals(103, levelling.at(1));
    assertEquals(106, levelling.at(2));
  }

  /** To the first minute of its time, and of two with as much time the sooner one stays. */
  @Test
  void theSoonerStays() {
    Work start = work(ActionKind.START, 100, 1, 100, 100);
    assertEquals(
        98, Levelling.to(1, List.of(start, work(ActionKind.GRIND, 100, 2, 98, 100))).at(1));
    // 101 and 102 against 100 and 101: what may wait until 101 goes before, to 98 and 99
    Work later = work(ActionKind.GRIND, 101, 2, 96, 101);
    Work sooner = work(ActionKind.GRIND, 100, 2, 95, 100);
    Levelling levelling = Levelling.to(1, List.of(later, sooner));
    assertEquals(98, levelling.at(0));
    assertEquals(100, levelling.at(1));
  }

  /** Both would be done at 100 and 101: what may be done ten minutes earlier goes before. */
  @Test
  void whatHasTheLeastTimeKeepsItsMinute() {
    Work much = work(ActionKind.GRIND, 100, 2, 90, 100);
    Work little = work(ActionKind.GRIND, 100, 2, 95, 100);
    Levelling levelling = Levelling.to(1, List.of(much, little));
    assertEquals(98, levelling.at(0));
    assertEquals(100, levelling.at(1));
  }

  /** It takes two minutes before its own, too: somebody busy at 98 is in its way until 97. */
  @Test
  void minutesBeforeAreCounted() {
    Work busy = work(ActionKind.GRIND, 98, 1, 98, 98);
    Work reloaded = new Work(ActionKind.START, 100, 2, 1, 90, 100, List.of(), 0);
    assertEquals(97, Levelling.to(1, List.of(busy, reloaded)).at(1));
  }

  /**
   * A way from 100 to 106 is put down after the fill at 100, which has time. When it has its place
   * the fill moves, to where it meets the least; but it is carried at 107, so it is filled at 104,
   * although there would be nobody busy from 108 on.
   */
  @Test
  void whatMovesOnceMoreIsStillFollowed() {
    Work filled = work(ActionKind.FILL, 90, 1, 90, 90);
    Work way = new Work(ActionKind.CARRY, 100, 0, 6, 100, 100, List.of(0), 3);
    Work fill = work(ActionKind.FILL, 100, 3, 100, 120);
    Work carry = new Work(ActionKind.CARRY, 107, 0, 1, 103, 107, List.of(2), 3);
    Levelling levelling = Levelling.to(1, List.of(filled, way, fill, carry));
    assertEquals(104, levelling.at(2));
    assertEquals(107, levelling.at(3));
  }

  /** While somebody is free nothing is moved; nor does it matter whether it is before midnight. */
  @Test
  void whatFindsSomebodyStays() {
    Work start = work(ActionKind.START, 100, 2, 100, 100);
    Work grind = work(ActionKind.GRIND, 100, 2, 90, 100);
    assertEquals(100, Levelling.to(2, List.of(start, grind)).at(1));
    Work night = work(ActionKind.GRIND, -10, 2, -10, -10);
    assertEquals(1, Levelling.none(List.of(night)).most());
    assertEquals(-10, Levelling.none(List.of(night)).from());
  }

  @Test
  void everythingStaysWithinItsTimeAndIsDoneOnce() {
    SplittableRandom random = new SplittableRandom(7);
    for (int trial = 0; trial < 300; trial++) {
      List<Work> works = new ArrayList<>();
      int minutes = 0;
      for (int i = random.nextInt(1, 12); i > 0; i--) {
        int at = random.nextInt(100, 130);
        Work each =
            new Work(
                ActionKind.GRIND,
                at,
                random.nextInt(3),
                random.nextInt(1, 8),
                at - random.nextInt(15),
                at + random.nextInt(15),
                List.of(),
                0);
        works.add(each);
        minutes += each.before() + each.minutes();
      }
      int people = random.nextInt(1, 4);
      Levelling levelling = Levelling.to(people, works);
      int[] busy = new int[300];
      for (int i = 0; i < works.size(); i++) {
        Work work = works.get(i);
        assertTrue(
            levelling.at(i) >= work.earliest() && levelling.at(i) <= work.latest(), "" + trial);
        for (int m = levelling.at(i) - work.before(); m < levelling.at(i) + work.minutes(); m++) {
          busy[m]++;
        }
      }
      assertEquals(minutes, Arrays.stream(busy).sum());
      assertEquals(Arrays.stream(busy).max().orElseThrow(), levelling.most(), "trial " + trial);
      assertTrue(
          levelling.most() <= Math.max(people, Levelling.none(works).most()), "trial " + trial);
    }
  }

  private static Work work(ActionKind kind, int at, int minutes, int earliest, int latest) {
    return new Work(kind, at, 0, minutes, earliest, latest, List.of(), 0);
  }
}
