package dev.urnwright.sheet;

import dev.urnwright.dispatch.Dispatch;
import dev.urnwright.dispatch.LegDay;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.wording.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A leg as its pick list, its labels and its sites' slips show it.
 *
 * @param heading of every page
 * @param name of the leg
 * @param driver when given
 * @param times when
 * @param loading what is taken along
 * @param stops in the order of the way
 */
public record RoundLegView(
    Heading heading,
    Name name,
    Optional<String> driver,
    LegTimes times,
    Loading loading,
    List<StopLine> stops) {
  private static final int LABELS_ACROSS = 3;

  /** So many floors are sure to fit on half a page. */
  private static final int MOST_ON_HALF = 4;

  /**
   * Arranges a leg, every quantity written for its units and scale.
   *
   * @param words in which it is written
   */
  public static RoundLegView of(Dispatch day, LegDay leg, Words words) {
    Display display = RoundHeading.display(day.round(), words);
    return new RoundLegView(
        RoundHeading.of(day, words),
        new Name(leg.leg().name()),
        leg.leg().driver(),
        LegTimes.of(leg),
        Loading.of(leg, display),
        leg.stops().stream().map(stop -> StopLine.of(stop, display)).toList());
  }

  /** The labels of all its carafes in the order of the way, side by side. */
  public List<LabelStrip> strips() {
    List<CarafeLabel> labels = new ArrayList<>();
    for (StopLine stop : stops) {
      int number = 0;
      for (HandedLine row : stop.handed()) {
        for (int i = 0; i < row.carafes(); i++) {
          number++;
          labels.add(new CarafeLabel(stop, row, number));
        }
      }
    }
    List<LabelStrip> strips = new ArrayList<>();
    for (int at = 0; at < labels.size(); at += LABELS_ACROSS) {
      List<CarafeLabel> strip = labels.subList(at, Math.min(at + LABELS_ACROSS, labels.size()));
      strips.add(
          new LabelStrip(strip, IntStream.range(strip.size(), LABELS_ACROSS).boxed().toList()));
    }
    return strips;
  }

  /**
   * The slips of all its sites, two on a page. The layout would find out by itself what no longer
   * fits, but only by laying it out twice.
   */
  public List<Slip> slips() {
    List<Slip> slips = new ArrayList<>();
    int halves = 0;
    for (StopLine stop : stops) {
      int needed = stop.handed().size() <= MOST_ON_HALF ? 1 : 2;
      boolean turns = halves > 0 && halves + needed > 2;
      slips.add(new Slip(stop, turns));
      halves = turns ? needed : halves + needed;
    }
    return slips;
  }

  /**
   * One site's slip.
   *
   * @param stop the site
   * @param nextPage whether it begins another page
   */
  record Slip(StopLine stop, boolean nextPage) {}

  /**
   * Labels side by side.
   *
   * @param labels one at least
   * @param empty places that stay empty
   */
  record LabelStrip(List<CarafeLabel> labels, List<Integer> empty) {}

  /**
   * One carafe's label.
   *
   * @param stop where it goes
   * @param row what is in it
   * @param number among the stop's carafes
   */
  record CarafeLabel(StopLine stop, HandedLine row, int number) {}

  /**
   * What is taken along.
   *
   * @param loads by what is in them
   * @param carafes how many
   * @param weight of all
   * @param tared whether the carafes are in that
   */
  record Loading(List<LoadLine> loads, int carafes, Figure weight, boolean tared) {
    static Loading of(LegDay leg, Display display) {
      return new Loading(
          leg.loads().stream()
              .map(
                  load ->
                      new LoadLine(
                          load.count(),
                          load.content().carafe(),
                          new Name(load.coffee()),
                          StrengthText.of(load.content(), display),
                          display.mass(load.each()),
                          display.mass(load.weight())))
              .toList(),
          leg.carafes(),
          display.mass(leg.weight()),
          leg.loads().stream().allMatch(LegDay.Load::tared));
    }
  }

  /**
   * Carafes with the same in them.
   *
   * @param count how many
   * @param carafe their kind
   * @param coffee in them
   * @param strength of it
   * @param each how heavy one is
   * @param weight of all
   */
  record LoadLine(
      int count, String carafe, Name coffee, String strength, Figure each, Figure weight) {}

  /**
   * One site.
   *
   * @param number its place on the way
   * @param site its name
   * @param address when given
   * @param window when it is expected, when given
   * @param carafes how many
   * @param handed what its floors get
   * @param warm how warm the coolest of them is by when, where there is a window
   */
  record StopLine(
      int number,
      Name site,
      Optional<String> address,
      Optional<String> window,
      int carafes,
      List<HandedLine> handed,
      Optional<Warm> warm) {
    static StopLine of(LegDay.Stop stop, Display display) {
      return new StopLine(
          stop.number(),
          new Name(stop.site()),
          stop.address(),
          stop.window().map(Object::toString),
          stop.carafes(),
          stop.handed().stream().map(row -> HandedLine.of(row, display)).toList(),
          stop.window().map(window -> Warm.of(stop.warmth(), display)));
    }
  }

  /**
   * How warm it is handed over.
   *
   * @param by when at the latest
   * @param temperature about so warm then
   */
  record Warm(String by, Figure temperature) {
    static Warm of(LegDay.Warmth warmth, Display display) {
      return new Warm(ClockText.of(warmth.by()), display.temperature(warmth.temperature()));
    }
  }

  /**
   * What a floor gets.
   *
   * @param floor of it, when it has one
   * @param carafes how many
   * @param carafe their kind
   * @param coffee in them
   * @param strength of it
   * @param caffeine of a cup, in words
   * @param fresh when it was brewed and how long it is good
   * @param notes for the driver
   */
  record HandedLine(
      Optional<String> floor,
      int carafes,
      String carafe,
      CoffeeTag coffee,
      String strength,
      String caffeine,
      FreshTimes fresh,
      Notes notes) {
    static HandedLine of(LegDay.Handed row, Display display) {
      var drop = row.delivery().drop();
      return new HandedLine(
          Optional.of(drop.place().floor()).filter(floor -> !floor.isEmpty()),
          row.delivery().carafes(),
          drop.content().carafe(),
          new CoffeeTag(new Name(row.coffee()), row.decaf()),
          StrengthText.of(drop.content(), display),
          String.format(
              Locale.ROOT,
              "%.0f–%.0f\u00a0mg",
              row.cup().lowMilligrams(),
              row.cup().highMilligrams()),
          new FreshTimes(
              ClockText.of(row.brewed()),
              ClockText.of(row.useBy()),
              String.join(", ", row.batches())),
          new Notes(drop.place().contact(), drop.place().notes()));
    }
  }

  /**
   * How fresh it is.
   *
   * @param brewed the oldest of it
   * @param useBy until then
   * @param batches that it comes from
   */
  record FreshTimes(String brewed, String useBy, String batches) {}

  /**
   * For the driver.
   *
   * @param contact whom to ask for
   * @param notes in the user's words
   */
  record Notes(Optional<String> contact, Optional<String> notes) {}
}
