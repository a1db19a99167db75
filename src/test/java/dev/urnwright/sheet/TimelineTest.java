package dev.urnwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Run;
import dev.urnwright.sheet.Timeline.Box;
import dev.urnwright.sheet.Timeline.Cut;
import dev.urnwright.sheet.Timeline.Kind;
import dev.urnwright.sheet.Timeline.Lane;
import dev.urnwright.sheet.Timeline.Stretch;
import dev.urnwright.wording.Words;
import java.io.IOException;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TimelineTest {
  /** A box or what a part shows of it, on the clock. */
  private record Seen(Kind kind, String unit, LocalTime from, LocalTime service, LocalTime to) {}

  /** The boxes of an id, those cut in two put together again. */
  private static Seen seen(List<Timeline> timelines, String id) {
    List<Seen> pieces = new ArrayList<>();
    for (Timeline part : timelines) {
      LocalTime start = LocalTime.parse(part.ticks().get(0).label());
      for (Lane lane : part.lanes()) {
        for (Box box : lane.boxes()) {
          if (box.id().equals(id)) {
            Stretch stretch = box.stretch();
            assertEquals(box.cut().left(), !pieces.isEmpty(), id);
            pieces.add(
                new Seen(
                    lane.kind(),
                    lane.unit().text(),
                    start.plusMinutes(stretch.from()),
                    start.plusMinutes(stretch.service()),
                    start.plusMinutes(stretch.to())));
          }
        }
      }
    }
    Seen first = pieces.get(0);
    Seen last = pieces.get(pieces.size() - 1);
    LocalTime service =
        pieces.stream()
            .filter(piece -> piece.service().isBefore(piece.to()))
            .map(Seen::service)
            .findFirst()
            .orElse(last.to());
    return new Seen(first.kind(), first.unit(), first.from(), service, last.to());
  }

  @ParameterizedTest
  @ValueSource(strings = {"autumn-conference", "harvest-supper", "office-carafes"})
  void everyBatchAndFillIsDrawnAtItsMinutesInItsUnitsLane(String sample) throws IOException {
    Plan plan = SheetPlans.sample(sample);
    Run run = plan.run().orElseThrow();
    List<Timeline> timelines = Timeline.of(plan, Words.ENGLISH);
    for (Run.BatchTime time : run.batches()) {
      LocalTime ready = time.ready().toLocalTime();
      assertEquals(
          new Seen(
              Kind.BREWER,
              time.batch().unit().orElseThrow().label(),
              time.start().toLocalTime(),
              ready,
              ready),
          seen(timelines, time.batch().id()));
    }
    for (Run.FillTime time : run.fills()) {
      assertEquals(
          new Seen(
              Kind.DISPENSER,
              time.unit(),
              time.filled().toLocalTime(),
              time.due().toLocalTime(),
              time.lastPour().toLocalTime()),
          seen(timelines, time.fill().id()));
    }
  }

  @Test
  void decafIsMarked() throws IOException {
    Plan plan = SheetPlans.sample("autumn-conference");
    List<Box> boxes =
        Timeline.of(plan, Words.ENGLISH).stream()
            .flatMap(part -> part.lanes().stream())
            .flatMap(lane -> lane.boxes().stream())
            .toList();
    boxes.forEach(box -> assertEquals(box.id().startsWith("decaf-"), box.decaf(), box.id()));
    assertTrue(boxes.stream().anyMatch(Box::decaf));
  }

  private static Lane lane(String unit, int... fromTo) {
    List<Box> boxes = new ArrayList<>();
    for (int at = 0; at < fromTo.length; at += 2) {
      boxes.add(
          new Box(
              unit + "-" + at,
              Optional.empty(),
              false,
              new Stretch(fromTo[at], fromTo[at + 1], fromTo[at + 1]),
              new Cut(false, false)));
    }
    return new Lane(Kind.BREWER, new Name(unit), boxes);
  }

  private static List<Timeline> parts(Lane... lanes) {
    return new TimelineParts(List.of(lanes)).timelines();
  }

  private static List<String> hours(Timeline part) {
    return part.ticks().stream().map(Timeline.Tick::label).toList();
  }

  @Test
  void aShortRunFillsTheWidthFromMarkToMark() {
    // 07:50 to 08:40: from the quarter before to the quarter after.
    Timeline only = parts(lane("A", 470, 481, 500, 520)).get(0);
    assertEquals(List.of("07:45", "08:00", "08:15", "08:30", "08:45"), hours(only));
    assertEquals(60, only.minutes());
    assertEquals(new Stretch(5, 16, 16), only.lanes().get(0).boxes().get(0).stretch());
    assertEquals(0.25, only.share(15), 1e-12);
  }

  @Test
  void aLongRunIsCutWhereNothingIsDoneAndKeepsOneScale() {
    // 08:00 to 09:40 and 11:10 to 12:20: over three hours, with a pause.
    List<Timeline> parts = parts(lane("A", 480, 580), lane("B", 670, 740));
    assertEquals(2, parts.size());
    assertEquals("08:00", hours(parts.get(0)).get(0));
    assertEquals(105, parts.get(0).minutes());
    assertEquals("11:00", hours(parts.get(1)).get(0));
    assertEquals(90, parts.get(1).minutes());
    assertEquals(parts.get(0).width(), parts.get(1).width());
    assertEquals(1, parts.get(1).lanes().size(), "idle units have no lane");
  }

  @Test
  void whatMustBeCutGoesOnInTheNextPart() {
    // One box from 08:00 to 14:00, twice three hours.
    List<Timeline> parts = parts(lane("A", 480, 840));
    assertEquals(2, parts.size());
    assertEquals(new Cut(false, true), parts.get(0).lanes().get(0).boxes().get(0).cut());
    assertEquals(new Cut(true, false), parts.get(1).lanes().get(0).boxes().get(0).cut());
  }

  @Test
  void aRunPastMidnightGoesOnCounting() {
    Timeline part = parts(lane("A", -20, 10)).get(0);
    assertEquals(List.of("23:30", "23:45", "00:00", "00:15"), hours(part));
    assertEquals(new Stretch(10, 40, 40), part.lanes().get(0).boxes().get(0).stretch());
  }

  @Test
  void moreLanesThanAPageHoldsAreSplit() {
    Lane[] lanes = new Lane[TimelineParts.MOST_LANES + 1];
    for (int at = 0; at < lanes.length; at++) {
      lanes[at] = lane("Unit " + at, 480, 490);
    }
    List<Timeline> parts = parts(lanes);
    assertEquals(2, parts.size());
    assertEquals(lanes.length, parts.get(0).lanes().size() + parts.get(1).lanes().size());
    assertFalse(parts.get(0).lanes().isEmpty());
  }
}
