package dev.urnwright.dispatch;

import static java.util.Objects.requireNonNull;

import dev.urnwright.dispatch.Brewing.BatchDay;
import dev.urnwright.dispatch.Brewing.Each;
import dev.urnwright.dispatch.Brewing.HeaterDay;
import dev.urnwright.dispatch.Brewing.Lot;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.plan.BatchCoffees;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.FillHeat;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Run;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import dev.urnwright.round.Carafe;
import dev.urnwright.round.DayOfRound;
import dev.urnwright.round.DayOfRound.Delivery;
import dev.urnwright.round.Round;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Hands the fills of a plan out to legs, stops and rows. */
final class Assembly {
  private final Round round;
  private final DayOfRound day;
  private final Plan plan;
  private final Run run;
  private final Certainty certainty;
  private final NightClock clock;
  private final Map<String, FillingTimes.Slot> slots;
  private final Map<String, Run.BatchTime> batches = new HashMap<>();

  Assembly(
      Round round,
      DayOfRound day,
      Plan plan,
      NightClock clock,
      Map<String, FillingTimes.Slot> slots) {
    this.round = round;
    this.day = day;
    this.plan = plan;
    this.run = plan.run().orElseThrow();
    this.certainty = plan.certainty();
    this.clock = clock;
    this.slots = slots;
    run.batches().forEach(time -> batches.put(time.batch().id(), time));
  }

  /**
   * One carafe.
   *
   * @param fill what is in it
   * @param group whose
   * @param brewed its oldest coffee, on the even day
   * @param mixed how warm it is just filled
   */
  private record Filled(Fill fill, GroupPlan group, LocalDateTime brewed, Temperature mixed) {
    Mass concentrate() {
      return fill.blend().concentrate();
    }

    Mass water() {
      return fill.blend().bypass();
    }
  }

  /** The carafes of every lot, the ones filled first first. */
  private Map<LotKey, List<Filled>> filled(Collection<LotKey> keys) {
    Map<String, LotKey> byName = new HashMap<>();
    keys.forEach(key -> byName.put(key.name(), key));
    Map<String, GroupPlan> groups = new HashMap<>();
    plan.groups().forEach(group -> groups.put(group.group().name(), group));
    Map<LotKey, List<Filled>> filled = new LinkedHashMap<>();
    keys.forEach(key -> filled.put(key, new ArrayList<>()));
    for (Run.FillTime time : run.fills()) {
      Fill fill = time.fill();
      GroupPlan group = requireNonNull(groups.get(fill.groupName()));
      requireNonNull(filled.get(requireNonNull(byName.get(fill.groupName()))))
          .add(new Filled(fill, group, brewed(fill), time.heat().orElseThrow().filled()));
    }
    filled.values().forEach(fills -> fills.sort(Comparator.comparing(Filled::brewed)));
    return filled;
  }

  private LocalDateTime brewed(Fill fill) {
    return fill.draws().stream()
        .map(draw -> time(draw.batchId()).ready())
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  private Run.BatchTime time(String batch) {
    return requireNonNull(batches.get(batch));
  }

  /** The brew room's day and the legs'. */
  Parts parts(Collection<LotKey> keys) {
    Map<LotKey, List<Filled>> filled = filled(keys);
    List<Lot> lots = new ArrayList<>();
    List<LegDay> legs = new ArrayList<>();
    for (FillingTimes.Slot slot : slots.values()) {
      List<Lot> ofLeg = lots(slot, filled);
      lots.addAll(ofLeg);
      legs.add(leg(slot, ofLeg, filled));
    }
    return new Parts(new Brewing(batchDays(), lots, heaters()), legs);
  }

  /**
   * What an assembly makes.
   *
   * @param brewing the brew room's day
   * @param legs in the order in which they leave
   */
  record Parts(Brewing brewing, List<LegDay> legs) {}

  private List<BatchDay> batchDays() {
    BatchCoffees coffees = new BatchCoffees(plan.event());
    return run.batches().stream()
        .map(
            time ->
                new BatchDay(
                    coffees.of(time.batch().id()).orElseThrow(),
                    time.batch(),
                    clock.wall(time.start()),
                    clock.wall(time.ready()),
                    certainty.of(time.batch()),
                    coffees.toRinse(time, run.batches())))
        .toList();
  }

  private List<HeaterDay> heaters() {
    return run.heaters().stream()
        .map(h -> new HeaterDay(h.name(), clock.wall(h.on()), clock.wall(h.hot())))
        .toList();
  }

  /** Carafes of a leg that take the same, one after another in its time of filling. */
  private List<Lot> lots(FillingTimes.Slot slot, Map<LotKey, List<Filled>> filled) {
    List<Lot> lots = new ArrayList<>();
    int before = 0;
    for (Map.Entry<LotKey, List<Filled>> lot : filled.entrySet()) {
      if (!lot.getKey().leg().equals(slot.leg().name())) {
        continue;
      }
      Map<List<Mass>, List<Filled>> alike = new LinkedHashMap<>();
      lot.getValue()
          .forEach(
              each ->
                  alike
                      .computeIfAbsent(
                          List.of(each.concentrate(), each.water()), same -> new ArrayList<>())
                      .add(each));
      for (List<Filled> carafes : alike.values()) {
        lots.add(lot(lot.getKey(), carafes, slot, before));
        before += carafes.size();
      }
    }
    return lots;
  }

  private Lot lot(LotKey key, List<Filled> carafes, FillingTimes.Slot slot, int before) {
    Filled first = carafes.get(0);
    Fill fill = first.fill();
    Carafe kind = round.carafe(key.content().carafe());
    LocalDateTime brewed = clock.wall(first.brewed());
    return new Lot(
        key.leg(),
        key.content(),
        kind,
        first.group().coffee(),
        carafes.size(),
        new Each(
            fill.blend().concentrate(),
            fill.blend().bypass(),
            fill.byJug().bypass(),
            certainty.of(fill)),
        batchesOf(carafes),
        new Brewing.Times(
            clock.wall(within(slot, before)),
            clock.wall(within(slot, before + carafes.size())),
            brewed,
            clock.wall(first.brewed().plus(kind.hold()))),
        first.group().cup().caffeine());
  }

  private static LocalDateTime within(FillingTimes.Slot slot, int carafes) {
    Duration all = Duration.between(slot.from(), slot.to());
    return slot.from().plusMinutes(all.toMinutes() * carafes / slot.carafes());
  }

  private static List<String> batchesOf(Collection<Filled> carafes) {
    Set<String> ids = new LinkedHashSet<>();
    carafes.forEach(carafe -> carafe.fill().draws().forEach(draw -> ids.add(draw.batchId())));
    return List.copyOf(ids);
  }

  private LegDay leg(FillingTimes.Slot slot, List<Lot> lots, Map<LotKey, List<Filled>> filled) {
    Map<LotKey, Deque<Filled>> waiting = new HashMap<>();
    filled.forEach((key, carafes) -> waiting.put(key, new ArrayDeque<>(carafes)));
    Map<Integer, Map<String, List<Delivery>>> way = new TreeMap<>();
    for (Delivery delivery : day.deliveries()) {
      if (delivery.drop().stop().leg().equals(slot.leg().name())) {
        way.computeIfAbsent(delivery.drop().stop().number(), number -> new LinkedHashMap<>())
            .computeIfAbsent(delivery.drop().place().site(), site -> new ArrayList<>())
            .add(delivery);
      }
    }
    List<LegDay.Stop> stops = new ArrayList<>();
    way.forEach(
        (number, sites) ->
            sites.forEach(
                (site, deliveries) -> stops.add(stop(number, site, deliveries, waiting, slot))));
    LocalDateTime ready =
        lots.stream()
            .flatMap(lot -> lot.batches().stream())
            .map(id -> time(id).ready())
            .max(Comparator.naturalOrder())
            .orElse(slot.from());
    return new LegDay(
        slot.leg(),
        new LegDay.Times(
            clock.wall(ready),
            clock.wall(slot.from()),
            clock.wall(slot.to()),
            clock.wall(slot.leave())),
        loads(lots),
        stops);
  }

  private static List<LegDay.Load> loads(List<Lot> lots) {
    Map<LotKey, LegDay.Load> loads = new LinkedHashMap<>();
    for (Lot lot : lots) {
      Mass each = lot.each().finished().plus(lot.carafe().tare().orElse(Mass.ZERO));
      loads.merge(
          new LotKey(lot.leg(), lot.content()),
          new LegDay.Load(
              lot.content(),
              lot.coffee().name(),
              lot.count(),
              each,
              lot.carafe().tare().isPresent()),
          (a, b) ->
              new LegDay.Load(
                  a.content(),
                  a.coffee(),
                  a.count() + b.count(),
                  a.each().max(b.each()),
                  a.tared()));
    }
    return List.copyOf(loads.values());
  }

  private LegDay.Stop stop(
      int number,
      String site,
      List<Delivery> deliveries,
      Map<LotKey, Deque<Filled>> waiting,
      FillingTimes.Slot slot) {
    Optional<TimeWindow> window =
        deliveries.stream().flatMap(d -> d.drop().stop().window().stream()).findFirst();
    LocalDateTime by =
        window.map(open -> clock.even(day.date().atTime(open.end()))).orElse(slot.leave());
    List<Temperature> warm = new ArrayList<>();
    List<LegDay.Handed> handed = new ArrayList<>();
    for (Delivery delivery : deliveries) {
      Deque<Filled> carafes = requireNonNull(waiting.get(LotKey.of(delivery.drop())));
      List<Filled> its = new ArrayList<>();
      for (int i = 0; i < delivery.carafes(); i++) {
        its.add(carafes.remove());
      }
      Carafe kind = round.carafe(delivery.drop().content().carafe());
      its.forEach(each -> warm.add(cooled(each, kind, Duration.between(slot.from(), by))));
      handed.add(handed(delivery, its));
    }
    return new LegDay.Stop(
        number,
        site,
        deliveries.stream().flatMap(d -> d.drop().place().address().stream()).findFirst(),
        window,
        handed,
        new LegDay.Warmth(
            site, clock.wall(by), warm.stream().min(Comparator.naturalOrder()).orElseThrow()));
  }

  private Temperature cooled(Filled carafe, Carafe kind, Duration standing) {
    return FillHeat.cooled(
        carafe.mixed(),
        round.room().kitchen().water().air(),
        kind.coolingKelvinsFirstHour(),
        standing);
  }

  private LegDay.Handed handed(Delivery delivery, List<Filled> carafes) {
    Filled oldest = carafes.get(0);
    Carafe kind = round.carafe(delivery.drop().content().carafe());
    Volume cup = delivery.drop().par().cup().orElse(round.rules().cup());
    double cups = kind.fill().litres() / cup.litres();
    GroupPlan.Caffeine carafe = oldest.group().cup().caffeine();
    Coffee coffee = oldest.group().coffee();
    return new LegDay.Handed(
        delivery,
        coffee.name(),
        coffee.decaf(),
        clock.wall(oldest.brewed()),
        clock.wall(oldest.brewed().plus(kind.hold())),
        batchesOf(carafes),
        new GroupPlan.Caffeine(carafe.lowMilligrams() / cups, carafe.highMilligrams() / cups));
  }
}
