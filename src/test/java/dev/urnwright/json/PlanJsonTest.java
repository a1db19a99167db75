package dev.urnwright.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Provision;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.input.EventReader;
import dev.urnwright.journal.EntryReader;
import dev.urnwright.journal.JournalCsv;
import dev.urnwright.learn.Teaching;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Share;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlanJsonTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  static Stream<Event> events() {
    return Stream.of(Events.oneCup(), full());
  }

  @ParameterizedTest
  @MethodSource("events")
  void theDocumentAgreesWithItsSchema(Event event) throws IOException {
    assertEquals(Set.of(), Set.copyOf(schema().validate(json(event), InputFormat.JSON)));
  }

  @Test
  void theSchemaRefusesAFieldItDoesNotKnowAndMissesOneItRequires() throws IOException {
    ObjectNode extra = (ObjectNode) MAPPER.readTree(json(Events.oneCup()));
    extra.put("surprise", 1);
    assertEquals(1, schema().validate(extra).size());
    ObjectNode short1 = (ObjectNode) MAPPER.readTree(json(Events.oneCup()));
    ((ObjectNode) short1.at("/coffees/0/needed")).remove("dose_g");
    assertEquals(1, schema().validate(short1).size());
  }

  /** Paths from the top, such as {@code fills/draws/batch}, so that a namesake doesn't count. */
  @Test
  void everyFieldOfTheSchemaIsWrittenForSomeSample() throws IOException {
    JsonNode schema = MAPPER.readTree(DocumentSchema.PLAN.text());
    Set<String> described = new TreeSet<>();
    described(schema, schema, "", described);
    Set<String> written = new TreeSet<>();
    try (Stream<Path> samples = Files.list(Path.of("samples"))) {
      // Plans of the samples may stand beside them.
      for (Path sample : samples.filter(PlanJsonTest::isEvent).sorted().toList()) {
        Event event = new EventReader().read(sample).value().orElseThrow();
        Optional<Plan> plan = new Planner().plan(taught(event, sample)).value();
        if (plan.isPresent()) {
          String json = json(plan.get());
          assertEquals(List.of(), List.copyOf(schema().validate(json, InputFormat.JSON)));
          fieldNames(MAPPER.readTree(json), "", written);
        }
      }
    }
    assertEquals(described, written);
  }

  /** By the journal that lies beside it, if it names one. */
  private static Event taught(Event event, Path sample) throws IOException {
    if (event.journalNamedAt().isEmpty()) {
      return event;
    }
    Path journal = Path.of(sample.toString().replace(".yaml", "-journal.csv"));
    EntryReader entries = new EntryReader();
    try (Reader in = Files.newBufferedReader(journal)) {
      JournalCsv.read(in, journal.toString(), entries);
    }
    return Teaching.of(event, event.date().orElseThrow(), entries.brews(), entries.services());
  }

  @Test
  void theRunIsOnTheEventsDay() throws IOException {
    JsonNode document = MAPPER.readTree(json(full()));
    JsonNode batch = document.at("/batches/0");
    assertTrue(batch.get("ready").asText().startsWith("2027-04-17T0"), batch::toString);
    assertEquals(
        Duration.ofMinutes(10), // the brewers' cycle
        Duration.between(moment(batch, "start"), moment(batch, "ready")));
    JsonNode fill = document.at("/fills/0");
    assertFalse(moment(fill, "filled").isAfter(moment(fill, "due")));
    assertFalse(moment(fill, "last_pour").isAfter(moment(fill, "use_by")));
    for (JsonNode group : document.get("groups")) {
      List<Double> poured = new ArrayList<>();
      for (JsonNode each : document.get("fills")) {
        if (each.get("group").equals(group.get("name"))
            && each.get("coffee").equals(group.get("coffee"))
            && each.has("pour_temperature")) {
          poured.add(each.get("pour_temperature").asDouble());
        }
      }
      assertEquals(group.get("name").asText().equals("Iced table"), poured.isEmpty());
      if (!poured.isEmpty()) {
        assertEquals(Collections.min(poured), group.get("pour_temperature").asDouble());
      }
    }
  }

  @Test
  void withoutADateTheRunHasTimesOnly() throws IOException {
    Event event = full();
    String json = json(dated(event, Optional.empty(), event.time()));
    assertEquals(Set.of(), Set.copyOf(schema().validate(json, InputFormat.JSON)));
    JsonNode start = MAPPER.readTree(json).at("/batches/0/start");
    assertTrue(start.asText().matches("0\\d:\\d\\d:00"), start::toString);
  }

  @Test
  void withoutBrewersThereIsNoRun() throws IOException {
    JsonNode document = MAPPER.readTree(json(Events.oneCup()));
    assertFalse(document.has("run"));
    assertFalse(document.at("/batches/0").has("start"));
    assertFalse(document.at("/fills/0").has("filled"));
    assertFalse(document.at("/groups/0").has("pour_temperature"));
  }

  /**
   * Common practice, no source (check values): 16 g and 208 g of water gave 169 g at 1.81 %, 19.12
   * % extracted; with 55.9 g of bypass it is 224.9 g at 1.36 %.
   */
  @Test
  void theFiguresOfOneCup() throws IOException {
    JsonNode needed = MAPPER.readTree(json(Events.oneCup())).at("/coffees/0/needed");
    assertEquals(13, needed.get("ratio").asDouble(), 1e-6);
    assertEquals(16, needed.get("dose_g").asDouble(), 0.005); // 224.9 is rounded
    assertEquals(208, needed.get("brew_water_g").asDouble(), 0.05);
    assertEquals(39, needed.get("absorbed_g").asDouble(), 0.01);
    assertEquals(169, needed.get("concentrate_g").asDouble(), 0.05);
    assertEquals(1.81, needed.get("concentrate_strength").asDouble(), 1e-6);
    assertEquals(19.12, needed.get("extraction").asDouble(), 0.005); // printed with two decimals
    assertEquals(55.9, needed.get("bypass_g").asDouble(), 0.05);
    assertEquals(224.9, needed.get("finished_g").asDouble(), 1e-6);
  }

  @Test
  void whatIsNotKnownIsLeftOut() throws IOException {
    JsonNode document = MAPPER.readTree(json(Events.oneCup()));
    assertFalse(document.at("/groups/0").has("station"));
    assertFalse(document.at("/batches/0").has("brewer"));
    assertFalse(document.at("/fills/0").has("dispenser"));
    assertFalse(json(full()).contains("null"));
  }

  @Test
  void numbersAreWrittenPlainly() throws IOException {
    String json = json(full());
    List<String> numbers =
        Pattern.compile("(?m)^ *\"\\w+\": ([-\\d][^,\\s]*)")
            .matcher(json)
            .results()
            .map(found -> found.group(1))
            .toList();
    assertFalse(numbers.isEmpty());
    for (String number : numbers) {
      assertTrue(number.matches("\\d+(\\.\\d{0,5}[1-9])?"), number);
    }
  }

  @Test
  void aGroupOfTwoCoffeesHasARowForEach() throws IOException {
    JsonNode groups = MAPPER.readTree(json(full())).get("groups");
    assertEquals(3, groups.size());
    assertEquals(Set.of("house", "decaf"), Set.copyOf(groups.findValuesAsText("coffee")));
    assertTrue(groups.findValuesAsText("name").containsAll(List.of("Visitors", "Iced table")));
  }

  /** Files for other commands stand there too. */
  private static boolean isEvent(Path file) {
    try {
      return file.toString().endsWith(".yaml")
          && Files.readString(file).lines().anyMatch(line -> line.startsWith("event:"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void described(JsonNode schema, JsonNode part, String path, Set<String> paths) {
    if (part.has("$ref")) {
      described(schema, schema.at(part.get("$ref").asText().substring(1)), path, paths);
    }
    described(schema, path, part.path("properties"), paths);
    if (part.has("items")) {
      described(schema, part.get("items"), path, paths);
    }
  }

  private static void described(
      JsonNode schema, String path, JsonNode properties, Set<String> paths) {
    properties
        .properties()
        .forEach(
            field -> {
              paths.add(path + field.getKey());
              described(schema, field.getValue(), path + field.getKey() + "/", paths);
            });
  }

  private static void fieldNames(JsonNode node, String path, Set<String> paths) {
    if (node.isArray()) {
      node.forEach(each -> fieldNames(each, path, paths));
    }
    node.properties()
        .forEach(
            field -> {
              paths.add(path + field.getKey());
              fieldNames(field.getValue(), path + field.getKey() + "/", paths);
            });
  }

  private static LocalDateTime moment(JsonNode node, String name) {
    return LocalDateTime.parse(node.get(name).asText());
  }

  /** Everything given. */
  private static Event full() {
    GuestGroup visitors =
        Events.drinking(
            Events.group("Visitors", 160, 200, 1.25),
            new GuestGroup.CoffeeShare("house", Share.ofPercent(85)),
            new GuestGroup.CoffeeShare("decaf", Share.ofPercent(15)));
    GuestGroup placed =
        new GuestGroup(
            visitors.name(),
            visitors.guests(),
            visitors.cup(),
            visitors.strength(),
            visitors.coffees(),
            visitors.ice(),
            new GuestGroup.Service(
                Optional.of(new TimeWindow(LocalTime.of(8, 0), LocalTime.of(10, 0))),
                GuestGroup.Arrivals.EARLY,
                Optional.of("Marquee"),
                Optional.empty()),
            visitors.location());
    Event event =
        Events.event(
            Events.serving(new Provision.ServiceLevel(Share.ofPercent(95)), 2),
            List.of(
                bagged(Events.coffee("house", Events.ratio(13))),
                Events.coffee("decaf", Events.ratio(14))),
            List.of(placed, Events.iced(Events.group("Iced table", 30, 300, 1.3), 25, 5)),
            Events.equipment(
                5,
                List.of(Events.brewer("Twin brewer", 2, 150, 480, 6)),
                List.of(Events.dispenser("Airpot", 40, 2.2, 40))));
    return dated(event, event.date(), Optional.of(LocalTime.of(8, 30)));
  }

  private static Coffee bagged(Coffee coffee) {
    Money price = new Money(new BigDecimal("26.50"), Currency.getInstance("EUR"));
    return new Coffee(
        coffee.key(),
        coffee.name(),
        coffee.decaf(),
        coffee.profile(),
        coffee.concentrate(),
        coffee.caffeine(),
        Optional.of(new Coffee.Bag(Mass.ofGrams(1000), Optional.of(price), Mass.ZERO)),
        coffee.location());
  }

  private static Event dated(Event event, Optional<LocalDate> date, Optional<LocalTime> time) {
    return new Event(
        event.name(),
        date,
        time,
        event.print(),
        event.serving(),
        event.coffees(),
        event.groups(),
        event.equipment(),
        event.kitchen(),
        event.purchases(),
        event.defaults(),
        event.location());
  }

  private static String json(Event event) throws IOException {
    return json(new Planner().plan(event).value().orElseThrow());
  }

  private static String json(Plan plan) throws IOException {
    StringWriter text = new StringWriter();
    new PlanJson("1.2.3").write(plan, text);
    return text.toString();
  }

  private static JsonSchema schema() throws IOException {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(DocumentSchema.PLAN.text());
  }
}
