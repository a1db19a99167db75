package dev.urnwright.sheet;

import dev.urnwright.dispatch.Brewing;
import dev.urnwright.dispatch.Dispatch;
import dev.urnwright.dispatch.LegDay;
import dev.urnwright.event.Coffee;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.round.ParTuner;
import dev.urnwright.wording.Words;
import java.util.List;
import java.util.Optional;

/**
 * A day of a round as the brew room's sheet shows it.
 *
 * @param heading of every page
 * @param totals of each coffee
 * @param heaters when they are switched on
 * @param batches in order of start
 * @param legs what is filled for each, in the order in which they leave
 * @param changes who gets more, less or nothing, and why
 * @param stock of carafes
 * @param shopping what the day takes
 * @param remarks cautions and assumptions
 */
public record RoundBrewView(
    Heading heading,
    List<Total> totals,
    List<HeaterLine> heaters,
    List<BatchLine> batches,
    List<LegFill> legs,
    Changes changes,
    StockPart stock,
    List<ShoppingRow> shopping,
    Remarks remarks) {
  /**
   * Arranges a day, every quantity written for its units and scale.
   *
   * @param words in which it is written
   */
  public static RoundBrewView of(Dispatch day, Words words) {
    Display display = RoundHeading.display(day.round(), words);
    return new RoundBrewView(
        RoundHeading.of(day, words),
        day.plan().coffees().stream().map(coffee -> Total.of(coffee, display)).toList(),
        day.brewing().heaters().stream()
            .map(h -> new HeaterLine(h.name(), ClockText.of(h.on()), ClockText.of(h.hot())))
            .toList(),
        day.brewing().batches().stream().map(batch -> BatchLine.of(batch, display)).toList(),
        day.legs().stream().map(leg -> LegFill.of(day, leg, display)).toList(),
        Changes.of(day, display, words),
        StockPart.of(day),
        ShoppingRow.of(day.plan(), display, words),
        Remarks.of(day.cautions(), day.notes(), words));
  }

  /**
   * What a coffee takes.
   *
   * @param coffee its name
   * @param batches how many
   * @param dose of all
   * @param water brew water of all
   * @param concentrate of all
   * @param bypass of all carafes
   */
  record Total(
      CoffeeTag coffee, int batches, Figure dose, Figure water, Figure concentrate, Figure bypass) {
    static Total of(CoffeePlan coffee, Display display) {
      return new Total(
          CoffeeTag.of(coffee.coffee()),
          coffee.batches().size(),
          display.mass(coffee.brewed().brew().dose()),
          display.mass(coffee.brewed().brew().water()),
          display.mass(coffee.brewed().brew().beverage()),
          display.mass(coffee.filled().bypass()));
    }
  }

  /**
   * A heater to switch on.
   *
   * @param name of it
   * @param on when
   * @param hot when it is needed
   */
  record HeaterLine(String name, String on, String hot) {}

  /**
   * A batch to weigh and start.
   *
   * @param id of it
   * @param coffee in it
   * @param brewer which
   * @param start when
   * @param ready when
   * @param rinse what the brewer is to be rinsed clean of before
   * @param dose to weigh
   * @param water to fill in
   * @param expect what it gives
   */
  record BatchLine(
      String id,
      CoffeeTag coffee,
      String brewer,
      String start,
      String ready,
      Optional<String> rinse,
      Figure dose,
      Figure water,
      Expected expect) {
    static BatchLine of(Brewing.BatchDay day, Display display) {
      return new BatchLine(
          day.batch().id(),
          CoffeeTag.of(day.coffee()),
          day.batch().unit().map(unit -> unit.label()).orElse(""),
          ClockText.of(day.start()),
          ClockText.of(day.ready()),
          day.toRinse().map(Coffee::name),
          display.mass(day.batch().brew().dose()),
          display.mass(day.batch().brew().water()),
          new Expected(
              display.volume(day.batch().waterByVolume()),
              display.mass(day.batch().brew().beverage()),
              display.strength(day.strength().strength()),
              display.strengths(day.strength().low(), day.strength().high())));
    }
  }

  /**
   * What to expect of a batch.
   *
   * @param volume of its brew water
   * @param beverage that runs through
   * @param strength of it
   * @param likely from where to where that lies, at k = 2
   */
  record Expected(Figure volume, Figure beverage, Figure strength, Figure likely) {}

  /**
   * What is filled for a leg.
   *
   * @param name of it
   * @param driver when given
   * @param times when
   * @param carafes how many
   * @param coolest how warm the coolest of them is when it is handed over
   * @param lots in order of filling
   */
  record LegFill(
      Name name,
      Optional<String> driver,
      LegTimes times,
      int carafes,
      Optional<Figure> coolest,
      List<LotLine> lots) {
    static LegFill of(Dispatch day, LegDay leg, Display display) {
      return new LegFill(
          new Name(leg.leg().name()),
          leg.leg().driver(),
          LegTimes.of(leg),
          leg.carafes(),
          leg.coolest().map(warmth -> display.temperature(warmth.temperature())),
          day.brewing().lots().stream()
              .filter(lot -> lot.leg().equals(leg.leg().name()))
              .map(lot -> LotLine.of(lot, display))
              .toList());
    }
  }

  /**
   * Carafes that are filled alike.
   *
   * @param count how many
   * @param carafe their kind
   * @param coffee in them
   * @param strength wanted
   * @param concentrate into each
   * @param water into each
   * @param jug the water by volume
   * @param likely from where to where the strength lies, at k = 2
   * @param batches where the concentrate comes from
   * @param times when
   */
  record LotLine(
      int count,
      String carafe,
      CoffeeTag coffee,
      String strength,
      Figure concentrate,
      Figure water,
      Figure jug,
      Figure likely,
      String batches,
      LotTimes times) {
    static LotLine of(Brewing.Lot lot, Display display) {
      return new LotLine(
          lot.count(),
          lot.carafe().name(),
          CoffeeTag.of(lot.coffee()),
          StrengthText.of(lot.content(), display),
          display.mass(lot.each().concentrate()),
          display.mass(lot.each().water()),
          display.volume(lot.each().waterByJug()),
          display.strengths(lot.each().strength().low(), lot.each().strength().high()),
          String.join(", ", lot.batches()),
          new LotTimes(
              ClockText.of(lot.times().from()),
              ClockText.of(lot.times().to()),
              ClockText.of(lot.times().useBy())));
    }
  }

  /**
   * When a lot is filled.
   *
   * @param from the first
   * @param to the last
   * @param useBy how long it is good
   */
  record LotTimes(String from, String to, String useBy) {}

  /**
   * Who gets more, less or nothing.
   *
   * @param moved whether leftovers changed what is delivered, or are only told
   * @param moves by leftovers
   * @param missed rows without a delivery
   */
  record Changes(boolean moved, List<MoveLine> moves, List<MissedLine> missed) {
    static Changes of(Dispatch day, Display display, Words words) {
      return new Changes(
          day.moved(),
          day.moves().stream().map(move -> MoveLine.of(move, display)).toList(),
          day.day().missed().stream()
              .map(
                  row ->
                      new MissedLine(
                          row.drop().place().inWords(), words.text(row.change().what().saying())))
              .toList());
    }

    /** Whether leftovers change anything. */
    public boolean anyMoves() {
      return !moves.isEmpty();
    }

    /** Whether anybody gets nothing. */
    public boolean anyMissed() {
      return !missed.isEmpty();
    }
  }

  /**
   * What leftovers change.
   *
   * @param place where
   * @param coffee which
   * @param listed carafes as the table has them
   * @param carafes by the rule
   * @param days that it rests on
   * @param left on average
   * @param poured at most
   */
  record MoveLine(
      String place, String coffee, int listed, int carafes, int days, Figure left, Figure poured) {
    static MoveLine of(ParTuner.Move move, Display display) {
      return new MoveLine(
          move.delivery().drop().place().inWords(),
          move.delivery().drop().content().coffee(),
          move.delivery().carafes(),
          move.carafes(),
          move.days().size(),
          display.volume(move.meanLeft()),
          display.volume(move.mostPoured()));
    }
  }

  /**
   * Who gets nothing.
   *
   * @param place where
   * @param why in the user's words
   */
  record MissedLine(String place, String why) {}

  /**
   * The carafes.
   *
   * @param kinds owned, out, needed and left
   * @param out at which sites
   */
  record StockPart(List<Dispatch.Stock> kinds, List<SiteOut> out) {
    static StockPart of(Dispatch day) {
      return new StockPart(
          day.stock(),
          day.ledger().bySite().entrySet().stream()
              .map(site -> new SiteOut(site.getKey(), site.getValue()))
              .toList());
    }

    /** Whether any carafe is out. */
    public boolean anyOut() {
      return !out.isEmpty();
    }
  }

  /**
   * Carafes at a site.
   *
   * @param site its name
   * @param carafes how many
   */
  record SiteOut(String site, int carafes) {}

  /** Whether anything is to be switched on. */
  public boolean anyHeaters() {
    return !heaters.isEmpty();
  }
}
