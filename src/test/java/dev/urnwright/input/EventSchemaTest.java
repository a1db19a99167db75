package dev.urnwright.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import dev.urnwright.json.EventSchema;
import dev.urnwright.quantity.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/** The schema by which editors check an event file agrees with the reader. */
class EventSchemaTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @TempDir private Path folder;

  @Test
  void isShippedAsItIsMade() throws IOException {
    assertEquals(EventSchema.text(), Files.readString(Path.of("templates/" + EventSchema.FILE)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "samples/autumn-conference.yaml",
        "samples/harvest-supper.yaml",
        "samples/corner-cafe.yaml",
        "samples/office-carafes.yaml",
        "samples/too-tight.yaml",
        "templates/event.yaml"
      })
  void passesWhatWeShip(String file) throws IOException {
    assertEquals("", complaints(Files.readString(Path.of(file))));
  }

  /** Whatever a key's kind takes, of all ways to write a number and a unit, matches its pattern. */
  @Test
  void isNeverStricterThanTheReader() {
    List<String> texts = new ArrayList<>(GrammarEvents.HOSTILE);
    for (String number : NUMBERS) {
      texts.add(number);
      texts.add("1:" + number);
      texts.add(number + " eur");
      for (Unit unit : Unit.values()) {
        List<String> spellings = new ArrayList<>(unit.spellings());
        spellings.add(unit.symbol());
        for (String spelling : spellings) {
          String shouted = spelling.toUpperCase(Locale.ROOT);
          texts.add(number + spelling);
          texts.add(number + " " + shouted);
          texts.add(number + "\u00a0" + spelling + ".");
          texts.add(" " + number + " " + shouted.replace("/", " per ") + " ");
          texts.add("up to " + number + " " + spelling);
          texts.add(number + " to " + number + spelling);
          texts.add(number + spelling + "–" + number + spelling);
          texts.add("1 " + spelling + " " + number + spelling);
        }
      }
    }
    texts.addAll(
        List.of("1 lb 4 oz", "1 h 30 min", "12 to 16", "1:12 - 1:16", "8 am to 1:30 p.m."));
    Set<String> strict = new LinkedHashSet<>();
    Set<String> taken = new LinkedHashSet<>();
    values(
        EventBinder.FIELDS,
        (field, value) -> {
          Predicate<String> matches =
              value.pattern().map(Pattern::compile).map(Pattern::asPredicate).orElse(any -> true);
          for (String text : texts) {
            if (reads(field, text)) {
              taken.add(text);
              if (!matches.test(text)) {
                strict.add(field.name() + ": " + text);
              }
            }
          }
        });
    assertEquals(Set.of(), strict);
    assertTrue(taken.size() > 1000, () -> "only these were taken: " + taken);
  }

  /** What people write for each kind of quantity, whether it is in range or not. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "cup: 240 ml | cup: 8 fl. oz",
        "cup: 240 ml | cup: ½ pt",
        "cup: 240 ml | cup: 1 1/2 Pints",
        "cup: 240 ml | cup: 0,2 Liter",
        "cup: 240 ml | cup: 240ML",
        "cup: 240 ml | cup: 240\u00a0ml",
        "strength: 1.3 % | strength: 1,3%",
        "strength: 1.3 % | strength: 1.3 per cent",
        "headcount: 40 | headcount: '40'",
        "headcount: 40 | headcount: 1 000",
        "spill: 2 % | service_temperature: 167 deg F",
        "spill: 2 % | service_temperature: 75℃",
        "spill: 2 % | service_temperature: 75 degrees C",
        "spill: 2 % | units: US",
        "spill: 2 % | paper: letter",
        "spill: 2 % | date: 2027-4-7",
        "spill: 2 % | time: 8:30 a.m.",
        "spill: 2 % | scale_step: 0.1 oz"
      })
  void takesWhatTheReaderTakes(String plain, String other) throws IOException {
    String text = LEAST.replace(plain, other);
    assertTrue(text.contains(other));
    Path file = Files.writeString(folder.resolve("event.yaml"), text);
    assertTrue(new EventReader().read(file).problems().isEmpty(), text);
    assertEquals("", complaints(text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "headcount: 40 | headcont: 40 | headcont",
        "headcount: 40 | cups_each: 2 | headcount",
        "cup: 240 ml | cup: 240 | cup",
        "cup: 240 ml | cup: 240 g | cup",
        "cup: 240 ml | cup: 2 cups | cup",
        "strength: 1.3 % | strength: [1.3 %] | strength",
        "spill: 2 % | spill: 0.02 | spill",
        "spill: 2 % | date: 17.4.2027 | date",
        "spill: 2 % | time: 25 h | time",
        "spill: 2 % | units: imperial | units",
        "spill: 2 % | brewers: [] | brewers",
        "spill: 2 % | brewers: {name: x} | brewers",
        "spill: 2 % | kitchen: {open: 06:00} | open",
        "spill: 2 % | strengths: {mild: 12 g} | mild",
        "coffee: {name: House} | coffees: {} | coffees",
        "coffee: {name: House} | coffee: {price: 26.50} | price",
        "coffee: {name: House} | coffee: {concentrate: {ratio: strong}} | ratio",
        "coffee: {name: House} | spill: 2 % | coffee"
      })
  void seesWhatIsWrong(String right, String wrong, String where) throws IOException {
    String text = LEAST.replace(right, wrong).replaceFirst("(?s)(spill: 2 %\n)(.*)\\1", "$1$2");
    assertTrue(text.contains(wrong));
    Path file = Files.writeString(folder.resolve("event.yaml"), text);
    assertFalse(new EventReader().read(file).problems().isEmpty());
    assertTrue(complaints(text).contains(where), complaints(text));
  }

  /** Each key shows an example, and each example can be read. */
  @Test
  void everyExampleIsRight() {
    Set<String> wrong = new LinkedHashSet<>();
    values(
        EventBinder.FIELDS,
        (field, value) -> {
          String example = value.example();
          boolean matches =
              value
                  .pattern()
                  .map(known -> Pattern.compile(known).matcher(example).find())
                  .orElse(true);
          if (example.isEmpty() || !matches || !reads(field, example)) {
            wrong.add(field.name() + ": " + example);
          }
        });
    assertEquals(Set.of(), wrong);
  }

  private static void values(Fields fields, BiConsumer<Field<?>, Shape.Value> use) {
    for (Field<?> field : fields.fields()) {
      field.kind().inside().ifPresent(inside -> values(inside, use));
      if (field.kind().shape() instanceof Shape.Value value) {
        use.accept(field, value);
      }
    }
  }

  private static boolean reads(Field<?> field, String text) {
    Problems problems = new Problems("text");
    field.kind().read(new ScalarNode(Tag.STR, text, ScalarStyle.PLAIN), problems);
    return problems.none();
  }

  private static final List<String> NUMBERS =
      List.of("15", "1,5", ".5", "1½", "1 1/2", "90", "1 000");

  private static final String LEAST =
      """
      event: Mill fair
      spill: 2 %
      coffee: {name: House}
      groups:
        - headcount: 40
          cup: 240 ml
          strength: 1.3 %
      """;

  private static String complaints(String yaml) throws IOException {
    return schema().validate(json(yaml)).stream()
        .map(ValidationMessage::toString)
        .collect(Collectors.joining("\n"));
  }

  /** What an editor sees: scalars by YAML's core schema. */
  private static JsonNode json(String yaml) {
    return MAPPER.valueToTree(
        new Load(LoadSettings.builder().setSchema(new CoreSchema()).build()).loadFromString(yaml));
  }

  private static JsonSchema schema() throws IOException {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7).getSchema(EventSchema.text());
  }
}
