package dev.urnwright.cli;

import dev.urnwright.brew.Readings;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.day.Happened;
import dev.urnwright.day.Happened.Standing;
import dev.urnwright.day.Verdict;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.UnreadableException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The questions of {@link AdjustDialogue}, replayed over the answers so far: what they come to, and
 * what is to be asked next. Going back is leaving out the last answer.
 */
final class DayScript {
  private static final String NONE = "-";

  private final Plan plan;
  private final Spoken spoken;
  private final Display display;
  private final Deque<String> answers;
  private final Map<String, WeighedBatch> weighed = new LinkedHashMap<>();
  private final Set<String> gone = new LinkedHashSet<>();
  private final List<Standing> standing = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();
  private Optional<Ask> pending = Optional.empty();

  /**
   * One question.
   *
   * @param prompt what to ask
   * @param help more about it
   * @param echo the answer as it was understood, or {@link UnreadableException}
   */
  record Ask(String prompt, String help, Function<String, String> echo) {}

  DayScript(Plan plan, List<String> answers) {
    this.plan = plan;
    this.spoken = new Spoken(plan.event().print().units());
    this.display = new Display(plan.event().print().units(), plan.event().equipment().scaleStep());
    this.answers = new ArrayDeque<>(answers);
    replay();
  }

  /** What is asked next; empty when all is answered. */
  Optional<Ask> pending() {
    return pending;
  }

  /** What to say before that. */
  List<String> remarks() {
    return List.copyOf(remarks);
  }

  Happened happened() {
    return new Happened(weighed, gone, standing);
  }

  private void replay() {
    boolean more = true;
    while (more) {
      Optional<Batch> batch = askBatch();
      if (batch.isEmpty() || !askWeights(batch.get())) {
        return;
      }
      Optional<String> again =
          answer("Another batch? [no]", "y for yes", text -> isYes(text) ? "yes" : "no");
      if (again.isEmpty()) {
        return;
      }
      more = isYes(again.get());
    }
    askGone();
  }

  private Optional<Batch> askBatch() {
    List<Batch> open =
        plan.batches().stream().filter(batch -> !weighed.containsKey(batch.id())).toList();
    if (open.isEmpty()) {
      return Optional.empty();
    }
    String first = open.get(0).id();
    return answer(
            "Which batch was measured? [" + first + "]",
            "The plan has " + String.join(", ", open.stream().map(Batch::id).toList()) + ".",
            text -> batch(open, text).id())
        .map(text -> batch(open, text));
  }

  private static Batch batch(List<Batch> open, String text) {
    return text.isEmpty()
        ? open.get(0)
        : open.stream()
            .filter(batch -> batch.id().equalsIgnoreCase(text))
            .findFirst()
            .orElseThrow(
                () ->
                    new UnreadableException(
                        "there is no batch '" + text + "' left to measure",
                        "expected one of "
                            + String.join(", ", open.stream().map(Batch::id).toList())));
  }

  /** Whether all about a batch is answered. */
  private boolean askWeights(Batch batch) {
    Optional<Mass> dose = askMass("Dose, ground coffee", batch.brew().dose());
    Optional<Mass> water = dose.flatMap(known -> askMass("Brew water", batch.brew().water()));
    if (dose.isEmpty() || water.isEmpty()) {
      return false;
    }
    Mass most = dose.get().plus(water.get());
    Optional<String> beverage =
        answer(
            "Beverage, weighed? [not weighed; planned "
                + display.mass(batch.brew().beverage())
                + "]",
            "All that left the grounds, without its vessel. It is never the brew water.",
            text -> isNone(text) ? "not weighed" : display.mass(lessThan(text, most)).toString());
    if (beverage.isEmpty()) {
      return false;
    }
    Optional<Readings> readings = askReadings();
    readings.ifPresent(
        read ->
            weighed.put(
                batch.id(),
                new WeighedBatch(
                    dose.get(),
                    water.get(),
                    isNone(beverage.get())
                        ? Optional.empty()
                        : Optional.of(spoken.mass(beverage.get())),
                    read)));
    return readings.isPresent();
  }

  private Mass lessThan(String text, Mass most) {
    Mass mass = spoken.mass(text);
    if (mass.compareTo(most) > 0) {
      throw new UnreadableException(
          display.mass(mass) + " is more than went in", "expected less than " + display.mass(most));
    }
    return mass;
  }

  private Optional<Mass> askMass(String what, Mass planned) {
    return answer(
            what + "? [" + display.mass(planned) + "]",
            "A bare number is in grams, or in ounces with US units.",
            text -> display.mass(text.isEmpty() ? planned : spoken.mass(text)).toString())
        .map(text -> text.isEmpty() ? planned : spoken.mass(text));
  }

  private Optional<Readings> askReadings() {
    Readings readings = Readings.NONE;
    while (!readings.stand()) {
      remarks.clear();
      if (readings.taken().size() >= Readings.AGREEING) {
        remarks.addAll(Verdict.of(readings).remarks());
      }
      String none = readings.taken().isEmpty() ? " [not read]" : "";
      Optional<String> answer =
          answer(
              "Reading " + (readings.taken().size() + 1) + " of the concentrate, in %?" + none,
              "Stir, sample, let it come to room temperature, read. Three in a row must agree"
                  + " within 0.01 %. A dash ends without a reading.",
              text ->
                  isNone(text) ? "no reading" : display.strength(spoken.strength(text)).toString());
      if (answer.isEmpty()) {
        return Optional.empty();
      }
      if (isNone(answer.get())) {
        remarks.clear();
        return Optional.of(Readings.NONE);
      }
      readings = readings.and(spoken.reading(answer.get(), Optional.empty()));
    }
    remarks.clear();
    return Optional.of(readings);
  }

  private void askGone() {
    Optional<String> filled =
        answer(
            "Dispensers filled already, that stay as they are? [none]",
            "Their names, such as "
                + plan.fills().get(0).id()
                + ", with blanks between. They are left out of what follows.",
            text -> text.isEmpty() ? "none" : String.join(", ", fills(text)));
    if (filled.isEmpty()) {
      return;
    }
    gone.addAll(fills(filled.get()));
    while (true) {
      Optional<String> holds =
          answer(
              "A dispenser diluted already, to put right? [none]",
              "Such as " + plan.fills().get(0).id() + " 2010 g at 1.50 %.",
              text -> text.isEmpty() ? "none" : shown(holding(text)));
      if (holds.isEmpty() || holds.get().isEmpty()) {
        return;
      }
      standing.add(holding(holds.get()));
    }
  }

  private Standing holding(String text) {
    Standing holding = Holding.read(text, spoken);
    return new Standing(fills(holding.fillId()).get(0), holding.holds(), holding.strength());
  }

  private String shown(Standing holding) {
    return holding.fillId()
        + ": "
        + display.mass(holding.holds())
        + holding.strength().map(strength -> " at " + display.strength(strength)).orElse("");
  }

  private List<String> fills(String text) {
    return Arrays.stream(text.strip().split("[\\s,]+"))
        .filter(name -> !name.isEmpty())
        .map(
            name ->
                plan.fills().stream()
                    .map(Fill::id)
                    .filter(id -> id.equalsIgnoreCase(name))
                    .findFirst()
                    .orElseThrow(
                        () ->
                            new UnreadableException(
                                "there is no fill '" + name + "'",
                                "expected such as " + plan.fills().get(0).id())))
        .toList();
  }

  /** The next answer; empty, and the question pending, when there is none yet. */
  private Optional<String> answer(String prompt, String help, Function<String, String> echo) {
    if (!answers.isEmpty()) {
      return Optional.of(answers.remove());
    }
    pending = Optional.of(new Ask(prompt, help, echo));
    return Optional.empty();
  }

  private static boolean isNone(String text) {
    return text.isEmpty() || text.equals(NONE);
  }

  private static boolean isYes(String text) {
    return text.equalsIgnoreCase("y") || text.equalsIgnoreCase("yes");
  }
}
