package dev.urnwright.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.GuestGroup;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.plan.Run;
import dev.urnwright.problem.Checked;
import dev.urnwright.scale.Basket;
import dev.urnwright.scale.Grind;
import dev.urnwright.scale.ScaleRequest;
import dev.urnwright.scale.Scaler;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScaleReaderTest {
  private static final Path TEMPLATE = Path.of("templates/scale.yaml");
  private static final String SMALLEST =
      """
      scale: Bar filter
      reference: {dose: 20 g, water: 320 g, beverage: 277 g, strength: 1.38 %}
      brewer: {name: Tall brewer, dose: up to 700 g, water: 9 kg, cycle: 8 min}
      """;

  @TempDir private Path folder;

  private Checked<ScaleFile> read(String text) throws IOException {
    return new ScaleReader().open(Files.writeString(folder.resolve("cafe.yaml"), text));
  }

  private List<String> problems(String text) throws IOException {
    return read(text).problems().stream()
        .map(problem -> problem.toString().replace(folder + "/", ""))
        .toList();
  }

  @Test
  void theTemplateNamesEveryKey() throws IOException {
    String template = Files.readString(TEMPLATE);
    List<String> missing = new ArrayList<>();
    for (String key : keys(ScaleBinder.FIELDS, new LinkedHashSet<>())) {
      if (!template.matches("(?s).*\\b" + key + ":.*") && !List.of("circuit").contains(key)) {
        missing.add(key);
      }
    }
    assertEquals(List.of(), missing);
  }

  private static Set<String> keys(Fields fields, Set<String> keys) {
    for (Field<?> field : fields.fields()) {
      keys.add(field.name());
      field.kind().inside().ifPresent(inside -> keys(inside, keys));
    }
    return keys;
  }

  @Test
  void theTemplateIsReadAsItSays() {
    ScaleRequest request = new ScaleReader().open(TEMPLATE).value().orElseThrow().request();
    assertEquals(20, request.reference().brew().dose().grams());
    assertEquals(Basket.Shape.CONE, request.reference().basket().orElseThrow().shape());
    assertEquals(90, request.reference().basket().orElseThrow().diameter().millimetres());
    assertEquals(Duration.ofSeconds(190), request.reference().contact().orElseThrow());
    assertEquals(Grind.FINE, request.reference().grind().orElseThrow());
    assertEquals(110, request.target().basket().orElseThrow().height().orElseThrow().millimetres());
    // 6 l at 88 °C, where a litre weighs 966.6 g (IAPWS-IF97: 968.6 at 85, 965.3 at 90)
    assertEquals(6 * 966.6, request.wish().beverage().orElseThrow().grams(), 1.5);
    assertEquals(0.40, request.brewing().bulkGramsPerMillilitre());
  }

  @Test
  void everyProblemIsSaidAtOnceWithItsPlace() throws IOException {
    assertEquals(
        List.of(
            "cafe.yaml:3:57: unknown key 'shap'; did you mean 'shape'? known keys: dose, water,"
                + " beverage, strength, basket, shape, time, bloom, grind",
            "cafe.yaml:3:76: this bloom is all of the brew water, or more; expected part of it, such"
                + " as twice the dose",
            "cafe.yaml:4:69: 18 has no unit; expected a length such as 18 cm",
            "cafe.yaml:5:18: 4 h is a time; expected a mass or a volume such as 4 l",
            "cafe.yaml:6:1: unknown key 'groups'; known keys: scale, coffee, language, units, paper,"
                + " window, scale_step, filling_temperature, method, steam_loss, absorption, bulk_density,"
                + " reference, brewer, make, trials, menu"),
        problems(
            """
            scale: Bar filter
            bulk_density: 0.4 g/ml
            reference: {dose: 20 g, water: 320 g, strength: 1.38 %, shap: flat, bloom: 320 g}
            brewer: {name: Tall brewer, dose: up to 700 g, water: 9 kg, basket: 18}
            make: {beverage: 4 h}
            groups: []
            """));
  }

  @Test
  void aMenusProblemsAreThoseOfTheFile() throws IOException {
    assertEquals(
        List.of(
            "cafe.yaml:6:70: no pot is called 'Servr'; did you mean 'Server'? known: Server",
            "cafe.yaml:7:53: 08:30 is not a whole number of hours after 07:00; expected times that"
                + " are hours apart",
            "cafe.yaml:8:85: another product in the same kind of pot is fresh for another time;"
                + " expected one time for a kind of pot; list another kind for this product"),
        problems(
            SMALLEST
                + """
                menu:
                  products:
                    - {name: A, cup: 200 ml, strength: 1.3 %, cups: {07:00: 5}, pot: Servr}
                    - {name: B, cup: 200 ml, strength: 1.3 %, cups: {07:00: 5, 08:30: 5}, pot: Server, fresh: 30 min}
                    - {name: C, cup: 200 ml, strength: 1.3 %, cups: {07:00: 5}, pot: Server, fresh: 40 min}
                  pots: [{name: Server, capacity: 3 l}]
                """));
  }

  @Test
  void whatTheDaysEventLacksIsPointedAtInTheFile() throws IOException {
    ScaleFile file =
        read(SMALLEST
                + """
                    menu:
                      products:
                        - {name: A, cup: 200 ml, room: 200 ml, strength: 1.3 %, cups: {07:00: 5}}
                      pots: [{name: Server, capacity: 3 l}]
                    """)
            .value()
            .orElseThrow();
    Checked<EventFile> day =
        file.day(new Scaler().scale(file.request()).value().orElseThrow()).orElseThrow();
    assertEquals(1, day.problems().size());
    assertTrue(day.problems().get(0).toString().contains("cafe.yaml:6:"), day::toString);
  }

  @Test
  void theDaysMenuIsPlannedByTheHour() {
    ScaleFile file = new ScaleReader().open(TEMPLATE).value().orElseThrow();
    EventFile event =
        file.day(new Scaler().scale(file.request()).value().orElseThrow())
            .orElseThrow()
            .value()
            .orElseThrow();
    GuestGroup house = event.event().groups().get(0);
    // 14 + 26 + 20 + 12 = 72 cups, from 07:00 to 11:00
    assertEquals(72, house.guests().headcount());
    assertEquals("07:00–11:00", house.service().window().orElseThrow().toString());
    assertEquals(
        List.of(14.0, 26.0, 20.0, 12.0),
        house.service().arrivals().shares().stream()
            .map(share -> (double) Math.round(share.fraction() * 72 * 1e6) / 1e6)
            .toList());
    Plan plan = new Planner().plan(event.event()).value().orElseThrow();
    // 10 % more than 72 is 79.2: 80 cups
    assertEquals(80, plan.groups().get(0).demand().cups());
    for (Run.FillTime fill : plan.run().orElseThrow().fills()) {
      if (!fill.fill().groupName().equals("Iced filter")) {
        assertTrue(
            Duration.between(fill.filled(), fill.lastPour()).toMinutes() <= 60, fill::toString);
      }
    }
  }

  @Test
  void aFileOfAnotherKindIsToldApart() throws IOException {
    assertEquals(
        List.of("cafe.yaml: this file is empty; expected a reference and a brewer"), problems(""));
    assertEquals(
        List.of("missing.yaml: there is no such file; expected a file for 'scale' in YAML"),
        new ScaleReader()
            .open(Path.of("missing.yaml")).problems().stream().map(Object::toString).toList());
  }
}
