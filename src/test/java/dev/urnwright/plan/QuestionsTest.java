package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.event.Note;
import dev.urnwright.input.EventReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was hardly meant is asked about; what people do is not. */
class QuestionsTest {
  private static final String SANE =
      """
      event: Choir supper
      coffee:
        name: House
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {range: 10 to 17}
      groups:
        - {name: Everybody, headcount: 30, cup: 200 ml, strength: 1.25 %}
      brewers: [{name: Tall, dose: up to 1.2 kg, water: 15 l, cycle: 15 min}]
      """;

  @TempDir Path folder;

  @Test
  void aSaneEventIsNotQuestioned() throws IOException {
    assertEquals(List.of(), questions(SANE));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "200 ml | 24 ml | Everybody: a cup of 24 ml? Did you mean 240 ml?",
        "200 ml | 2.4 l | Everybody: a cup of 2.40 l? Did you mean 240 ml?",
        "strength: 1.25 % | strength: 0.125 % "
            + "| Everybody: a strength of 0.13 %? Did you mean 1.25 %?",
        // 60 kg with 960 kg of water is the same brew a thousand times over
        "60 g, water: 960 g, beverage: 831 g | 16 kg, water: 256 kg, beverage: 221.6 kg "
            + "| House: a reference brew of 16.000 kg? Did you mean 16 g?",
        // (960 − 921) / 60 = 0.65 g/g
        "831 g | 921 g | House: grounds that keep 0.65 g/g? Drip grounds keep about 2 g/g and"
            + " steeped ones about 3 g/g. Was all of the beverage weighed, without its vessel?",
        // (960 − 700) / 60 = 4.33 g/g
        "831 g | 700 g | House: grounds that keep 4.33 g/g? Drip grounds keep about 2 g/g and"
            + " steeped ones about 3 g/g. Was all of the beverage weighed, without its vessel?",
        // 2.3 % × 831 / 60 = 31.9 %
        "1.40 % | 2.30 % | House: an extraction of 31.9 %? Hardly more than 30.0 % of coffee"
            + " dissolves. Is the strength read right, and the beverage weighed instead of the brew"
            + " water?",
        "15 l | 4 l | Tall: a dose of 1200 g for 3993 g of water? Is one of them meant otherwise?",
        "15 min | 15 h | Tall: a cycle of 900 min? Water runs through coffee for some minutes, not"
            + " for hours."
      })
  void asksWhatIsMeant(String sane, String odd, String question) throws IOException {
    assertEquals(List.of(question), questions(SANE.replace(sane, odd)));
  }

  private List<String> questions(String event) throws IOException {
    Path file = Files.writeString(folder.resolve("supper.yaml"), event);
    Plan plan =
        new Planner()
            .plan(new EventReader().read(file).value().orElseThrow())
            .value()
            .orElseThrow();
    return plan.cautions().stream()
        .filter(caution -> caution.code().equals(Note.QUESTION))
        .map(caution -> caution.text().replace('\u00a0', ' '))
        .toList();
  }
}
