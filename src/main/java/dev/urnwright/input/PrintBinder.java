package dev.urnwright.input;

import dev.urnwright.event.Paper;
import dev.urnwright.event.Print;
import dev.urnwright.event.Window;
import dev.urnwright.quantity.Dimension;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Measure;
import dev.urnwright.quantity.MeasureRange;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Unit;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.wording.Saying;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds how the sheets print. */
final class PrintBinder {
  private static final Field<MeasureRange> WINDOW_STRENGTH =
      Field.optional(
          "strength",
          Amounts.range(Dimension.PERCENTAGE, "1.15 % to 1.45 %", "0.1 %", "10 %"),
          "the strengths that are usually liked");
  private static final Field<MeasureRange> WINDOW_EXTRACTION =
      Field.optional(
          "extraction",
          Amounts.range(Dimension.PERCENTAGE, "18 % to 22 %", "5 %", "35 %"),
          "the extractions that are usually liked");
  private static final Fields WINDOW_FIELDS =
      Fields.of("window", WINDOW_STRENGTH, WINDOW_EXTRACTION);

  static final Field<UnitSystem> UNITS =
      Field.optional(
          "units",
          Words.choice(List.of("metric", "us"), List.of(UnitSystem.METRIC, UnitSystem.US)),
          "what the sheets print; the file may mix both");
  static final Field<Paper> PAPER =
      Field.optional(
          "paper",
          Words.choice(List.of("A4", "Letter"), List.of(Paper.A4, Paper.LETTER)),
          "the paper that the sheets are printed on");
  static final Field<Node> WINDOW =
      Field.optional(
          "window", Part.mapping(WINDOW_FIELDS), "what you aim for on the control chart");

  private final Binding binding;
  private final Optional<Locale> language;

  PrintBinder(Binding binding, Optional<Locale> language) {
    this.binding = binding;
    this.language = language;
  }

  static UnitSystem units(MapReader event, Optional<Locale> language, Defaults defaults) {
    UnitSystem usual = LanguageBinder.units(language);
    return defaults.fill(
        event.read(UNITS),
        usual,
        "default-units",
        () -> Saying.of(usual == UnitSystem.US ? "default.units.us" : "default.units"));
  }

  Print bind(MapReader event) {
    UnitSystem units = binding.display().system();
    Paper usual = LanguageBinder.paper(language, units);
    Paper paper =
        binding
            .defaults()
            .fill(
                event.read(PAPER),
                usual,
                "default-paper",
                () ->
                    Saying.of("default.paper").with("paper", usual == Paper.A4 ? "A4" : "Letter"));
    return new Print(units, paper, window(event), language.orElse(Locale.ENGLISH));
  }

  private Window window(MapReader event) {
    Optional<MapReader> window =
        event.read(WINDOW).flatMap(node -> MapReader.of(node, WINDOW_FIELDS, binding.problems()));
    Optional<MeasureRange> strengths = window.flatMap(map -> range(map, WINDOW_STRENGTH));
    Optional<MeasureRange> extractions = window.flatMap(map -> range(map, WINDOW_EXTRACTION));
    if (strengths.isEmpty()) {
      binding
          .defaults()
          .note(
              "default-window-strength",
              Saying.of("default.window-strength")
                  .with("weakest", binding.display().strength(Window.USUAL.weakest()))
                  .with("strongest", binding.display().strength(Window.USUAL.strongest())));
    }
    if (extractions.isEmpty()) {
      binding
          .defaults()
          .note(
              "default-window-extraction",
              Saying.of("default.window-extraction")
                  .with("least", binding.display().extraction(Window.USUAL.leastExtracted()))
                  .with("most", binding.display().extraction(Window.USUAL.mostExtracted())));
    }
    return new Window(
        strengths.map(range -> strength(range.low())).orElse(Window.USUAL.weakest()),
        strengths.map(range -> strength(range.high())).orElse(Window.USUAL.strongest()),
        extractions.map(range -> extraction(range.low())).orElse(Window.USUAL.leastExtracted()),
        extractions.map(range -> extraction(range.high())).orElse(Window.USUAL.mostExtracted()));
  }

  private Optional<MeasureRange> range(MapReader window, Field<MeasureRange> field) {
    Optional<MeasureRange> range = window.read(field);
    if (range.isPresent() && range.get().low().equals(range.get().high())) {
      binding
          .problems()
          .at(window.valueOf(field), "this range has no width", field.kind().expected());
      return Optional.empty();
    }
    return range;
  }

  private static Strength strength(Measure measure) {
    return Strength.ofPercent(measure.in(Unit.PERCENT));
  }

  private static Extraction extraction(Measure measure) {
    return Extraction.ofPercent(measure.in(Unit.PERCENT));
  }
}
