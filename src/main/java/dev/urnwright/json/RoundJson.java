package dev.urnwright.json;

import dev.urnwright.dispatch.Brewing;
import dev.urnwright.dispatch.Dispatch;
import dev.urnwright.dispatch.LegDay;
import dev.urnwright.dispatch.WeekShopping;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.ShoppingLine;
import dev.urnwright.round.CarafeLedger;
import dev.urnwright.round.Drop;
import dev.urnwright.round.ParTuner;
import dev.urnwright.round.Round;
import java.io.IOException;
import java.io.Writer;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;

/** Writes a day of a round, or a week's purchases, as a JSON document. */
public final class RoundJson {
  private final String version;

  /** JSON that says which version of the program planned. */
  public RoundJson(String version) {
    this.version = version;
  }

  /**
   * Writes a day and a line end; doesn't close the writer.
   *
   * @throws IOException if the writer fails
   */
  public void write(Dispatch day, Writer out) throws IOException {
    JsonDocument.write(out, fields -> document(day, fields));
  }

  /** Writes what several days take to buy. */
  public void write(Round round, WeekShopping week, Writer out) throws IOException {
    JsonDocument.write(
        out,
        fields -> {
          fields.text("urnwright", version);
          fields.text("name", round.name());
          fields.array(
              "days",
              week.days(),
              day -> {
                fields.text("date", day.date().toString());
                fields.count("sites", day.sites());
                fields.count("carafes", day.carafes());
                fields.count("batches", day.batches());
              });
          fields.texts("idle", week.idle().stream().map(LocalDate::toString).toList());
          shopping(week.lines(), fields);
          if (week.cost().isPresent()) {
            fields.money("cost", week.cost().get());
            fields.text("currency", week.cost().get().currency().getCurrencyCode());
          }
        });
  }

  private void document(Dispatch day, JsonFields fields) throws IOException {
    fields.text("urnwright", version);
    fields.text("name", day.round().name());
    fields.text("date", day.day().date().toString());
    fields.array("coffees", day.plan().coffees(), coffee -> coffee(coffee, fields));
    fields.array("batches", day.brewing().batches(), batch -> batch(batch, fields));
    fields.array("fills", day.brewing().lots(), lot -> lot(lot, fields));
    fields.array(
        "heaters",
        day.brewing().heaters(),
        heater -> {
          fields.text("name", heater.name());
          fields.text("on", moment(heater.on()));
          fields.text("hot", moment(heater.hot()));
        });
    fields.array("legs", day.legs(), leg -> leg(leg, fields));
    fields.array(
        "stock",
        day.stock(),
        kind -> {
          fields.text("carafe", kind.carafe());
          fields.count("owned", kind.owned());
          fields.count("out", kind.out());
          fields.count("needed", kind.needed());
          fields.count("left", kind.left());
        });
    fields.array("out", day.ledger().rows(), row -> out(row, fields));
    fields.flag("tuned", day.moved());
    fields.array("moves", day.moves(), move -> move(move, fields));
    fields.array(
        "missed",
        day.day().missed(),
        missed -> {
          place(missed.drop(), fields);
          fields.text("why", missed.change().what().inWords());
        });
    shopping(day.plan().shopping(), fields);
    fields.notes("cautions", day.cautions());
    fields.notes("notes", day.notes());
  }

  private static void coffee(CoffeePlan coffee, JsonFields fields) throws IOException {
    fields.text("coffee", coffee.coffee().key());
    fields.text("name", coffee.coffee().name());
    fields.flag("decaf", coffee.coffee().decaf());
    fields.count("batches", coffee.batches().size());
    fields.grams("dose_g", coffee.brewed().brew().dose());
    fields.grams("brew_water_g", coffee.brewed().brew().water());
    fields.grams("concentrate_g", coffee.brewed().brew().beverage());
    fields.percent("concentrate_strength", coffee.brewed().brew().strength());
    fields.grams("bypass_g", coffee.filled().bypass());
    fields.grams("left_over_g", coffee.brewed().leftOver());
    fields.ratio("ratio", coffee.brewed().brew().ratio());
  }

  private static void batch(Brewing.BatchDay day, JsonFields fields) throws IOException {
    Batch batch = day.batch();
    fields.text("id", batch.id());
    fields.text("coffee", day.coffee().key());
    if (batch.unit().isPresent()) {
      fields.text("brewer", batch.unit().get().label());
    }
    fields.text("start", moment(day.start()));
    fields.text("ready", moment(day.ready()));
    fields.grams("dose_g", batch.brew().dose());
    fields.grams("brew_water_g", batch.brew().water());
    fields.grams("beverage_g", batch.brew().beverage());
    fields.percent("strength", day.strength().strength());
    fields.interval("strength", day.strength());
    if (day.toRinse().isPresent()) {
      fields.text("rinse_clean_of", day.toRinse().get().key());
    }
  }

  private static void lot(Brewing.Lot lot, JsonFields fields) throws IOException {
    fields.text("leg", lot.leg());
    content(lot.content(), fields);
    fields.count("count", lot.count());
    fields.grams("concentrate_g", lot.each().concentrate());
    fields.grams("water_g", lot.each().water());
    fields.number("water_by_jug_ml", lot.each().waterByJug().millilitres());
    fields.percent("reached", lot.each().strength().strength());
    fields.interval("reached", lot.each().strength());
    fields.texts("batches", lot.batches());
    fields.text("from", moment(lot.times().from()));
    fields.text("to", moment(lot.times().to()));
    fields.text("brewed", moment(lot.times().brewed()));
    fields.text("use_by", moment(lot.times().useBy()));
  }

  private static void leg(LegDay leg, JsonFields fields) throws IOException {
    fields.text("name", leg.leg().name());
    if (leg.leg().driver().isPresent()) {
      fields.text("driver", leg.leg().driver().get());
    }
    fields.text("ready", moment(leg.times().ready()));
    fields.text("from", moment(leg.times().from()));
    fields.text("to", moment(leg.times().to()));
    fields.text("leave", moment(leg.times().leave()));
    fields.count("carafes", leg.carafes());
    fields.grams("weight_g", leg.weight());
    fields.array(
        "loads",
        leg.loads(),
        load -> {
          content(load.content(), fields);
          fields.count("count", load.count());
          fields.grams("each_g", load.each());
          fields.flag("tared", load.tared());
        });
    fields.array("stops", leg.stops(), stop -> stop(stop, fields));
  }

  private static void stop(LegDay.Stop stop, JsonFields fields) throws IOException {
    fields.count("stop", stop.number());
    fields.text("site", stop.site());
    if (stop.address().isPresent()) {
      fields.text("address", stop.address().get());
    }
    if (stop.window().isPresent()) {
      fields.text("window_from", stop.window().get().start().toString());
      fields.text("window_to", stop.window().get().end().toString());
    }
    fields.text("handed_by", moment(stop.warmth().by()));
    fields.number("handed_temperature", stop.warmth().temperature().celsius());
    fields.array(
        "deliveries",
        stop.handed(),
        row -> {
          fields.text("floor", row.delivery().drop().place().floor());
          content(row.delivery().drop().content(), fields);
          fields.count("carafes", row.delivery().carafes());
          fields.text("brewed", moment(row.brewed()));
          fields.text("use_by", moment(row.useBy()));
          fields.texts("batches", row.batches());
          fields.number("caffeine_low_mg", row.cup().lowMilligrams());
          fields.number("caffeine_high_mg", row.cup().highMilligrams());
        });
  }

  private static void out(CarafeLedger.Out row, JsonFields fields) throws IOException {
    place(row.drop(), fields);
    fields.text("carafe", row.drop().content().carafe());
    fields.count("carafes", row.carafes());
    fields.text("since", row.since().toString());
  }

  private static void move(ParTuner.Move move, JsonFields fields) throws IOException {
    place(move.delivery().drop(), fields);
    content(move.delivery().drop().content(), fields);
    fields.count("listed", move.delivery().carafes());
    fields.count("carafes", move.carafes());
    fields.texts("days", move.days().stream().map(LocalDate::toString).toList());
    fields.number("mean_left_ml", move.meanLeft().millilitres());
    fields.number("most_poured_ml", move.mostPoured().millilitres());
  }

  private static void shopping(List<ShoppingLine> lines, JsonFields fields) throws IOException {
    fields.array("shopping", lines, new ShoppingJson(fields)::line);
  }

  private static void place(Drop drop, JsonFields fields) throws IOException {
    fields.text("site", drop.place().site());
    fields.text("floor", drop.place().floor());
  }

  private static void content(Drop.Content content, JsonFields fields) throws IOException {
    fields.text("carafe", content.carafe());
    fields.text("coffee", content.coffee());
    fields.text("strength_name", content.strengthName());
    fields.percent("strength", content.strength());
  }

  private static String moment(LocalDateTime time) {
    return DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(time);
  }
}
