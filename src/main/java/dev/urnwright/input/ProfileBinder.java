package dev.urnwright.input;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.Measured;
import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Share;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds what is known of brewing a coffee. */
final class ProfileBinder {
  private static final Field<BrewRatio> POINT_RATIO =
      Field.required("ratio", Numbers.ratio(), "brew water to coffee");
  private static final Field<Extraction> POINT_EXTRACTION =
      Field.required("extraction", Amounts.extraction("19.1 %"), "what it extracted");
  private static final Fields POINT_FIELDS =
      Fields.of("measured point", POINT_RATIO, POINT_EXTRACTION);

  static final Field<Method> METHOD =
      Field.optional(
          "method",
          Words.choice(
              List.of("percolation", "immersion"), List.of(Method.PERCOLATION, Method.IMMERSION)),
          "whether water passes through the coffee or stands on it");
  static final Field<Node> REFERENCE =
      Field.optional(
          "reference", Part.mapping(ReferenceBinder.FIELDS), "one brew that tasted right, weighed");
  static final Field<Extraction> EXTRACTION =
      Field.optional(
          "extraction", Amounts.extraction("20 %"), "how much is extracted, without a reference");
  static final Field<Absorption> ABSORPTION =
      Field.optional("absorption", Amounts.absorption(), "what the grounds keep");
  static final Field<List<Node>> MEASURED =
      Field.optional("measured", Part.list(POINT_FIELDS), "extraction at other ratios");
  static final Field<Share> STEAM_LOSS =
      Field.optional(
          "steam_loss", Amounts.share("0.5 %", "0 %", "20 %"), "brew water lost as vapour");

  private final Binding binding;
  private final ReferenceBinder references;

  ProfileBinder(Binding binding, FilledWater filled) {
    this.binding = binding;
    this.references = new ReferenceBinder(binding, filled);
  }

  /** The profile of a coffee; empty when its reference is a problem. */
  Optional<BrewProfile> bind(String coffee, MapReader map) {
    Defaults defaults = binding.defaults();
    Method method =
        defaults.fill(
            coffee,
            map.read(METHOD),
            Method.PERCOLATION,
            "default-method",
            () -> Saying.of("default.method"));
    Share steamLoss =
        defaults.fill(
            coffee,
            map.read(STEAM_LOSS),
            Share.ofPercent(0),
            "default-steam-loss",
            () ->
                Saying.of("default.steam-loss")
                    .with("share", binding.display().share(Share.ofPercent(0))));
    map.oneOf(REFERENCE, EXTRACTION);
    Optional<ReferenceBrew> reference =
        map.read(REFERENCE).flatMap(node -> references.bind(coffee, node));
    Optional<Extraction> extraction = map.read(EXTRACTION);
    List<Measured> measured = map.read(MEASURED).map(this::measured).orElse(List.of());
    if (!map.has(REFERENCE) && !map.has(EXTRACTION) && !map.has(MEASURED)) {
      extraction = Optional.of(BrewModel.USUAL_EXTRACTION);
      defaults.noteOf(
          coffee,
          "default-extraction",
          () ->
              Saying.of("default.extraction")
                  .with("extraction", binding.display().extraction(BrewModel.USUAL_EXTRACTION)));
    }
    if (map.has(REFERENCE) && reference.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new BrewProfile(method, reference, extraction, map.read(ABSORPTION), measured, steamLoss));
  }

  private List<Measured> measured(List<Node> nodes) {
    List<Measured> points = new ArrayList<>();
    for (Node node : nodes) {
      MapReader.of(node, POINT_FIELDS, binding.problems())
          .flatMap(this::point)
          .ifPresent(
              point -> {
                if (points.stream().anyMatch(known -> known.ratio().equals(point.ratio()))) {
                  binding
                      .problems()
                      .at(
                          node,
                          "a second point has the ratio " + binding.display().ratio(point.ratio()),
                          "expected one point for each ratio");
                }
                points.add(point);
              });
    }
    points.sort(Comparator.comparing(Measured::ratio));
    return points;
  }

  private Optional<Measured> point(MapReader map) {
    Optional<BrewRatio> ratio = map.read(POINT_RATIO);
    Optional<Extraction> extraction = map.read(POINT_EXTRACTION);
    return ratio.flatMap(r -> extraction.map(e -> new Measured(r, e)));
  }
}
