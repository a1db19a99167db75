package dev.urnwright.learn;

import dev.urnwright.event.Coffee;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.JournalName;
import dev.urnwright.event.Note;
import dev.urnwright.journal.BrewEntry;
import dev.urnwright.journal.BrewEntry.Occasion;
import dev.urnwright.journal.ServiceEntry;
import dev.urnwright.quantity.Display;
import dev.urnwright.wording.Saying;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds what a journal has about an event, where the event names it, and teaches it that.
 *
 * <p>What was brewed and served on the event's day or later doesn't count. So a plan stays what it
 * is while people brew by it and write down what they weigh.
 */
public final class Teaching {
  private static final int MOST_NAMED = 5;

  private final Event event;
  private final LocalDate day;
  private final Display display;

  private Teaching(Event event, LocalDate today) {
    this.event = event;
    this.day = event.date().orElse(today);
    this.display = new Display(event.print().units(), event.equipment().scaleStep());
  }

  /**
   * The event, taught; what isn't in the journal is said in a note.
   *
   * @param today the day of an event that has none of its own
   * @param brews all batches, the oldest first
   * @param services all that groups drank, the oldest first
   */
  public static Event of(
      Event event, LocalDate today, List<BrewEntry> brews, List<ServiceEntry> services) {
    return new Teaching(event, today).taught(brews, services);
  }

  private Event taught(List<BrewEntry> brews, List<ServiceEntry> services) {
    List<Note> missing = new ArrayList<>();
    Map<String, Fit> fits = new HashMap<>();
    List<BrewEntry> earlier = brews.stream().filter(entry -> isEarlier(entry.occasion())).toList();
    for (Coffee coffee : event.coffees()) {
      coffee
          .journal()
          .flatMap(name -> fit(coffee, name, earlier, missing))
          .ifPresent(fit -> fits.put(coffee.key(), fit));
    }
    Map<String, GuestFit> guests =
        event
            .kind()
            .map(
                kind ->
                    guests(
                        kind,
                        services.stream().filter(entry -> isEarlier(entry.occasion())).toList(),
                        missing))
            .orElse(Map.of());
    Event taught = new Lessons(display).into(event, fits, guests);
    for (Note note : missing) {
      taught = taught.noting(note);
    }
    return taught;
  }

  private boolean isEarlier(Occasion occasion) {
    return occasion.date().map(date -> date.isBefore(day)).orElse(true);
  }

  private Optional<Fit> fit(
      Coffee coffee, JournalName name, List<BrewEntry> entries, List<Note> missing) {
    List<BrewEntry> alike = entries.stream().filter(entry -> isOf(entry, name)).toList();
    if (alike.isEmpty()) {
      missing.add(
          note(
              missing(
                      "journal.no-batches",
                      called(name.coffee(), name.brewer()),
                      entries.stream().map(entry -> called(entry.coffee(), entry.brewer())))
                  .with("coffee", coffee.name())));
      return Optional.empty();
    }
    Optional<Fit> fit =
        Starting.of(coffee.profile()).map(before -> new BrewFitter(display).fit(before, alike));
    fit.filter(found -> !found.teaches())
        .ifPresent(
            nothing -> {
              missing.add(note(Saying.of("journal.no-lesson").with("coffee", coffee.name())));
              missing.addAll(Lessons.odd(coffee.name(), nothing.odd()));
            });
    return fit;
  }

  private static boolean isOf(BrewEntry entry, JournalName name) {
    return entry.coffee().equalsIgnoreCase(name.coffee())
        && name.brewer()
            .map(brewer -> entry.brewer().filter(brewer::equalsIgnoreCase).isPresent())
            .orElse(true);
  }

  private static String called(String coffee, Optional<String> brewer) {
    return "'" + coffee + "'" + brewer.map(on -> " on '" + on + "'").orElse("");
  }

  /** From the groups of the same name, where there are any, else from all of that kind of event. */
  private Map<String, GuestFit> guests(
      String kind, List<ServiceEntry> entries, List<Note> missing) {
    List<ServiceEntry> alike =
        entries.stream()
            .filter(entry -> entry.kind().filter(kind::equalsIgnoreCase).isPresent())
            .toList();
    if (alike.isEmpty()) {
      missing.add(
          note(
              missing(
                  "journal.no-services",
                  kind,
                  entries.stream().flatMap(entry -> entry.kind().stream()))));
    }
    Map<String, GuestFit> fits = new HashMap<>();
    for (GuestGroup group : event.groups()) {
      List<ServiceEntry> same =
          alike.stream().filter(entry -> entry.group().equalsIgnoreCase(group.name())).toList();
      if (same.isEmpty() && !alike.isEmpty()) {
        missing.add(
            note(Saying.of("journal.no-group").with("group", group.name()).with("kind", kind)));
      }
      GuestFitter.fit(group.guests(), same.isEmpty() ? alike : same)
          .ifPresent(fit -> fits.put(group.name(), fit));
    }
    return fits;
  }

  private static Note note(Saying saying) {
    return new Note(Lessons.NOTE, saying);
  }

  private Saying missing(String key, String wanted, Stream<String> instead) {
    List<String> known = instead.distinct().sorted().limit(MOST_NAMED).toList();
    return Saying.of(key)
        .with("wanted", wanted)
        .with("day", day.toString())
        .with("others", !known.isEmpty())
        .with("known", known);
  }
}
