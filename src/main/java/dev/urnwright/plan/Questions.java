package dev.urnwright.plan;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Brewer;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Volume;
import dev.urnwright.wording.Saying;
import java.time.Duration;

/**
 * What can be planned and was hardly meant: each is asked about, with the likely intention. The
 * limits are where the trade's figures end, not where physics does.
 */
final class Questions {
  /** A tasting cup and a large mug hold about this. */
  private static final Volume SMALL_CUP = Volume.ofLitres(0.06);

  private static final Volume LARGE_CUP = Volume.ofLitres(1);

  /** Filter coffee is drunk between these; espresso is above, tea-coloured water below. */
  private static final Strength FAINT = Strength.ofPercent(0.6);

  private static final Strength INKY = Strength.ofPercent(3);

  /** Of roasted coffee 20 to 31 % dissolves in water at all (Trigg in Ukers, 1922). */
  private static final Extraction MOST_SOLUBLE = Extraction.ofPercent(30);

  /** Published figures go from 1.5 g/g (drip) to 3.2 g/g (steeped). */
  private static final Absorption DRY_GROUNDS = Absorption.ofGramsPerGram(1);

  private static final Absorption WET_GROUNDS = Absorption.ofGramsPerGram(4);

  /** No kettle pours over more than this at once. */
  private static final Mass LARGE_REFERENCE = Mass.ofGrams(2_000);

  /** A brewer that holds less water than this for its greatest dose brews syrup, or is misread. */
  private static final double LEAST_WATER_PER_DOSE = 5;

  private static final Duration LONG_DRIP = Duration.ofHours(1);

  private final Event event;
  private final Findings findings;
  private final Display display;

  Questions(Event event, Findings findings) {
    this.event = event;
    this.findings = findings;
    this.display = findings.display();
  }

  void ask() {
    event.groups().forEach(this::ask);
    event.equipment().brewers().forEach(this::ask);
  }

  private void ask(GuestGroup group) {
    Volume cup = group.cup().size();
    if (cup.compareTo(SMALL_CUP) < 0) {
      ask("cup", group.name(), display.volume(cup), display.volume(cup.times(10)));
    } else if (cup.compareTo(LARGE_CUP) > 0) {
      ask("cup", group.name(), display.volume(cup), display.volume(cup.times(0.1)));
    }
    Strength strength = group.strength();
    if (strength.compareTo(FAINT) < 0) {
      ask("strength", group.name(), display.strength(strength), times(strength, 10));
    } else if (strength.compareTo(INKY) > 0) {
      ask("strength", group.name(), display.strength(strength), times(strength, 0.1));
    }
  }

  private Figure times(Strength strength, double factor) {
    return display.strength(Strength.ofFraction(strength.fraction() * factor));
  }

  /** Of a coffee as it will be brewed. */
  void ask(Coffee coffee, BrewModel brewing) {
    coffee
        .profile()
        .reference()
        .map(ReferenceBrew::dose)
        .filter(dose -> dose.compareTo(LARGE_REFERENCE) > 0)
        .ifPresent(
            dose ->
                ask(
                    "reference",
                    coffee.name(),
                    display.mass(dose),
                    display.mass(dose.times(0.001))));
    Absorption kept = brewing.absorption();
    if (kept.compareTo(DRY_GROUNDS) < 0 || kept.compareTo(WET_GROUNDS) > 0) {
      findings.question(
          Saying.of("question.absorption")
              .with("coffee", coffee.name())
              .with("kept", display.absorption(kept)));
    }
    brewing.curve().knots().stream()
        .filter(knot -> knot.extraction().compareTo(MOST_SOLUBLE) > 0)
        .findFirst()
        .ifPresent(
            knot ->
                findings.question(
                    Saying.of("question.extraction")
                        .with("coffee", coffee.name())
                        .with("extraction", display.extraction(knot.extraction()))
                        .with("most", display.extraction(MOST_SOLUBLE))));
  }

  private void ask(Brewer brewer) {
    double ratio = brewer.greatestWater().grams() / brewer.greatestDose().grams();
    if (ratio < LEAST_WATER_PER_DOSE) {
      findings.question(
          Saying.of("question.brewer")
              .with("brewer", brewer.name())
              .with("dose", display.mass(brewer.greatestDose()))
              .with("water", display.mass(brewer.greatestWater())));
    }
    brewer
        .cycle()
        .filter(cycle -> cycle.compareTo(LONG_DRIP) > 0 && allDrips())
        .ifPresent(
            cycle ->
                findings.question(
                    Saying.of("question.cycle")
                        .with("brewer", brewer.name())
                        .with("minutes", cycle.toMinutes())));
  }

  private boolean allDrips() {
    return event.coffees().stream()
        .allMatch(coffee -> coffee.profile().method() == Method.PERCOLATION);
  }

  private void ask(String what, String whose, Figure given, Figure likely) {
    findings.question(
        Saying.of("question." + what)
            .with("whose", whose)
            .with("given", given)
            .with("likely", likely));
  }
}
