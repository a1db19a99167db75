package dev.urnwright.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What a unit measures. */
public enum Dimension {
  /** In grams. */
  MASS("a mass", "18 g"),
  /** In litres. */
  VOLUME("a volume", "240 ml"),
  /** In °C; not a difference. */
  TEMPERATURE("a temperature", "92 °C"),
  /** In seconds. */
  DURATION("a time", "11 min"),
  /** In percent. */
  PERCENTAGE("a percentage", "85 %"),
  /** In watts. */
  POWER("a power", "3.1 kW"),
  /** In volts. */
  VOLTAGE("a voltage", "230 V"),
  /** In amperes. */
  CURRENT("a current", "32 A"),
  /** In grams per gram. */
  MASS_PER_MASS("an absorption", "2.1 g/g"),
  /** In kelvins per hour: a difference. */
  COOLING("a cooling", "6 °C per hour"),
  /** In millimetres. */
  LENGTH("a length", "18 cm"),
  /** In litres per minute. */
  FLOW("a flow", "0.9 l/min"),
  /** In grams per millilitre. */
  BULK_DENSITY("a bulk density", "0.40 g/ml"),
  /** In cups, of whatever size, per minute. */
  POUR("a pour", "6 cups per minute");

  private final String words;
  private final String example;

  Dimension(String words, String example) {
    this.words = words;
    this.example = example;
  }

  /** With its article, as in {@code a mass}. */
  public String words() {
    return words;
  }

  /** A value as people write it, as in {@code 18 g}. */
  public String example() {
    return example;
  }

  /** Its units, the smallest first. */
  List<Unit> units() {
    return Arrays.stream(Unit.values()).filter(unit -> unit.dimension() == this).toList();
  }

  /** Its units in words, as in {@code g, kg, oz, lb}. */
  String unitSymbols() {
    return units().stream().map(Unit::symbol).collect(Collectors.joining(", "));
  }
}
