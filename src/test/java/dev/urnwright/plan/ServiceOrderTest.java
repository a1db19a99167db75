package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whose coffee comes out of the first batch where nobody asked for a clock, by hand. 60 cups of 200
 * ml at 75 °C are 11 698 g; at 1.25 % out of a concentrate of 1.787 % they take 8182 g of it, and
 * that 754 g of coffee (10.85 g each gram). The brewer holds 800 g, so each group has a batch.
 */
class ServiceOrderTest {
  private static final String EVENT =
      """
      event: A generic event
      coffee:
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups:
        - {name: Anytime, headcount: 60, cup: 200 ml, strength: 1.25 %}
        - {name: Noon, headcount: 60, cup: 200 ml, strength: 1.25 %, serve: 12:00-12:30}
        - {name: Ten, headcount: 60, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30}
      brewers:
        - {name: Tall, dose: 100 g to 800 g, water: 16 l, cycle: 10 min}
      """;

  @TempDir Path folder;

  @Test
  void whoIsServedFirstHasTheFirstBatch() throws IOException {
    Plan plan = new Written(folder).plan(EVENT);
    assertEquals(
        List.of("Anytime coffee-3", "Noon coffee-2", "Ten coffee-1"),
        plan.groups().stream()
            .map(
                group ->
                    group.group().name()
                        + " "
                        + group.fills().get(0).draws().stream()
                            .max((a, b) -> a.concentrate().compareTo(b.concentrate()))
                            .orElseThrow()
                            .batchId())
            .toList());
  }
}
