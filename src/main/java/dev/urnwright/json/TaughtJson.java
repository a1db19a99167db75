package dev.urnwright.json;

import dev.urnwright.event.Learned;
import dev.urnwright.event.Taught;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Share;
import java.io.IOException;
import java.util.function.ToDoubleFunction;

/** The part of the document that tells what the journal taught. */
final class TaughtJson {
  private final JsonFields fields;

  TaughtJson(JsonFields fields) {
    this.fields = fields;
  }

  void write(Taught taught) throws IOException {
    fields.array("coffees", taught.brewing(), this::brewing);
    fields.array("groups", taught.drinking(), this::drinking);
  }

  private void brewing(Taught.Brewing brewing) throws IOException {
    fields.text("coffee", brewing.coffee());
    if (brewing.absorption().isPresent()) {
      learned("absorption", brewing.absorption().get(), Absorption::gramsPerGram);
    }
    fields.array(
        "extraction",
        brewing.extraction(),
        at -> {
          fields.ratio("ratio", at.ratio());
          learned("percent", at.extraction(), Extraction::percent);
        });
  }

  private void drinking(Taught.Drinking drinking) throws IOException {
    fields.text("group", drinking.group());
    learned("cups_per_guest", drinking.cupsPerGuest(), cups -> cups);
    learned("drinkers_percent", drinking.drinkers(), Share::percent);
  }

  private <T> void learned(String name, Learned<T> learned, ToDoubleFunction<T> number)
      throws IOException {
    fields.object(
        name,
        learned,
        each -> {
          fields.number("before", number.applyAsDouble(each.before()));
          fields.number("now", number.applyAsDouble(each.value()));
          fields.number("low", number.applyAsDouble(each.low()));
          fields.number("high", number.applyAsDouble(each.high()));
          fields.count("entries", each.entries());
        });
  }
}
