package dev.urnwright.cli;

import dev.urnwright.day.Happened;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.UnreadableException;
import dev.urnwright.text.Paragraph;
import dev.urnwright.text.PlanText;
import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Asks for what was measured, one thing at a time. */
final class AdjustDialogue {
  private static final String KEYS =
      "Enter takes what stands in brackets. u goes back, ? shows this, q leaves without a change.";

  private final Plan plan;
  private final Console console;

  AdjustDialogue(Plan plan, Console console) {
    this.plan = plan;
    this.console = console;
  }

  /** What happened; empty when whoever was asked left, or went silent before the end. */
  Optional<Happened> ask() throws IOException {
    BufferedReader in = console.in();
    List<String> answers = new ArrayList<>();
    say(KEYS);
    while (true) {
      DayScript script = new DayScript(plan, answers);
      Optional<DayScript.Ask> ask = script.pending();
      if (ask.isEmpty()) {
        return Optional.of(script.happened());
      }
      say("");
      script.remarks().forEach(this::say);
      say(ask.get().prompt());
      console.out().print("> ");
      console.out().flush();
      String line = in.readLine();
      if (line == null) {
        say("");
        return Optional.empty();
      }
      switch (line.strip().toLowerCase(Locale.ROOT)) {
        case "q", "quit" -> {
          return Optional.empty();
        }
        case "?" -> say(KEYS + " " + ask.get().help());
        case "u", "undo" -> {
          if (answers.isEmpty()) {
            say("This is the first question.");
          } else {
            say("Taken back: " + shown(answers.remove(answers.size() - 1)));
          }
        }
        default -> take(ask.get(), line.strip(), answers);
      }
    }
  }

  private void take(DayScript.Ask ask, String line, List<String> answers) {
    try {
      say("  " + ask.echo().apply(line));
      answers.add(line);
    } catch (UnreadableException e) {
      say(e.wrong() + "; " + e.expected() + ". Again:");
    }
  }

  private static String shown(String answer) {
    return answer.isEmpty() ? "as planned" : answer;
  }

  private void say(String text) {
    if (text.isEmpty()) {
      console.out().println();
    } else {
      Paragraph.wrap(text, PlanText.COLUMNS).forEach(console.out()::println);
    }
  }
}
