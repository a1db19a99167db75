package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.event.Note;
import java.io.IOException;
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

  /** At the limit of what people do, no question is asked. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "200 ml | 60 ml",
        "200 ml | 1 l",
        "strength: 1.25 % | strength: 0.6 %",
        "60 g, water: 960 g, beverage: 831 g | 2 kg, water: 32 kg, beverage: 27.7 kg",
        // (960 − 900) / 60 = 1 g/g, (960 − 720) / 60 = 4
        "831 g | 900 g",
        "831 g | 720 g",
        "reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %} | extraction: 30 %",
        "up to 1.2 kg, water: 15 l | up to 1 kg, water: 5 kg",
        "15 min | 1 h"
      })
  void whatPeopleDoIsNotAskedAbout(String sane, String other) throws IOException {
    assertEquals(List.of(), questions(SANE.replace(sane, other)));
  }

  /** 19.39 / 3 + 2.15 = 8.6: just as strong as filter coffee is drunk. */
  @Test
  void threePercentAreStrongAndMeant() throws IOException {
    assertEquals(
        List.of(),
        questions(SANE.replace("10 to 17", "7 to 17").replace("strength: 1.25", "strength: 3")));
    assertEquals(
        List.of("Everybody: a strength of 3.10 %? Did you mean 0.31 %?"),
        questions(SANE.replace("10 to 17", "7 to 17").replace("strength: 1.25", "strength: 3.1")));
  }

  /** What steeps may take the night. */
  @Test
  void whatSteepsTakesItsTime() throws IOException {
    String steeped = SANE.replace("  name: House\n", "  name: House\n  method: immersion\n");
    assertEquals(List.of(), questions(steeped.replace("15 min", "15 h")));
  }

  private List<String> questions(String event) throws IOException {
    return new Written(folder).said(Note.QUESTION, event);
  }
}
