package dev.urnwright.json;

import dev.urnwright.brew.BrewBalance;
import dev.urnwright.brew.Budget;
import dev.urnwright.plan.Brewed;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Needed;
import dev.urnwright.plan.OnTheDay;
import dev.urnwright.plan.StrengthAccount;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The part of the document that tells of one coffee. */
final class CoffeeJson {
  private final JsonFields fields;

  CoffeeJson(JsonFields fields) {
    this.fields = fields;
  }

  void write(CoffeePlan plan, Certainty certainty) throws IOException {
    fields.text("key", plan.coffee().key());
    fields.text("name", plan.coffee().name());
    fields.flag("decaf", plan.coffee().decaf());
    if (plan.coffee().journal().isPresent()) {
      fields.text("journal_coffee", plan.coffee().journal().get().coffee());
    }
    fields.object("needed", plan.needed(), this::needed);
    fields.object("brewed", plan.brewed(), this::brewed);
    fields.object("certainty", certainty.of(plan), this::certainty);
    List<String> names = plan.groups().stream().map(group -> group.group().name()).toList();
    fields.array("corrections", plan.onTheDay().corrections(), each -> correction(each, names));
    fields.object("ladder", plan.onTheDay().ladder(), ladder -> ladder(ladder, names));
  }

  private void needed(Needed needed) throws IOException {
    balance(needed.brew());
    fields.grams("bypass_g", needed.blend().bypass());
    fields.grams("ice_g", needed.blend().ice());
    fields.grams("finished_g", needed.blend().finished());
    fields.number("total_water_to_coffee", needed.totalWaterToCoffee());
    fields.number("cup_to_coffee", needed.cupToCoffee());
  }

  private void brewed(Brewed brewed) throws IOException {
    balance(brewed.brew());
    fields.grams("drawn_g", brewed.drawn());
    fields.grams("left_over_g", brewed.leftOver());
  }

  private void certainty(StrengthAccount account) throws IOException {
    fields.number("coverage_factor", Budget.COVERAGE);
    fields.interval("concentrate_strength", account.concentrate());
    fields.text("group", account.group().group().name());
    fields.interval("strength", account.cup());
    fields.percent("strength_uncertainty", Strength.ofFraction(account.cup().uncertainty()));
    fields.array("budget", account.entries(), this::entry);
    fields.interval("after_reading", account.afterReading());
    fields.text("advice", account.advice());
  }

  private void entry(StrengthAccount.Entry entry) throws IOException {
    fields.text("source", entry.source().name().toLowerCase(Locale.ROOT));
    fields.number("standard_uncertainty", entry.amount());
    fields.text("unit", entry.source().unit().symbol());
    fields.percent("contribution", entry.contribution());
    fields.number("share", entry.share().percent());
    fields.interval("without", entry.without());
  }

  private void balance(BrewBalance brew) throws IOException {
    fields.ratio("ratio", brew.ratio());
    fields.grams("dose_g", brew.dose());
    fields.grams("brew_water_g", brew.water());
    fields.grams("absorbed_g", brew.absorbed());
    fields.grams("steam_g", brew.steam());
    fields.grams("concentrate_g", brew.beverage());
    fields.percent("concentrate_strength", brew.strength());
    fields.percent("extraction", brew.extraction());
  }

  private void correction(OnTheDay.Correction correction, List<String> names) throws IOException {
    fields.percent("reading", correction.reading());
    fields.flag("planned", correction.planned());
    fields.array(
        "pours",
        named(names, correction.pours()),
        pour -> {
          fields.text("group", pour.group());
          fields.grams("concentrate_g", pour.value().concentrate());
          fields.grams("bypass_g", pour.value().bypass());
          fields.percent("strength", pour.value().strength());
          fields.count("cups_short", pour.value().cupsShort());
        });
  }

  private void ladder(OnTheDay.TasteLadder ladder, List<String> names) throws IOException {
    fields.grams("sample_g", ladder.sample());
    fields.grams("step_g", ladder.step());
    fields.array("rungs", ladder.rungs(), rung -> rung(rung, names));
  }

  private void rung(OnTheDay.Rung rung, List<String> names) throws IOException {
    fields.grams("water_g", rung.water());
    fields.percent("strength", rung.strength());
    fields.array(
        "fills",
        named(names, rung.bypass()),
        (Named<Mass> bypass) -> {
          fields.text("group", bypass.group());
          fields.grams("bypass_g", bypass.value());
        });
  }

  /**
   * A value with the name of its group.
   *
   * @param group the name
   * @param value what belongs to it
   */
  private record Named<T>(String group, T value) {}

  private static <T> List<Named<T>> named(List<String> names, List<T> values) {
    List<Named<T>> pairs = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      pairs.add(new Named<>(names.get(i), values.get(i)));
    }
    return pairs;
  }
}
