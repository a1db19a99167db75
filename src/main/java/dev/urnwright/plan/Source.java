package dev.urnwright.plan;

import static java.util.Objects.requireNonNull;

import dev.urnwright.brew.Doubt;
import dev.urnwright.quantity.Unit;
import dev.urnwright.wording.Saying;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** Where an uncertainty comes from, as far as one can do something about it. */
public enum Source {
  /** The refractometer, in whatever the profile was read with. */
  REFRACTOMETER("source.refractometer", Unit.PERCENT, Doubt.READING),
  /** The scale under the reference brew. */
  REFERENCE_SCALE(
      "source.reference-scale",
      Unit.GRAM,
      Doubt.REFERENCE_DOSE,
      Doubt.REFERENCE_WATER,
      Doubt.REFERENCE_BEVERAGE),
  /** No beverage was weighed. */
  ABSORPTION_ASSUMED("source.absorption-assumed", Unit.GRAM_PER_GRAM, Doubt.ABSORPTION_ASSUMED),
  /** No beverage was read. */
  EXTRACTION_ASSUMED("source.extraction-assumed", Unit.PERCENT, Doubt.EXTRACTION_ASSUMED),
  /** What the batches of a journal taught of it. */
  ABSORPTION_LEARNED("source.absorption-learned", Unit.GRAM_PER_GRAM, Doubt.ABSORPTION_LEARNED),
  /** And of what they extracted. */
  EXTRACTION_LEARNED("source.extraction-learned", Unit.PERCENT, Doubt.EXTRACTION_LEARNED),
  /** Grounds keep more or less from batch to batch. */
  ABSORPTION("source.absorption", Unit.GRAM_PER_GRAM, Doubt.ABSORPTION),
  /** And give more or less. */
  EXTRACTION("source.extraction", Unit.PERCENT, Doubt.EXTRACTION),
  /** Water filled into brewers. */
  BREW_WATER("source.brew-water", Unit.PERCENT, Doubt.BREW_WATER),
  /** The kitchen's scale. */
  SCALE("source.scale", Unit.GRAM, Doubt.DOSE, Doubt.CONCENTRATE, Doubt.BYPASS),
  /** What is poured over the ice in a cup. */
  CUP("source.cup", Unit.PERCENT, Doubt.CUP);

  private static final Map<Doubt, Source> BY_DOUBT = byDoubt();

  private final String key;
  private final Unit unit;
  private final Doubt[] doubts;

  Source(String key, Unit unit, Doubt... doubts) {
    this.key = key;
    this.unit = unit;
    this.doubts = doubts;
  }

  /** For people. */
  public Saying saying() {
    return Saying.of(key);
  }

  /** The same in English. */
  public String words() {
    return saying().toString();
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
