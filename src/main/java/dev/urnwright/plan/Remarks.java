package dev.urnwright.plan;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Circuit;
import dev.urnwright.event.Event;
import dev.urnwright.event.Supply;
import dev.urnwright.event.Window;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Power;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.wording.Saying;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The cautions and the assumptions that go with a finished plan. */
final class Remarks {
  /** A planned ratio further than this from the only reference may extract differently. */
  private static final double REFERENCE_REACH = 1.0;

  /** The smallest difference in strength that tasters notice: Frost, Ristenpart, Guinard 2019. */
  private static final double NOTICEABLE_PERCENT = 0.24;

  /** Overcurrent protection is not loaded past this for hours (NEC 210.20(A), 125 % rule). */
  private static final double CONTINUOUS_SHARE = 0.8;

  private static final Mass HEAVY = Mass.ofGrams(10_000);
  private static final Mass TWO_HANDED = Mass.ofGrams(3_000);

  private final Event event;
  private final Findings findings;
  private final Display display;

  Remarks(Event event, Findings findings) {
    this.event = event;
    this.findings = findings;
    this.display = findings.display();
  }

  void on(List<CoffeeModel> models, List<CoffeePlan> coffees) {
    scalds();
    weights(coffees);
    electricity();
    caffeine(coffees);
    food(coffees);
    for (int i = 0; i < coffees.size(); i++) {
      curve(models.get(i), coffees.get(i));
      window(coffees.get(i));
    }
    noticeable(coffees);
    standing();
  }

  private void scalds() {
    findings.caution(
        "scald",
        Saying.of("caution.scald")
            .with("bypass", display.temperature(event.serving().bypassTemperature()))
            .with("burning", display.temperature(Temperature.ofCelsius(60))));
  }

  private void weights(List<CoffeePlan> coffees) {
    Mass heaviest =
        coffees.stream()
            .flatMap(coffee -> coffee.fills().stream())
            .map(fill -> fill.blend().liquid())
            .max(Comparator.naturalOrder())
            .orElse(Mass.ZERO);
    String how =
        heaviest.compareTo(HEAVY) > 0
            ? "heavy"
            : heaviest.compareTo(TWO_HANDED) > 0 ? "two-handed" : "light";
    findings.caution(
        "lifting", Saying.of("caution.lifting." + how).with("fill", display.mass(heaviest)));
  }

  private void electricity() {
    for (Circuit circuit : event.equipment().circuits()) {
      double limit = circuit.volts() * circuit.breakerAmperes() * CONTINUOUS_SHARE;
      double drawn =
          event.equipment().brewers().stream()
              .filter(b -> b.supply().circuit().filter(circuit.name()::equals).isPresent())
              .mapToDouble(b -> b.count() * b.supply().power().map(Power::watts).orElse(0.0))
              .sum();
      if (drawn > limit) {
        findings.caution(
            "circuit",
            Saying.of("caution.circuit")
                .with("circuit", circuit.name())
                .with("drawn", kilowatts(drawn))
                .with("limit", kilowatts(limit)));
      }
    }
    if (event.equipment().brewers().stream()
        .map(Brewer::supply)
        .anyMatch(s -> s.power().isPresent())) {
      findings.caution("electricity", Saying.of("caution.electricity"));
    }
  }

  private static Figure kilowatts(double watts) {
    return new Figure(String.format(Locale.ROOT, "%.1f", watts / 1000), "kW");
  }

  private void caffeine(List<CoffeePlan> coffees) {
    double most =
        coffees.stream()
            .flatMap(coffee -> coffee.groups().stream())
            .mapToDouble(group -> group.cup().caffeine().highMilligrams())
            .max()
            .orElse(0);
    findings.caution(
        "caffeine",
        Saying.of("caution.caffeine")
            .with("most", new Figure(String.format(Locale.ROOT, "%.0f", most), "mg")));
    coffees.stream()
        .filter(coffee -> coffee.coffee().decaf())
        .forEach(
            coffee ->
                findings.caution(
                    "decaf", Saying.of("caution.decaf").with("coffee", coffee.coffee().name())));
  }

  private void food(List<CoffeePlan> coffees) {
    // Where milk is listed, ShoppingRemarks names what is in it.
    if (event.purchases().supplies().stream().noneMatch(Supply::isFood)) {
      findings.caution("allergens", Saying.of("caution.allergens"));
    }
    findings.caution("water", Saying.of("caution.water"));
    findings.caution("holding", Saying.of("caution.holding"));
    if (coffees.stream().anyMatch(coffee -> !coffee.needed().blend().ice().isZero())) {
      findings.caution("cooling", Saying.of("caution.cooling"));
    }
  }

  /** Says where the plan leaves what was measured. */
  private void curve(CoffeeModel model, CoffeePlan plan) {
    BrewRatio ratio = plan.needed().brew().ratio();
    String name = plan.coffee().name();
    var curve = model.brewing().curve();
    if (curve.knots().size() > 1) {
      if (!curve.covers(ratio)) {
        findings.note(
            "outside-measured",
            Saying.of("note.outside-measured")
                .with("coffee", name)
                .with("ratio", ratio(ratio))
                .with("least", ratio(curve.knots().get(0).ratio()))
                .with("greatest", ratio(curve.knots().get(curve.knots().size() - 1).ratio())));
      }
      return;
    }
    model
        .reference()
        .filter(r -> Math.abs(r.gramsPerGram() - ratio.gramsPerGram()) > REFERENCE_REACH)
        .ifPresent(
            reference ->
                findings.note(
                    "far-from-reference",
                    Saying.of("note.far-from-reference")
                        .with("coffee", name)
                        .with("ratio", ratio(ratio))
                        .with("reference", ratio(reference))));
  }

  private Figure ratio(BrewRatio ratio) {
    return Figure.bare(display.ratio(ratio));
  }

  private void window(CoffeePlan plan) {
    Window window = event.print().window();
    Extraction extraction = plan.needed().brew().extraction();
    if (extraction.compareTo(window.leastExtracted()) < 0
        || extraction.compareTo(window.mostExtracted()) > 0) {
      findings.note(
          "extraction-outside-window",
          Saying.of("note.extraction-outside-window")
              .with("coffee", plan.coffee().name())
              .with("extraction", display.extraction(extraction))
              .with("least", display.extraction(window.leastExtracted()))
              .with("most", display.extraction(window.mostExtracted())));
    }
    plan.groups().stream()
        .filter(
            g ->
                g.group().strength().compareTo(window.weakest()) < 0
                    || g.group().strength().compareTo(window.strongest()) > 0)
        .forEach(
            g ->
                findings.note(
                    "strength-outside-window",
                    Saying.of("note.strength-outside-window")
                        .with("group", g.group().name())
                        .with("strength", display.strength(g.group().strength()))
                        .with("weakest", display.strength(window.weakest()))
                        .with("strongest", display.strength(window.strongest()))));
  }

  private void noticeable(List<CoffeePlan> coffees) {
    boolean tooClose =
        coffees.stream()
            .anyMatch(
                coffee -> {
                  double[] percents =
                      coffee.groups().stream()
                          .mapToDouble(g -> g.group().strength().percent())
                          .distinct()
                          .sorted()
                          .toArray();
                  for (int i = 1; i < percents.length; i++) {
                    if (percents[i] - percents[i - 1] < NOTICEABLE_PERCENT) {
                      return true;
                    }
                  }
                  return false;
                });
    if (tooClose) {
      findings.note("close-strengths", Saying.of("note.close-strengths"));
    }
  }

  private void standing() {
    findings.note("density", Saying.of("note.density"));
    findings.note("caffeine-extracted", Saying.of("note.caffeine-extracted"));
  }
}
