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
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Share;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.time.LocalTime;
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

  @Test
  void everyFieldOfTheSchemaIsWritten() throws IOException {
    Set<String> described = new TreeSet<>();
    described(MAPPER.readTree(PlanSchema.text()), described);
    Set<String> written = new TreeSet<>();
    fieldNames(MAPPER.readTree(json(full())), written);
    assertEquals(described, written);
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

  private static void described(JsonNode schema, Set<String> names) {
    if (schema.path("properties").isObject()) {
      schema.get("properties").fieldNames().forEachRemaining(names::add);
    }
    schema.forEach(part -> described(part, names));
  }

  private static void fieldNames(JsonNode node, Set<String> names) {
    node.fieldNames().forEachRemaining(names::add);
    node.forEach(child -> fieldNames(child, names));
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
    return timed(event, Optional.of(LocalTime.of(8, 30)));
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
        Optional.of(new Coffee.Bag(Mass.ofGrams(1000), Optional.of(price))),
        coffee.location());
  }

  private static Event timed(Event event, Optional<LocalTime> time) {
    return new Event(
        event.name(),
        event.date(),
        time,
        event.print(),
        event.serving(),
        event.coffees(),
        event.groups(),
        event.equipment(),
        event.kitchen(),
        event.defaults(),
        event.location());
  }

  private static String json(Event event) throws IOException {
    Plan plan = new Planner().plan(event).value().orElseThrow();
    StringWriter text = new StringWriter();
    new PlanJson("1.2.3").write(plan, text);
    return text.toString();
  }

  private static JsonSchema schema() throws IOException {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(PlanSchema.text());
  }
}
