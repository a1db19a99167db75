package dev.urnwright.plan;

import dev.urnwright.event.Coffee;
import dev.urnwright.event.Event;
import dev.urnwright.event.Note;
import dev.urnwright.event.Taught;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Display;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.List;

/** What comes to light while planning: problems, cautions and notes, in the user's units. */
final class Findings {
  private final Event event;
  private final Display display;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Note> cautions = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();

  private Findings(Findings other) {
    this.event = other.event;
    this.display = other.display;
    problems.addAll(other.problems);
    cautions.addAll(other.cautions);
    notes.addAll(other.notes);
  }

  Findings(Event event) {
    this.event = event;
    this.display = new Display(event.print().units(), event.equipment().scaleStep());
    notes.addAll(event.defaults());
  }

  /** The same so far, to go on with apart from these. */
  Findings copy() {
    return new Findings(this);
  }

  Display display() {
    return display;
  }

  /** Whether what a coffee's grounds keep was learned, and not given with the event. */
  boolean learnedAbsorption(Coffee coffee) {
    return event.taught().of(coffee).flatMap(Taught.Brewing::absorption).isPresent();
  }

  void refuse(Problem problem) {
    problems.add(problem);
  }

  void caution(String code, Saying saying) {
    cautions.add(new Note(code, saying));
  }

  /** Asks about what was hardly meant. */
  void question(Saying saying) {
    caution(Note.QUESTION, saying);
  }

  void note(String code, Saying saying) {
    notes.add(new Note(code, saying));
  }

  List<Problem> problems() {
    return problems;
  }

  List<Note> cautions() {
    return cautions;
  }

  List<Note> notes() {
    return notes;
  }
}
