package dev.urnwright.scale;

import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Length;
import dev.urnwright.wording.Saying;
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
      add("trial", Saying.of("advice.trial.why"));
    } else {
      afterTrials();
    }
    add("one-thing", Saying.of("advice.one-thing.why"));
    return advice;
  }

  private void beforeTrials() {
    Optional<Duration> before = request.reference().contact();
    Optional<Recipe.Contact> after = recipe.contact();
    if (after.isEmpty()) {
      add("grind-keep", Saying.of("advice.unknown-contact"));
      return;
    }
    Duration expected = after.get().expected();
    if (before.isPresent()) {
      double longer = (double) expected.toMillis() / before.get().toMillis();
      Saying basis =
          Saying.of("advice.contact-both")
              .with("before", display.duration(before.get()))
              .with("expected", display.duration(expected))
              .with("suiting", suiting(after.get()));
      if (longer > ALIKE) {
        move(true, Saying.of("advice.longer").with("basis", basis));
      } else if (longer < 1 / ALIKE) {
        move(false, Saying.of("advice.shorter").with("basis", basis));
      } else {
        add("grind-keep", basis);
      }
      return;
    }
    Optional<Grind> grind = request.reference().grind();
    if (grind.isPresent() && !grind.get().suits(expected)) {
      move(
          expected.compareTo(grind.get().most()) > 0,
          Saying.of("advice.grind-unsuited")
              .with("expected", display.duration(expected))
              .with("grind", Saying.of("grind." + grind.get().word()))
              .with("least", display.duration(grind.get().least()))
              .with("most", display.duration(grind.get().most())));
    } else {
      add(
          "grind-keep",
          Saying.of("advice.contact")
              .with("expected", display.duration(expected))
              .with("suiting", suiting(after.get())));
    }
  }

  private Saying suiting(Recipe.Contact contact) {
    return contact
        .grind()
        .map(
            grind ->
                Saying.of("advice.suiting")
                    .with("grind", Saying.of("grind." + grind.word()))
                    .with("least", display.duration(grind.least()))
                    .with("most", display.duration(grind.most())))
        .orElse(Saying.of("advice.suiting-none"));
  }

  /** Flow first where it can be set, for it leaves the grounds as they are. */
  private void move(boolean lessContact, Saying basis) {
    if (request.target().flowPerMinute().isPresent()) {
      add(lessContact ? "flow-up" : "flow-down", basis);
    } else {
      add(lessContact ? "grind-coarser" : "grind-finer", basis);
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
          Saying.of("advice.other-shape.why")
              .with("was", display.length(was))
              .with("is", display.length(is)));
      return;
    }
    Saying depths =
        Saying.of("advice.depths").with("is", display.length(is)).with("was", display.length(was));
    if (is.millimetres() > was.millimetres() * ALIKE) {
      add("deeper", Saying.of("advice.deeper.why").with("depths", depths));
    } else if (is.millimetres() * ALIKE < was.millimetres()) {
      add("thinner", Saying.of("advice.thinner.why").with("depths", depths));
    }
  }

  private void afterTrials() {
    ScaleRequest.Trial last = request.trials().get(request.trials().size() - 1);
    Extraction got = brewings.extraction(last.brew(), brewings.carried().absorption());
    Extraction wanted = brewings.carried().curve().at(Brewings.ratio(request.reference().brew()));
    double points = got.percent() - wanted.percent();
    Saying basis =
        Saying.of("advice.trial-extracted")
            .with("got", display.extraction(got))
            .with("wanted", display.extraction(wanted));
    if (points > SURE_POINTS) {
      move(true, basis);
    } else if (points < -SURE_POINTS) {
      move(false, basis);
    } else {
      advice.add(new Scaled.Advice("grind-keep", Saying.of("advice.keep-all"), basis));
    }
  }

  private void add(String code, Saying why) {
    advice.add(new Scaled.Advice(code, Saying.of("advice." + code), why));
  }
}
