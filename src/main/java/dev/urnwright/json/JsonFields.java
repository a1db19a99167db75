package dev.urnwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.urnwright.brew.Blend;
import dev.urnwright.brew.Estimate;
import dev.urnwright.event.Note;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Strength;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Writes quantities as fields of the object that is being written. */
final class JsonFields {
  private static final int DECIMALS = 6;

  private final JsonGenerator json;

  JsonFields(JsonGenerator json) {
    this.json = json;
  }

  /** Writes the parts of one value. */
  @FunctionalInterface
  interface Body<T> {
    void write(T value) throws IOException;
  }

  void text(String name, String value) throws IOException {
    json.writeStringField(name, value);
  }

  void flag(String name, boolean value) throws IOException {
    json.writeBooleanField(name, value);
  }

  void count(String name, int value) throws IOException {
    json.writeNumberField(name, value);
  }

  /** A number without the noise of binary fractions. */
  void number(String name, double value) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(rounded(value));
  }

  /** Money as its exact number. */
  void money(String name, Money money) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(plain(money.amount()));
  }

  private static BigDecimal rounded(double value) {
    return plain(BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP));
  }

  private static BigDecimal plain(BigDecimal value) {
    BigDecimal number = value.stripTrailingZeros();
    return number.scale() < 0 ? number.setScale(0) : number;
  }

  void grams(String name, Mass mass) throws IOException {
    number(name, mass.grams());
  }

  /** An array of masses. */
  void grams(String name, List<Mass> masses) throws IOException {
    json.writeArrayFieldStart(name);
    for (Mass mass : masses) {
      json.writeNumber(rounded(mass.grams()));
    }
    json.writeEndArray();
  }

  void percent(String name, Strength strength) throws IOException {
    number(name, strength.percent());
  }

  void percent(String name, Extraction extraction) throws IOException {
    number(name, extraction.percent());
  }

  /** The ends of a strength's interval at k = 2, as two fields. */
  void interval(String name, Estimate estimate) throws IOException {
    percent(name + "_low", estimate.low());
    percent(name + "_high", estimate.high());
  }

  void ratio(String name, BrewRatio ratio) throws IOException {
    number(name, ratio.gramsPerGram());
  }

  /** Concentrate, bypass and ice as three fields. */
  void parts(Blend blend) throws IOException {
    grams("concentrate_g", blend.concentrate());
    grams("bypass_g", blend.bypass());
    grams("ice_g", blend.ice());
  }

  void notes(String name, List<Note> notes) throws IOException {
    array(
        name,
        notes,
        note -> {
          text("code", note.code());
          text("text", note.text());
        });
  }

  <T> void object(String name, T value, Body<T> body) throws IOException {
    json.writeObjectFieldStart(name);
    body.write(value);
    json.writeEndObject();
  }

  /** An array of objects. */
  <T> void array(String name, Iterable<T> values, Body<T> body) throws IOException {
    json.writeArrayFieldStart(name);
    for (T value : values) {
      json.writeStartObject();
      body.write(value);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  void texts(String name, List<String> values) throws IOException {
    json.writeArrayFieldStart(name);
    for (String value : values) {
      json.writeString(value);
    }
    json.writeEndArray();
  }
}
