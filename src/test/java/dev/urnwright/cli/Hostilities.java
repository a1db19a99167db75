package dev.urnwright.cli;

import dev.urnwright.cli.Fuzz.Hostile;
import java.util.Map;
import java.util.function.Supplier;

/** What {@link Fuzz} can try. */
final class Hostilities {
  private static final Map<String, Supplier<Hostile>> BY_NAME =
      Map.of(
          "events",
          HostileEvents::new,
          "workbooks",
          HostileWorkbooks::new,
          "journals",
          HostileJournals::new,
          "commands",
          HostileCommands::new,
          "templates",
          HostileTemplates::new,
          "rounds",
          HostileRounds::new);

  private Hostilities() {}

  /** One of events, workbooks, journals, commands, templates, rounds. */
  static Hostile called(String name) {
    Supplier<Hostile> hostile = BY_NAME.get(name);
    if (hostile == null) {
      throw new IllegalArgumentException(name + " is none of " + BY_NAME.keySet());
    }
    return hostile.get();
  }
}
