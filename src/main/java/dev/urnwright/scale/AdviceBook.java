package dev.urnwright.scale;

import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Length;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What to change first, and in which direction. Nobody can calculate a grind, so it is a direction
 * and what it rests on, never an amount.
 */
final class AdviceBook {
  /** Contact times closer together than this are taken for alike. */
  private static final double ALIKE = 1.15;

  /** An extraction read with a good refractometer is no surer than half a point. */
  private static final double SURE_POINTS = 0.5;

  private final ScaleRequest request;
  private final Brewings brewings;
  private final Recipe recipe;
  private final Display display;
  private final List<Scaled.Advice> advice = new ArrayList<>();

  AdviceBook(ScaleRequest request, Brewings brewings, Recipe recipe, Display display) {
    this.request = request;
    this.brewings = brewings;
    this.recipe = recipe;
    this.display = display;
  }

  List<Scaled.Advice> advice() {
    if (request.trials().isEmpty()) {
      beforeTrials();
      depth();
      add(
          "trial",
          "Brew it once as it stands, weigh the beverage, read the strength three times, and enter"
              + " both under 'trials'.",
          "What grounds keep and give on this brewer is the one thing that the reference can't"
              + " tell.");
    } else {
      afterTrials();
    }
    add(
        "one-thing",
        "Change one thing at a time: flow or grind first, then the dose.",
        "Two changes at once hide which of them helped.");
    return advice;
  }

  private void beforeTrials() {
    Optional<Duration> before = request.reference().contact();
    Optional<Recipe.Contact> after = recipe.contact();
    if (after.isEmpty()) {
      add(
          "grind-keep",
          "Keep the grind for the first trial.",
          "Neither a cycle nor a flow is given, so how long water will touch the coffee isn't"
              + " known.");
      return;
    }
    Duration expected = after.get().expected();
    if (before.isPresent()) {
      double longer = (double) expected.toMillis() / before.get().toMillis();
      String basis =
          "Water touched the reference for "
              + display.duration(before.get())
              + " and is expected to touch this for about "
              + display.duration(expected)
              + suiting(after.get());
      if (longer > ALIKE) {
        move(true, basis + " Longer contact extracts more; coarser grounds give less.");
      } else if (longer < 1 / ALIKE) {
        move(false, basis + " Shorter contact extracts less; finer grounds give more.");
      } else {
        add("grind-keep", "Keep the grind for the first trial.", basis);
      }
      return;
    }
    Optional<Grind> grind = request.reference().grind();
    if (grind.isPresent() && !grind.get().suits(expected)) {
      move(
          expected.compareTo(grind.get().most()) > 0,
          "About "
              + display.duration(expected)
              + " are expected, and a "
              + grind.get().word()
              + " grind goes with "
              + range(grind.get())
              + " (Golden Cup standard, 2015).");
    } else {
      add(
          "grind-keep",
          "Keep the grind for the first trial.",
          "Water is expected to touch the coffee for about "
              + display.duration(expected)
              + suiting(after.get()));
    }
  }

  private String suiting(Recipe.Contact contact) {
    return contact
        .grind()
        .map(
            grind ->
                ", with which a "
                    + grind.word()
                    + " grind goes ("
                    + range(grind)
                    + ", Golden Cup standard, 2015).")
        .orElse(", for which the published guide (1 to 8 min) has no grind.");
  }

  private String range(Grind grind) {
    return display.duration(grind.least()) + " to " + display.duration(grind.most());
  }

  /** Flow first where it can be set, for it leaves the grounds as they are. */
  private void move(boolean lessContact, String basis) {
    if (request.target().flowPerMinute().isPresent()) {
      add(
          lessContact ? "flow-up" : "flow-down",
          (lessContact ? "Raise the flow first" : "Lower the flow first")
              + (lessContact ? ", or pause less" : ", or pause more")
              + " between pours; only then "
              + (lessContact ? "grind coarser." : "grind finer."),
          basis);
    } else {
      add(
          lessContact ? "grind-coarser" : "grind-finer",
          lessContact ? "Grind coarser first." : "Grind finer first.",
          basis);
    }
  }

  private void depth() {
    Optional<Basket> before = request.reference().basket();
    if (before.isEmpty() || recipe.bed().isEmpty()) {
      return;
    }
    Length was =
        before
            .get()
            .depthOf(request.reference().brew().dose(), request.brewing().bulkGramsPerMillilitre());
    Length is = recipe.bed().get().depth();
    boolean sameShape = before.get().shape() == request.target().basket().orElseThrow().shape();
    if (!sameShape) {
      add(
          "other-shape",
          "Taste it before trusting the numbers.",
          "A flat bed and a cone pass water differently, so their depths ("
              + display.length(was)
              + " and "
              + display.length(is)
              + ") tell little of each other.");
      return;
    }
    String depths =
        "The bed is "
            + display.length(is)
            + " deep, where the reference's was "
            + display.length(was)
            + ".";
    if (is.millimetres() > was.millimetres() * ALIKE) {
      add(
          "deeper",
          "If it drains more slowly than expected, grind coarser.",
          depths + " Through a deeper bed of the same grounds water flows more slowly (Darcy).");
    } else if (is.millimetres() * ALIKE < was.millimetres()) {
      add(
          "thinner",
          "If it drains faster than expected, grind finer; see that the spray wets the whole bed.",
          depths + " Through a thinner bed of the same grounds water flows faster (Darcy).");
    }
  }

  private void afterTrials() {
    ScaleRequest.Trial last = request.trials().get(request.trials().size() - 1);
    Extraction got = brewings.extraction(last.brew(), brewings.carried().absorption());
    Extraction wanted = brewings.carried().curve().at(Brewings.ratio(request.reference().brew()));
    double points = got.percent() - wanted.percent();
    String basis =
        "The last trial extracted "
            + display.extraction(got)
            + ", the reference "
            + display.extraction(wanted)
            + "; a reading is no surer than half a point.";
    if (points > SURE_POINTS) {
      move(true, basis);
    } else if (points < -SURE_POINTS) {
      move(false, basis);
    } else {
      add("grind-keep", "Keep grind and flow; the dose and water above set the strength.", basis);
    }
  }

  private void add(String code, String text, String basis) {
    advice.add(new Scaled.Advice(code, text, basis));
  }
}
