package dev.urnwright.plan;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Circuit;
import dev.urnwright.event.Event;
import dev.urnwright.event.Supply;
import dev.urnwright.event.Window;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Power;
import dev.urnwright.quantity.Temperature;
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
        "Scalds: concentrate and bypass water are near "
            + display.temperature(event.serving().bypassTemperature())
            + ". Water of "
            + display.temperature(Temperature.ofCelsius(60))
            + " burns skin within about five seconds. Lids on, two hands, clear paths, no children "
            + "near the brewers; cool a burn under running water and call for help.");
  }

  private void weights(List<CoffeePlan> coffees) {
    Mass heaviest =
        coffees.stream()
            .flatMap(coffee -> coffee.fills().stream())
            .map(fill -> fill.blend().liquid())
            .max(Comparator.naturalOrder())
            .orElse(Mass.ZERO);
    findings.caution(
        "lifting",
        "Lifting: the heaviest fill is "
            + display.mass(heaviest)
            + " without its vessel"
            + carrying(heaviest));
  }

  private static String carrying(Mass heaviest) {
    if (heaviest.compareTo(HEAVY) > 0) {
      return "; two people or a trolley, or fill it where it stands.";
    }
    return heaviest.compareTo(TWO_HANDED) > 0
        ? ". Carry it with both hands, level, lid closed."
        : ". Carry it level, lid closed, one in each hand at most.";
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
            String.format(
                Locale.ROOT,
                "Circuit %s: all its brewers together draw %.1f\u00a0kW, and 80\u00a0%% of its breaker is"
                    + " %.1f\u00a0kW. Do not run them all at once.",
                circuit.name(),
                drawn / 1000,
                limit / 1000));
      }
    }
    if (event.equipment().brewers().stream()
        .map(Brewer::supply)
        .anyMatch(s -> s.power().isPresent())) {
      findings.caution(
          "electricity",
          "Electricity and water: dry hands, dry plugs, no extension leads for brewers. Your local "
              + "code and a licensed electrician decide what a circuit carries.");
    }
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
        String.format(
            Locale.ROOT,
            "Caffeine: up to about %.0f\u00a0mg a cup. Published guidance for healthy adults is at most"
                + " 400\u00a0mg a day and 200\u00a0mg at once, in pregnancy 200\u00a0mg a day (EFSA"
                + " 2015). This is information, not advice.",
            most));
    coffees.stream()
        .filter(coffee -> coffee.coffee().decaf())
        .forEach(
            coffee ->
                findings.caution(
                    "decaf",
                    coffee.coffee().name()
                        + " is decaf, and not free of caffeine. Keep its grounds, brewers, jugs and"
                        + " dispensers apart, and label each dispenser before it is filled."));
  }

  private void food(List<CoffeePlan> coffees) {
    // Where milk is listed, ShoppingRemarks names what is in it.
    if (event.purchases().supplies().stream().noneMatch(Supply::isFood)) {
      findings.caution(
          "allergens",
          "Milk and plant drinks carry allergens (milk, soya, nuts, oats): label them and serve them"
              + " apart. Keep milk cold and its time out of the cold short, as your food authority says.");
    }
    findings.caution(
        "water",
        "Brew, dilute and make ice with drinking water only; clean and rinse brewers and dispensers"
            + " as their makers and local food rules say.");
    findings.caution(
        "holding",
        "Coffee held hot loses flavour within the hour: write the time on each dispenser and pour"
            + " away what is past it.");
    if (coffees.stream().anyMatch(coffee -> !coffee.needed().blend().ice().isZero())) {
      findings.caution(
          "cooling",
          "Iced coffee is cooled before it meets the ice: cool it fast, covered, in a clean vessel, and"
              + " handle ice with a scoop.");
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
            name
                + " is brewed at "
                + display.ratio(ratio)
                + ", outside the measured "
                + display.ratio(curve.knots().get(0).ratio())
                + " to "
                + display.ratio(curve.knots().get(curve.knots().size() - 1).ratio())
                + ": the nearest point's extraction is taken. Measure the first batch.");
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
                    name
                        + " is brewed at "
                        + display.ratio(ratio)
                        + " and its only reference at "
                        + display.ratio(reference)
                        + ": the same extraction is assumed, and may not hold. Measure the first"
                        + " batch."));
  }

  private void window(CoffeePlan plan) {
    Window window = event.print().window();
    Extraction extraction = plan.needed().brew().extraction();
    if (extraction.compareTo(window.leastExtracted()) < 0
        || extraction.compareTo(window.mostExtracted()) > 0) {
      findings.note(
          "extraction-outside-window",
          plan.coffee().name()
              + " extracts "
              + display.extraction(extraction)
              + ", outside the window of "
              + display.extraction(window.leastExtracted())
              + " to "
              + display.extraction(window.mostExtracted())
              + "; water can't change that.");
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
                    g.group().name()
                        + " is served at "
                        + display.strength(g.group().strength())
                        + ", outside the window of "
                        + display.strength(window.weakest())
                        + " to "
                        + display.strength(window.strongest())
                        + "."));
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
      findings.note(
          "close-strengths",
          "Some strengths differ by less than 0.24\u00a0%, the smallest step that tasters noticed in a"
              + " published test; such groups could share a dispenser.");
    }
  }

  private void standing() {
    findings.note(
        "density",
        "Volumes are those of water at the stated temperature (IAPWS-IF97, one atmosphere); coffee is"
            + " about half a percent denser.");
    findings.note(
        "caffeine-extracted",
        "Caffeine per cup: 80 to 100\u00a0% of what the grounds hold is taken to be extracted.");
  }
}
