package dev.urnwright.sheet;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Run;
import dev.urnwright.schedule.BrewerUnit;
import dev.urnwright.sheet.Timeline.Box;
import dev.urnwright.sheet.Timeline.Cut;
import dev.urnwright.sheet.Timeline.Kind;
import dev.urnwright.sheet.Timeline.Lane;
import dev.urnwright.sheet.Timeline.Stretch;
import dev.urnwright.wording.Saying;
import dev.urnwright.wording.Words;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One lane for each unit of a run, in minutes of the event's day. */
final class Lanes {
  private static final Cut WHOLE = new Cut(false, false);

  private final Event event;
  private final Run run;
  private final Words words;
  private final Set<String> decaf = new HashSet<>();

  Lanes(Plan plan, Run run, Words words) {
    this.words = words;
    this.event = plan.event();
    this.run = run;
    for (CoffeePlan coffee : plan.coffees()) {
      if (coffee.coffee().decaf()) {
        coffee.batches().stream().map(Batch::id).forEach(decaf::add);
        coffee.fills().stream().map(Fill::id).forEach(decaf::add);
      }
    }
  }

  /** Brewers and then dispensers, each kind in the order of the event; none that stay idle. */
  List<Lane> lanes() {
    List<Lane> lanes = new ArrayList<>();
    for (Brewer brewer : event.equipment().brewers()) {
      for (int number = 1; number <= brewer.count(); number++) {
        String unit = new BrewerUnit(brewer, number).label();
        List<Box> boxes =
            run.batches().stream()
                .filter(time -> time.batch().unit().orElseThrow().label().equals(unit))
                .map(this::box)
                .toList();
        if (!boxes.isEmpty()) {
          lanes.add(new Lane(Kind.BREWER, new Name(unit), boxes));
        }
      }
    }
    Map<Saying, List<Box>> dispensers = new LinkedHashMap<>();
    run.fills().stream()
        .sorted(
            Comparator.comparingInt(this::kind)
                .thenComparingInt(time -> time.unit().length())
                .thenComparing(Run.FillTime::unit))
        .forEach(
            time ->
                dispensers
                    .computeIfAbsent(time.called(), unit -> new ArrayList<>())
                    .add(box(time)));
    dispensers.forEach(
        (unit, boxes) -> lanes.add(new Lane(Kind.DISPENSER, new Name(words.text(unit)), boxes)));
    return lanes;
  }

  private int kind(Run.FillTime time) {
    List<Dispenser> kinds = event.equipment().dispensers();
    return time.fill().dispenser().map(kinds::indexOf).orElse(kinds.size());
  }

  private Box box(Run.BatchTime time) {
    String id = time.batch().id();
    int ready = minute(time.ready());
    return new Box(
        id,
        Optional.empty(),
        decaf.contains(id),
        new Stretch(minute(time.start()), ready, ready),
        WHOLE);
  }

  private Box box(Run.FillTime time) {
    Fill fill = time.fill();
    return new Box(
        fill.id(),
        Optional.of(new Name(fill.groupName())),
        decaf.contains(fill.id()),
        new Stretch(minute(time.filled()), minute(time.due()), minute(time.lastPour())),
        WHOLE);
  }

  private int minute(LocalDateTime at) {
    LocalDate day = event.date().orElse(LocalDate.EPOCH);
    return (int) Duration.between(day.atStartOfDay(), at).toMinutes();
  }
}
