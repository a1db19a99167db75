package dev.urnwright.learn;

import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.Measured;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.GuestGroup.Guests;
import dev.urnwright.event.Learned;
import dev.urnwright.event.Note;
import dev.urnwright.event.Taught;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Share;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Puts what was learned into an event, and says by how much it moved. */
public final class Lessons {
  /** The code of the notes. */
  public static final String NOTE = "journal";

  /** Somebody drinks something, or nothing could be planned. */
  private static final double LEAST = 0.001;

  private static final double MOST_EACH = 50;

  private final Display display;

  /** Lessons whose notes are written so. */
  public Lessons(Display display) {
    this.display = display;
  }

  /**
   * The event with what was learned in place of what the file says.
   *
   * @param fits by the coffees' keys; a coffee without one, or whose fit teaches nothing, stays
   * @param guests by the groups' names; a group without one stays
   */
  public Event into(Event event, Map<String, Fit> fits, Map<String, GuestFit> guests) {
    List<Coffee> coffees = new ArrayList<>();
    List<GuestGroup> groups = new ArrayList<>();
    List<Note> notes = new ArrayList<>();
    List<Taught.Brewing> brewing = new ArrayList<>();
    List<Taught.Drinking> drinking = new ArrayList<>();
    for (Coffee coffee : event.coffees()) {
      Optional<Fit> fit = Optional.ofNullable(fits.get(coffee.key())).filter(Fit::teaches);
      coffees.add(fit.map(learned -> with(coffee, learned)).orElse(coffee));
      fit.ifPresent(learned -> notes.addAll(notes(coffee.name(), learned)));
      fit.ifPresent(learned -> brewing.add(brewing(coffee, learned)));
    }
    for (GuestGroup group : event.groups()) {
      Optional<GuestFit> fit = Optional.ofNullable(guests.get(group.name()));
      groups.add(fit.map(learned -> group.with(with(group.guests(), learned))).orElse(group));
      fit.ifPresent(learned -> notes.addAll(notes(group, learned)));
      fit.ifPresent(
          learned ->
              drinking.add(
                  new Taught.Drinking(group.name(), learned.cupsPerGuest(), learned.drinkers())));
    }
    return event.taught(coffees, groups, notes, new Taught(brewing, drinking));
  }

  private static Taught.Brewing brewing(Coffee coffee, Fit fit) {
    return new Taught.Brewing(
        coffee.key(),
        fit.absorption(),
        fit.extraction().stream()
            .filter(Fit.Point::brewed)
            .map(point -> new Taught.Extracted(point.ratio(), point.extraction()))
            .toList());
  }

  /** The share that was learned, and as many cups for each drinker as make the cups learned. */
  private static Guests with(Guests before, GuestFit fit) {
    double drinkers = Math.max(LEAST, fit.drinkers().value().fraction());
    double each = fit.cupsPerGuest().value() / drinkers;
    return new Guests(
        before.headcount(), Share.ofFraction(drinkers), Math.max(LEAST, Math.min(MOST_EACH, each)));
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
    notes.addAll(odd(coffee, fit.odd()));
    return notes;
  }

  private List<Note> notes(GuestGroup group, GuestFit fit) {
    List<Note> notes = new ArrayList<>();
    notes.add(note(group.name(), cups(group.guests(), fit)));
    notes.addAll(odd(group.name(), fit.odd()));
    return notes;
  }

  private static Note note(String whose, Saying learned) {
    return new Note(NOTE, Saying.of("journal.of").with("coffee", whose).with("learned", learned));
  }

  /** A note of each entry unlike the rest. */
  static List<Note> odd(String whose, List<Oddity> entries) {
    return entries.stream()
        .map(
            odd ->
                new Note(
                    NOTE,
                    Saying.of("journal.odd")
                        .with("coffee", whose)
                        .with("entry", odd.name())
                        .with("reason", odd.why())
                        .with("leftOut", !odd.counted())))
        .toList();
  }

  private Saying absorption(Learned<Absorption> kept) {
    return moved("journal.absorption", kept, display::absorption);
  }

  private Saying extraction(BrewRatio ratio, Learned<Extraction> extraction) {
    return moved("journal.extraction", extraction, display::extraction)
        .with("ratio", Figure.bare(display.ratio(ratio)));
  }

  private Saying cups(Guests before, GuestFit fit) {
    Learned<Double> rate = fit.cupsPerGuest();
    Guests now = with(before, fit);
    return moved("journal.cups", rate, display::cupsEach)
        .with("cupsBefore", Math.round(before.headcount() * rate.before()))
        .with("cupsNow", Math.round(before.headcount() * rate.value()))
        .with("drinkersBefore", display.share(before.drinkers()))
        .with("drinkersNow", display.share(now.drinkers()))
        .with("eachBefore", display.cupsEach(before.cupsEach()))
        .with("eachNow", display.cupsEach(now.cupsEach()));
  }

  private static <T> Saying moved(String key, Learned<T> learned, Function<T, Figure> shown) {
    return Saying.of(key)
        .with("entries", learned.entries())
        .with("before", shown.apply(learned.before()))
        .with("now", shown.apply(learned.value()))
        .with("low", shown.apply(learned.low()))
        .with("high", shown.apply(learned.high()));
  }
}
