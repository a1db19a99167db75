package dev.urnwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.BrewBalance;
import dev.urnwright.event.Paper;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.wording.Words;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SheetsTest {
  @Test
  void printedPartsAddUpToThePrintedTotal() {
    // 100.4 + 200.4 + 699.2 = 1000 g: rounded one by one they would print 100 + 200 + 699.
    WaterWent went =
        WaterWent.of(
            new BrewBalance(
                Mass.ofGrams(60),
                Mass.ofGrams(1000),
                Mass.ofGrams(100.4),
                Mass.ofGrams(200.4),
                Mass.ofGrams(699.2),
                Strength.ofPercent(1.4)),
            new Display(UnitSystem.METRIC, Mass.ofGrams(1)));
    assertEquals("1000\u00a0g", went.water().toString());
    assertEquals("100\u00a0g", went.steam().orElseThrow().toString());
    assertEquals("201\u00a0g", went.absorbed().toString());
    assertEquals("699\u00a0g", went.beverage().toString());
  }

  @Test
  void printedPartsAddUpWhateverTheScale() {
    Random random = new Random(20270417);
    for (int trial = 0; trial < 500; trial++) {
      double water = 50 + random.nextDouble() * 30_000;
      double absorbed = water * (0.1 + 0.1 * random.nextDouble());
      double step = List.of(0.1, 1.0, 5.0).get(random.nextInt(3));
      Display display = new Display(UnitSystem.METRIC, Mass.ofGrams(step));
      WaterWent went =
          WaterWent.of(
              new BrewBalance(
                  Mass.ofGrams(water / 15),
                  Mass.ofGrams(water),
                  Mass.ZERO,
                  Mass.ofGrams(absorbed),
                  Mass.ofGrams(water - absorbed),
                  Strength.ofPercent(1.4)),
              display);
      // Numbers of up to six digits are exact sums to far better than a millionth.
      assertEquals(
          grams(went.water().number(), went.water().unit()),
          grams(went.absorbed().number(), went.absorbed().unit())
              + grams(went.beverage().number(), went.beverage().unit()),
          1e-6,
          went.toString());
    }
  }

  private static double grams(String number, String unit) {
    return Double.parseDouble(number.replace("\u00a0", "")) * (unit.equals("kg") ? 1000 : 1);
  }

  @Test
  void columnsAreSplitAsEvenlyAsTheyCanBe() {
    assertEquals(List.of(new Columns.Span(0, 2), new Columns.Span(2, 5)), Columns.split(5, 3));
    assertEquals(List.of(new Columns.Span(0, 3)), Columns.split(3, 3));
  }

  @Test
  void correctionsHaveAColumnForEveryGroupOnce() {
    PrepView view =
        PrepView.of(SheetPlans.crowded(11, 2, UnitSystem.US, Paper.LETTER), Words.ENGLISH);
    List<String> groups =
        view.onTheDay().corrections().stream()
            .flatMap(table -> table.groups().stream())
            .map(column -> column.group().text())
            .toList();
    assertEquals(11, groups.size());
    assertEquals(11, groups.stream().distinct().count());
    for (CorrectionTable table : view.onTheDay().corrections()) {
      table.rows().forEach(row -> assertEquals(table.groups().size(), row.pours().size()));
      assertEquals(1, table.rows().stream().filter(CorrectionTable.Row::planned).count());
    }
  }

  @Test
  void namesAreShortenedByLettersAndNotByHalves() {
    assertEquals("Tea", new Name("Tea").shortenedTo(3));
    assertEquals("Te…", new Name("Teapot").shortenedTo(3));
    String cups = "☕😀😀😀";
    assertEquals("☕😀…", new Name(cups).shortenedTo(3));
    assertTrue(new Name(cups).size().equals("short"));
  }

  @Test
  void namesWrapAtSpacesAndLoseNothing() {
    assertEquals(List.of("up the", "creek"), new Name("up the creek").wrappedAt(8));
    assertEquals(List.of("😀😀😀", "😀"), new Name("😀😀😀😀").wrappedAt(3));
    assertEquals(List.of(""), new Name(" ").wrappedAt(3));
    assertEquals(
        SheetPlans.LONG_NAME.strip(),
        String.join(" ", new Name(SheetPlans.LONG_NAME).wrappedAt(50)));
  }
}
