package dev.urnwright.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.input.EventFile;
import dev.urnwright.input.EventText;
import dev.urnwright.input.GrammarEvents;
import dev.urnwright.input.Shape;
import dev.urnwright.input.Table;
import dev.urnwright.input.Typed;
import dev.urnwright.problem.Location;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** A text becomes a workbook and a text again, and says the same all the way. */
class ConversionTest {
  private static final Location NOWHERE = Location.ofFile("");

  @TempDir private Path folder;

  @ParameterizedTest
  @FieldSource("dev.urnwright.form.Forms#FILES")
  void keepsWhatWeShip(String name) throws IOException {
    EventFile text = Forms.text(Path.of(name));
    EventFile workbook = throughAWorkbook(text.typed());
    assertEquals(placeless(text.event()), placeless(workbook.event()));
    Path again = Files.writeString(folder.resolve("again.yaml"), EventText.of(workbook.typed()));
    assertEquals(placeless(text.event()), placeless(Forms.text(again).event()));
  }

  /** Whatever the reader's tables have room for, sense or nonsense, comes back as it was typed. */
  @Test
  void losesNothingOfWhatever() throws IOException {
    int values = 0;
    for (long seed = 1; seed <= 80; seed++) {
      Optional<Typed> any = EventText.parse(GrammarEvents.of(seed), NOWHERE);
      if (any.isEmpty()) {
        continue;
      }
      Typed.Mapping typed = (Typed.Mapping) fitting(any.get(), new Shape.Mapping(Table.ofEvent()));
      Map<String, String> before = flat(typed);
      Map<String, String> after = flat(throughSheets(typed));
      assertEquals(before, after, "seed " + seed);
      Map<String, String> text = flat(EventText.parse(EventText.of(typed), NOWHERE).orElseThrow());
      assertEquals(before, text, "as a text, seed " + seed);
      values += before.size();
    }
    assertTrue(values > 1000, "only " + values + " values");
  }

  @Test
  void oneCoffeeOfWhichNothingIsKnownIsStillThere() throws IOException {
    String text = Forms.SMALL.replace("{name: House}", "{}");
    EventFile plain = Forms.text(Files.writeString(folder.resolve("e.yaml"), text));
    assertEquals(placeless(plain.event()), placeless(throughAWorkbook(plain.typed()).event()));
  }

  @Test
  void severalValuesStandInACellAsPeopleWriteThem() {
    Shape rows =
        FormSheet.all().stream()
            .flatMap(sheet -> sheet.slots().stream())
            .filter(slot -> slot.heading().equals("measured"))
            .findFirst()
            .orElseThrow()
            .shape();
    Typed typed =
        EventText.parse(
                "[{ratio: 13, extraction: 18.9 %}, {ratio: 17, extraction: 19.8 %}]", NOWHERE)
            .orElseThrow();
    String cell = "ratio 13, extraction 18.9 %; ratio 17, extraction 19.8 %";
    assertEquals(cell, Inline.write(rows, typed));
    assertTrue(Inline.same(typed, Inline.read(rows, cell, NOWHERE)));
  }

  private EventFile throughAWorkbook(Typed.Mapping typed) throws IOException {
    Path file = folder.resolve("through.xlsx");
    try (OutputStream out = Files.newOutputStream(file)) {
      EventWorkbook.write(typed, out);
    }
    var checked = EventWorkbook.open(file);
    assertEquals(List.of(), checked.problems());
    return checked.value().orElseThrow();
  }

  private Typed.Mapping throughSheets(Typed.Mapping typed) throws IOException {
    Path file = folder.resolve("any.xlsx");
    try (OutputStream out = Files.newOutputStream(file)) {
      EventWorkbook.write(typed, out);
    }
    try {
      FormReader.Reading reading = FormReader.read(file.toString(), Source.grids(file));
      assertEquals(List.of(), reading.problems());
      return reading.typed();
    } catch (Archive.RefusedException refused) {
      throw new AssertionError(refused);
    }
  }

  /** An event without the places where things were typed. */
  private static String placeless(Event event) {
    return event.toString().replaceAll("location=[^,\\]]*", "");
  }

  /** All single values by where they stand; what holds none doesn't count. */
  private static Map<String, String> flat(Typed typed) {
    Map<String, String> flat = new TreeMap<>();
    flatten(typed, "", flat);
    return flat;
  }

  private static void flatten(Typed typed, String path, Map<String, String> flat) {
    if (typed instanceof Typed.Listing listing) {
      for (int i = 0; i < listing.parts().size(); i++) {
        flatten(listing.parts().get(i), path + "[" + i + "]", flat);
      }
    } else if (typed instanceof Typed.Mapping mapping) {
      mapping.entries().forEach(entry -> flatten(entry.value(), path + "." + entry.key(), flat));
    } else {
      flat.put(path, ((Typed.Text) typed).value());
    }
  }

  /** What of an event stands where the tables have room for it. */
  private static Typed fitting(Typed typed, Shape shape) {
    List<Typed.Entry> entries = new ArrayList<>();
    if (shape instanceof Shape.Mapping mapping && typed instanceof Typed.Mapping typedMap) {
      for (Table.Key key : mapping.table().keys()) {
        typedMap
            .at(key.name())
            .map(value -> fitting(value, key.shape()))
            .filter(value -> !flat(value).isEmpty())
            .ifPresent(value -> entries.add(new Typed.Entry(key.name(), NOWHERE, value)));
      }
      boolean both = entries.stream().anyMatch(entry -> entry.key().equals("coffees"));
      entries.removeIf(entry -> both && entry.key().equals("coffee"));
      return new Typed.Mapping(entries, NOWHERE);
    }
    if (shape instanceof Shape.Rows rows && typed instanceof Typed.Listing listing) {
      return new Typed.Listing(
          listing.parts().stream()
              .map(part -> fitting(part, new Shape.Mapping(rows.table())))
              .filter(part -> !flat(part).isEmpty())
              .toList(),
          NOWHERE);
    }
    if (shape instanceof Shape.NamedRows rows && typed instanceof Typed.Mapping named) {
      named
          .entries()
          .forEach(
              entry ->
                  entries.add(
                      new Typed.Entry(
                          entry.key(),
                          NOWHERE,
                          fitting(entry.value(), new Shape.Mapping(rows.table())))));
      return new Typed.Mapping(entries, NOWHERE);
    }
    boolean printable =
        typed instanceof Typed.Text text
            && !text.value().isBlank()
            && text.value().strip().equals(text.value())
            && !text.value().matches("(?s).*[\\p{Cc}\\x{FFFE}\\x{FFFF}].*")
            && (shape instanceof Shape.Value
                || shape instanceof Shape.Shares
                || shape instanceof Shape.Parts);
    return printable ? typed : new Typed.Mapping(List.of(), NOWHERE);
  }
}
