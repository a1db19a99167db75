package dev.urnwright.form;

import dev.urnwright.input.Nearest;
import dev.urnwright.input.Typed;
import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;

/** Takes what was typed out of the sheets of a form. */
final class FormReader {
  private static final String NOTES = "notes";

  private final List<FormSheet> sheets = FormSheet.all();
  private final List<Problem> problems = new ArrayList<>();
  private final Assembly event;

  private FormReader(Location place) {
    this.event = new Assembly(place);
  }

  /**
   * What was typed, and what is wrong with the sheets themselves.
   *
   * @param typed the event
   * @param problems of sheets, headings and cells
   */
  record Reading(Typed.Mapping typed, List<Problem> problems) {}

  /**
   * Reads the sheets.
   *
   * @param file they are in
   * @param grids of all sheets
   */
  static Reading read(String file, List<Grid> grids) {
    Optional<Grid> first =
        grids.stream().filter(grid -> sheetOf(grid, FormSheet.all()).isPresent()).findFirst();
    if (first.isEmpty()) {
      Problem problem =
          new Problem(
              Location.ofFile(file),
              "this workbook has no sheet '" + FormSheet.all().get(0).name() + "'",
              "expected the sheets of a workbook that 'urnwright begin' wrote");
      return new Reading(new Typed.Mapping(List.of(), Location.ofFile(file)), List.of(problem));
    }
    List<Problem> tooLong =
        grids.stream()
            .filter(grid -> grid.tooLong() && sheetOf(grid, FormSheet.all()).isPresent())
            .map(FormReader::tooLong)
            .toList();
    if (!tooLong.isEmpty()) {
      return new Reading(new Typed.Mapping(List.of(), Location.ofFile(file)), tooLong);
    }
    FormReader reader = new FormReader(first.get().place());
    List<Grid> memory = grids.stream().filter(Memory::isMemory).toList();
    memory.forEach(kept -> reader.problems.addAll(Memory.changes(kept, grids)));
    for (Grid grid : grids) {
      if (!Memory.isMemory(grid) && memory.stream().noneMatch(kept -> Memory.knows(kept, grid))) {
        reader.take(grid);
      }
    }
    return new Reading(reader.event.typed(), reader.problems);
  }

  private void take(Grid grid) {
    Optional<FormSheet> sheet = sheetOf(grid, sheets);
    if (grid.rows().isEmpty() || (sheet.isEmpty() && isNotes(grid))) {
      return;
    }
    if (sheet.isEmpty()) {
      problems.add(
          new Problem(
              grid.place(),
              "unknown sheet '" + grid.sheet().name() + "'",
              Nearest.among(grid.sheet().name(), sheets.stream().map(FormSheet::name).toList())
                  + "; begin the name of a sheet for your own notes with #"));
    } else if (sheet.get().hasRows()) {
      rows(grid, sheet.get());
    } else {
      lines(grid, sheet.get());
    }
  }

  private static Problem tooLong(Grid grid) {
    return new Problem(
        grid.place(),
        "this sheet has more rows than any event needs",
        "expected " + SheetXml.MOST_ROWS + " at most");
  }

  private static Optional<FormSheet> sheetOf(Grid grid, List<FormSheet> sheets) {
    String name = Slot.plain(grid.sheet().name());
    return sheets.stream().filter(sheet -> Slot.plain(sheet.name()).equals(name)).findFirst();
  }

  private static boolean isNotes(Grid grid) {
    String name = grid.sheet().name().strip().toLowerCase(Locale.ROOT);
    return name.equals(NOTES) || name.startsWith("#");
  }

  private void lines(Grid grid, FormSheet sheet) {
    Optional<Headings> found = Headings.ofLines(grid, problems);
    if (found.isEmpty()) {
      return;
    }
    Headings headings = found.get();
    Headings.refuseMerged(grid, headings.row(), headings.lineColumns(), problems);
    List<Slot> filled = new ArrayList<>();
    for (Map.Entry<Integer, NavigableMap<Integer, Cell>> row :
        grid.below(headings.row()).entrySet()) {
      Optional<Cell> item = Optional.ofNullable(row.getValue().get(headings.item()));
      Optional<Cell> value = Optional.ofNullable(row.getValue().get(headings.value()));
      boolean note = item.filter(cell -> cell.text().startsWith("#")).isPresent();
      if (value.isEmpty() || note) {
        continue;
      }
      Location place = grid.place(value.get());
      if (item.isEmpty()) {
        problems.add(
            new Problem(
                place, "nothing says what this value is", "expected its name in the cell before"));
        continue;
      }
      Headings.slot(grid, item.get(), sheet, problems)
          .ifPresent(slot -> line(grid, sheet, slot, item.get(), value.get(), filled));
    }
  }

  private void line(
      Grid grid, FormSheet sheet, Slot slot, Cell item, Cell value, List<Slot> filled) {
    if (filled.contains(slot)) {
      problems.add(
          new Problem(
              grid.place(item), "'" + slot.heading() + "' stands here twice", "expected once"));
      return;
    }
    filled.add(slot);
    value(grid, slot, value)
        .ifPresent(typed -> event.put(joined(sheet.path(), slot.path()), grid.place(item), typed));
  }

  private void rows(Grid grid, FormSheet sheet) {
    Optional<Headings> found = Headings.ofRows(grid, sheet, problems);
    if (found.isEmpty()) {
      return;
    }
    Headings headings = found.get();
    Headings.refuseMerged(grid, headings.row(), headings.columns().keySet(), problems);
    List<Row> rows = new ArrayList<>();
    for (NavigableMap<Integer, Cell> cells : grid.below(headings.row()).values()) {
      row(grid, headings, cells).ifPresent(rows::add);
    }
    if (!rows.isEmpty()) {
      put(sheet, rows);
    }
  }

  private Optional<Row> row(Grid grid, Headings headings, NavigableMap<Integer, Cell> cells) {
    Optional<Typed.Text> name = Optional.empty();
    Assembly entry = null;
    for (Cell cell : cells.values()) {
      Slot slot = headings.columns().get(cell.column());
      if (slot != null) {
        entry = entry == null ? new Assembly(grid.place(cell)) : entry;
        Optional<Typed> typed = value(grid, slot, cell);
        if (typed.isPresent() && slot.isName()) {
          name = Optional.of(new Typed.Text(cell.text(), grid.place(cell)));
        } else if (typed.isPresent()) {
          entry.put(slot.path(), grid.place(cell), typed.get());
        }
      }
    }
    return entry == null ? Optional.empty() : Optional.of(new Row(name, entry.typed()));
  }

  private void put(FormSheet sheet, List<Row> rows) {
    Location place = rows.get(0).typed().location();
    boolean named =
        sheet.kind() == FormSheet.Kind.NAMED_ROWS || sheet.kind() == FormSheet.Kind.NAMED_VALUES;
    if (!named) {
      event.put(
          sheet.path(),
          place,
          new Typed.Listing(rows.stream().<Typed>map(Row::typed).toList(), place));
      return;
    }
    if (rows.size() == 1 && rows.get(0).name().isEmpty() && sheet.alone().isPresent()) {
      event.put(List.of(sheet.alone().get()), place, rows.get(0).typed());
      return;
    }
    List<Typed.Entry> entries = new ArrayList<>();
    for (Row row : rows) {
      Location at = row.typed().location();
      if (row.name().isEmpty()) {
        problems.add(
            new Problem(
                at,
                "this row has no " + sheet.slots().get(0).heading(),
                "expected one " + sheet.slots().get(0).example()));
        continue;
      }
      Typed.Text name = row.name().get();
      Optional<Typed> value =
          sheet.kind() == FormSheet.Kind.NAMED_ROWS
              ? Optional.of(row.typed())
              : row.typed().at(sheet.slots().get(1).path().get(0));
      if (value.isEmpty()) {
        problems.add(
            new Problem(
                at,
                "'" + name.value() + "' stands for nothing",
                sheet.slots().get(1).value().expected()));
        continue;
      }
      entries.add(new Typed.Entry(name.value(), name.location(), value.get()));
    }
    event.put(sheet.path(), place, new Typed.Mapping(entries, place));
  }

  private Optional<Typed> value(Grid grid, Slot slot, Cell cell) {
    Location place = grid.place(cell);
    switch (cell.kind()) {
      case FORMULA ->
          problems.add(
              new Problem(place, "here stands a formula", "expected the value itself, typed"));
      case ERROR ->
          problems.add(
              new Problem(place, "here stands the error " + cell.text(), "expected a value"));
      default -> {
        return Optional.of(Inline.read(slot.shape(), cell.text(), place));
      }
    }
    return Optional.empty();
  }

  private static List<String> joined(List<String> path, List<String> rest) {
    List<String> joined = new ArrayList<>(path);
    joined.addAll(rest);
    return joined;
  }

  /**
   * One row.
   *
   * @param name in its first column, where rows have names
   * @param typed the rest
   */
  private record Row(Optional<Typed.Text> name, Typed.Mapping typed) {}
}
