package dev.urnwright.form;

import dev.urnwright.input.Shape;
import dev.urnwright.input.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One sheet of the form.
 *
 * @param name of the sheet
 * @param help what it is for
 * @param path the keys that lead to its part of the event
 * @param kind how it is filled in
 * @param alone the key for a single row without a name, where there is one
 * @param slots its lines or columns
 */
record FormSheet(
    String name,
    String help,
    List<String> path,
    Kind kind,
    Optional<String> alone,
    List<Slot> slots) {
  /** How a sheet is filled in. */
  enum Kind {
    /** A line for each value. */
    LINES,
    /** A row for each entry of a list. */
    ROWS,
    /** A row for each entry of a mapping, its name in the first column. */
    NAMED_ROWS,
    /** The same, of single values. */
    NAMED_VALUES
  }

  private static final String OWN = "My ";
  private static final String SHORT_NAME = "short name";

  /** A mapping with more values than these has a sheet of its own. */
  private static final int FEW = 3;

  /** All sheets, in the order of the event's keys. */
  static List<FormSheet> all() {
    List<Slot> event = new ArrayList<>();
    List<FormSheet> sheets = new ArrayList<>();
    Table table = Table.ofEvent();
    for (Table.Key key : table.keys()) {
      if (!isAlone(key, table)) {
        add(key, table, event, sheets);
      }
    }
    sheets.add(
        0,
        new FormSheet(
            OWN + "event",
            "what holds for the whole event",
            List.of(),
            Kind.LINES,
            Optional.empty(),
            event));
    return List.copyOf(sheets);
  }

  /** What the sheet for a key of the event is called. */
  static String nameFor(String key) {
    return OWN + Slot.heading(List.of(key));
  }

  boolean hasRows() {
    return kind != Kind.LINES;
  }

  private static void add(Table.Key key, Table table, List<Slot> event, List<FormSheet> sheets) {
    List<String> path = List.of(key.name());
    if (key.shape() instanceof Shape.NamedRows named) {
      List<Slot> slots = new ArrayList<>();
      slots.add(
          Slot.name(
              SHORT_NAME,
              "what groups call it; one coffee alone needs none",
              new Shape.Value(
                  "such as house", Optional.empty(), true, List.of(), Optional.empty())));
      slots.addAll(slots(named.table(), List.of(), true));
      Optional<String> alone = alone(named.table(), table);
      sheets.add(
          new FormSheet(
              OWN + Slot.heading(path),
              alone.isPresent() ? "one or several" : key.help(),
              path,
              Kind.NAMED_ROWS,
              alone,
              slots));
    } else if (key.shape() instanceof Shape.NamedValues named) {
      List<Slot> slots =
          List.of(
              Slot.name(
                  "name",
                  "what it is called by",
                  new Shape.Value(
                      "such as medium", Optional.empty(), true, List.of(), Optional.empty())),
              new Slot(path, singular(key.name()), true, "what it stands for", named.value()));
      sheets.add(sheet(key, path, Kind.NAMED_VALUES, Optional.empty(), slots));
    } else if (key.shape() instanceof Shape.Rows rows) {
      sheets.add(
          sheet(key, path, Kind.ROWS, Optional.empty(), slots(rows.table(), List.of(), true)));
    } else if (key.shape() instanceof Shape.Mapping mapping) {
      List<Slot> slots = slots(mapping.table(), List.of(), true);
      boolean few =
          slots.size() <= FEW
              && slots.stream().noneMatch(slot -> slot.shape() instanceof Shape.Rows);
      if (few) {
        event.addAll(slots(mapping.table(), path, key.required()));
        return;
      }
      sheets.add(
          sheet(
              key,
              path,
              Kind.LINES,
              Optional.empty(),
              slots.stream().filter(slot -> !(slot.shape() instanceof Shape.Rows)).toList()));
      for (Slot slot : slots) {
        if (slot.shape() instanceof Shape.Rows rows) {
          List<String> inner = new ArrayList<>(path);
          inner.addAll(slot.path());
          sheets.add(
              new FormSheet(
                  OWN + Slot.heading(inner),
                  slot.help(),
                  List.copyOf(inner),
                  Kind.ROWS,
                  Optional.empty(),
                  slots(rows.table(), List.of(), true)));
        }
      }
    } else {
      event.add(Slot.of(path, key.required(), key.help(), key.shape()));
    }
  }

  private static FormSheet sheet(
      Table.Key key, List<String> path, Kind kind, Optional<String> alone, List<Slot> slots) {
    return new FormSheet(OWN + Slot.heading(path), key.help(), path, kind, alone, slots);
  }

  /** The values of a mapping, those of mappings inside it too. */
  private static List<Slot> slots(Table table, List<String> prefix, boolean required) {
    List<Slot> slots = new ArrayList<>();
    for (Table.Key key : table.keys()) {
      List<String> path = new ArrayList<>(prefix);
      path.add(key.name());
      boolean needed = required && key.required();
      if (key.shape() instanceof Shape.Mapping mapping) {
        slots.addAll(slots(mapping.table(), path, needed));
      } else {
        slots.add(Slot.of(List.copyOf(path), needed, key.help(), key.shape()));
      }
    }
    return slots;
  }

  /** Whether a key holds one of what another key holds several of. */
  private static boolean isAlone(Table.Key key, Table table) {
    return key.shape() instanceof Shape.Mapping mapping
        && table.keys().stream()
            .anyMatch(other -> other.shape().equals(new Shape.NamedRows(mapping.table())));
  }

  private static Optional<String> alone(Table several, Table table) {
    return table.keys().stream()
        .filter(key -> key.shape().equals(new Shape.Mapping(several)))
        .map(Table.Key::name)
        .findFirst();
  }

  private static String singular(String name) {
    return name.endsWith("s") ? name.substring(0, name.length() - 1) : name;
  }
}
