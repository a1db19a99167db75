package dev.urnwright.learn;

import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.Measured;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.Event;
import dev.urnwright.event.Note;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Figure;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts what was learned into an event, and says by how much it moved. */
public final class Lessons {
  /** The code of the notes. */
  public static final String NOTE = "journal";

  private final Display display;

  /** Lessons whose notes are written so. */
  public Lessons(Display display) {
    this.display = display;
  }

  /**
   * The event with the fits' brewing in place of the file's.
   *
   * @param fits by the coffees' keys; a coffee without one, or whose fit teaches nothing, stays
   */
  public Event into(Event event, Map<String, Fit> fits) {
    List<Coffee> coffees = new ArrayList<>();
    List<Note> notes = new ArrayList<>();
    for (Coffee coffee : event.coffees()) {
      Optional<Fit> fit = Optional.ofNullable(fits.get(coffee.key())).filter(Fit::teaches);
      coffees.add(fit.map(learned -> with(coffee, learned)).orElse(coffee));
      fit.ifPresent(learned -> notes.addAll(notes(coffee.name(), learned)));
    }
    return event.with(coffees, notes);
  }

  private static Coffee with(Coffee coffee, Fit fit) {
    BrewProfile before = coffee.profile();
    BrewProfile now =
        new BrewProfile(
            before.method(),
            before.reference(),
            fit.extraction().isEmpty() ? before.extraction() : Optional.empty(),
            fit.absorption().map(Learned::value).or(before::absorption),
            fit.extraction().isEmpty()
                ? before.measured()
                : fit.extraction().stream()
                    .map(point -> new Measured(point.ratio(), point.extraction().value()))
                    .toList(),
            before.steamLoss());
    return coffee.with(now);
  }

  private List<Note> notes(String coffee, Fit fit) {
    List<Note> notes = new ArrayList<>();
    fit.absorption().ifPresent(kept -> notes.add(note(coffee, absorption(kept))));
    fit.extraction().stream()
        .filter(Fit.Point::brewed)
        .forEach(point -> notes.add(note(coffee, extraction(point.ratio(), point.extraction()))));
    fit.odd()
        .forEach(
            odd ->
                notes.add(
                    new Note(
                        NOTE,
                        Saying.of("journal.odd")
                            .with("coffee", coffee)
                            .with("entry", odd.name())
                            .with("reason", odd.reason())
                            .with("leftOut", !odd.counted()))));
    return notes;
  }

  private static Note note(String coffee, Saying learned) {
    return new Note(NOTE, Saying.of("journal.of").with("coffee", coffee).with("learned", learned));
  }

  /**
   * Such as: of 7 batches the grounds keep 2.18 g/g (2.10 g/g to 2.26 g/g), 0.08 g/g more than …
   */
  public Saying absorption(Learned<Absorption> kept) {
    double moved = kept.value().gramsPerGram() - kept.before().gramsPerGram();
    return Saying.of("journal.absorption")
        .with("batches", kept.entries())
        .with("kept", display.absorption(kept.value()))
        .with("low", display.absorption(kept.low()))
        .with("high", display.absorption(kept.high()))
        .with("moved", display.absorption(Absorption.ofGramsPerGram(Math.abs(moved))))
        .with("less", moved < 0);
  }

  /** The same of the extraction at a ratio. */
  public Saying extraction(BrewRatio ratio, Learned<Extraction> extraction) {
    double moved = extraction.value().fraction() - extraction.before().fraction();
    return Saying.of("journal.extraction")
        .with("batches", extraction.entries())
        .with("ratio", Figure.bare(display.ratio(ratio)))
        .with("extraction", display.extraction(extraction.value()))
        .with("low", display.extraction(extraction.low()))
        .with("high", display.extraction(extraction.high()))
        .with("moved", display.extraction(Extraction.ofFraction(Math.abs(moved))))
        .with("less", moved < 0);
  }
}
