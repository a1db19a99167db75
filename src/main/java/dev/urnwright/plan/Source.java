package dev.urnwright.plan;

import static java.util.Objects.requireNonNull;

import dev.urnwright.brew.Doubt;
import dev.urnwright.quantity.Unit;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** Where an uncertainty comes from, as far as one can do something about it. */
public enum Source {
  /** The refractometer, in whatever the profile was read with. */
  REFRACTOMETER("refractometer, in the profile's readings", Unit.PERCENT, Doubt.READING),
  /** The scale under the reference brew. */
  REFERENCE_SCALE(
      "weighing of the reference",
      Unit.GRAM,
      Doubt.REFERENCE_DOSE,
      Doubt.REFERENCE_WATER,
      Doubt.REFERENCE_BEVERAGE),
  /** No beverage was weighed. */
  ABSORPTION_ASSUMED("absorption, assumed", Unit.GRAM_PER_GRAM, Doubt.ABSORPTION_ASSUMED),
  /** No beverage was read. */
  EXTRACTION_ASSUMED("extraction, assumed", Unit.PERCENT, Doubt.EXTRACTION_ASSUMED),
  /** Grounds keep more or less from batch to batch. */
  ABSORPTION("absorption, batch to batch", Unit.GRAM_PER_GRAM, Doubt.ABSORPTION),
  /** And give more or less. */
  EXTRACTION("extraction, batch to batch", Unit.PERCENT, Doubt.EXTRACTION),
  /** Water filled into brewers. */
  BREW_WATER("brew water filled in", Unit.PERCENT, Doubt.BREW_WATER),
  /** The kitchen's scale. */
  SCALE("scale, under dose and dispensers", Unit.GRAM, Doubt.DOSE, Doubt.CONCENTRATE, Doubt.BYPASS),
  /** What is poured over the ice in a cup. */
  CUP("pouring over the ice", Unit.PERCENT, Doubt.CUP);

  private static final Map<Doubt, Source> BY_DOUBT = byDoubt();

  private final String words;
  private final Unit unit;
  private final Doubt[] doubts;

  Source(String words, Unit unit, Doubt... doubts) {
    this.words = words;
    this.unit = unit;
    this.doubts = doubts;
  }

  /** In words. */
  public String words() {
    return words;
  }

  /** What its uncertainty is told in. */
  public Unit unit() {
    return unit;
  }

  static Source of(Doubt doubt) {
    return requireNonNull(BY_DOUBT.get(doubt), "every doubt has a source");
  }

  private static Map<Doubt, Source> byDoubt() {
    Map<Doubt, Source> sources = new EnumMap<>(Doubt.class);
    for (Source source : values()) {
      Arrays.stream(source.doubts).forEach(doubt -> sources.put(doubt, source));
    }
    return sources;
  }
}
