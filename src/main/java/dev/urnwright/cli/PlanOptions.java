package dev.urnwright.cli;

import dev.urnwright.brew.Readings;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnreadableException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/**
 * Reads options that name parts of a plan or tell amounts; what isn't understood is misuse of the
 * command.
 *
 * @param command whose options
 * @param plan what they are about
 */
record PlanOptions(CommandLine command, Plan plan) {
  private static final int MOST_NAMED = 12;

  Mass mass(String text) {
    return understood(() -> spoken().mass(text));
  }

  Strength strength(String text) {
    return understood(() -> spoken().strength(text));
  }

  /** Readings that agree on one strength. */
  Readings agreed(String text) {
    return new Readings(
        Stream.generate(() -> spoken().reading(text, Optional.empty()))
            .limit(Readings.AGREEING)
            .toList());
  }

  Fill fill(String id) {
    return known(id, plan.fills(), Fill::id, "fill");
  }

  CoffeePlan coffee(String key) {
    return known(key, plan.coffees(), each -> each.coffee().key(), "coffee");
  }

  /** The one with that id. */
  <T> T known(String id, List<T> all, Function<T, String> idOf, String what) {
    return all.stream()
        .filter(each -> idOf.apply(each).equalsIgnoreCase(id))
        .findFirst()
        .orElseThrow(
            () ->
                misuse(
                    "no "
                        + what
                        + " is called '"
                        + id
                        + "'; the plan has "
                        + String.join(", ", all.stream().map(idOf).limit(MOST_NAMED).toList())
                        + (all.size() > MOST_NAMED ? " …" : "")));
  }

  /** The value, when it can be made. */
  <T> T understood(Supplier<T> value) {
    try {
      return value.get();
    } catch (UnreadableException e) {
      throw misuse(e.wrong() + "; " + e.expected());
    } catch (IllegalArgumentException e) {
      throw misuse(String.valueOf(e.getMessage()));
    }
  }

  ParameterException misuse(String message) {
    return new ParameterException(command, message);
  }

  private Spoken spoken() {
    return new Spoken(plan.event().print().units());
  }
}
