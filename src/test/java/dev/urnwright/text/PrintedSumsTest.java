package dev.urnwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.event.Print;
import dev.urnwright.input.EventReader;
import dev.urnwright.json.PlanJson;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.plan.RandomEvents;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.UnitSystem;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is printed adds up as printed, for whoever adds it up by hand; and shows no noise. */
class PrintedSumsTest {
  private static final Pattern MASS =
      Pattern.compile("(?:([0-9\u00a0]+)\u00a0lb\u00a0)?([0-9\u00a0.]+)\u00a0(kg|g|oz)\\b");

  /** All samples that can be planned, and some random events, each in both systems of units. */
  private static List<Plan> plans() throws IOException {
    List<Event> events = new ArrayList<>();
    try (Stream<Path> samples = Files.list(Path.of("samples"))) {
      for (Path sample : samples.filter(p -> p.toString().endsWith(".yaml")).sorted().toList()) {
        new EventReader().read(sample).value().ifPresent(events::add);
      }
    }
    assertTrue(events.size() >= 4, "samples: " + events.size());
    for (long seed = 0; seed < RandomEvents.count(60); seed++) {
      events.add(RandomEvents.sane(seed));
    }
    List<Plan> plans = new ArrayList<>();
    for (Event event : events) {
      for (UnitSystem units : UnitSystem.values()) {
        new Planner().plan(in(units, event)).value().ifPresent(plans::add);
      }
    }
    return plans;
  }

  private static Event in(UnitSystem units, Event event) {
    return new Event(
        event.name(),
        event.date(),
        event.time(),
        new Print(units, event.print().paper(), event.print().window()),
        event.serving(),
        event.coffees(),
        event.groups(),
        event.equipment(),
        event.kitchen(),
        event.purchases(),
        event.defaults(),
        event.location());
  }

  @Test
  void columnsAddUp() throws IOException {
    int balances = 0;
    int tables = 0;
    for (Plan plan : plans()) {
      List<String> lines = text(plan).lines().toList();
      for (int i = 0; i < lines.size(); i++) {
        if (lines.get(i).strip().startsWith("altogether")) {
          balance(lines.subList(i, Math.min(i + 10, lines.size())), plan.event().name());
          balances++;
        } else if (lines.get(i).strip().startsWith("together  ")) {
          batches(lines, i, plan);
          tables++;
        }
      }
    }
    assertTrue(balances > 10 && tables > 10, balances + ", " + tables);
  }

  /**
   * Brew water is steam, what the grounds keep and the beverage; that, water and ice are served.
   */
  private static void balance(List<String> rows, String event) {
    for (int column = 1; column <= 2; column++) {
      BigDecimal water = mass(rows, "Brew water", column);
      BigDecimal beverage = mass(rows, "Beverage", column);
      assertSame(
          water,
          mass(rows, "Steam", column).add(mass(rows, "Absorbed", column)).add(beverage),
          event + "\n" + String.join("\n", rows));
      if (column == 1) { // rounded, some of the beverage is left over
        assertSame(
            mass(rows, "Finished", column),
            beverage.add(mass(rows, "Bypass", column)).add(mass(rows, "Ice", column)),
            event + "\n" + String.join("\n", rows));
      }
    }
  }

  /** Dose, water and beverage of the batches above the line. */
  private static void batches(List<String> lines, int sum, Plan plan) {
    BigDecimal[] sums = {BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO};
    int at = sum - 1;
    while (masses(lines.get(at)).isEmpty()) {
      at--; // a rule
    }
    for (; !lines.get(at).strip().startsWith("batch"); at--) {
      List<BigDecimal> masses = masses(lines.get(at));
      assertTrue(masses.size() == 3 || masses.isEmpty(), lines.get(at));
      for (int i = 0; i < masses.size(); i++) {
        sums[i] = sums[i].add(masses.get(i));
      }
    }
    List<BigDecimal> printed = masses(lines.get(sum));
    assertEquals(3, printed.size(), lines.get(sum));
    for (int i = showsWholeSteps(plan) ? 0 : 2; i < 3; i++) {
      assertSame(printed.get(i), sums[i], String.join("\n", lines.subList(at, sum + 1)));
    }
  }

  /**
   * Whether what is weighed is printed exactly: not on a scale in grams told in ounces, nor the
   * other way, where the last digit printed is finer than the scale and rounded for each batch.
   */
  private static boolean showsWholeSteps(Plan plan) {
    Mass step = plan.event().equipment().scaleStep();
    Display display = new Display(plan.event().print().units(), step);
    return Stream.of(step, Mass.ofGrams(20_000))
        .map(display::finest)
        .mapToDouble(finest -> step.grams() / finest.grams())
        .allMatch(digits -> Math.abs(digits - Math.rint(digits)) < 1e-6 && digits > 0.5);
  }

  private static BigDecimal mass(List<String> rows, String label, int column) {
    return rows.stream()
        .filter(row -> row.strip().startsWith(label))
        .map(row -> masses(row).get(column - 1))
        .findFirst()
        .orElse(BigDecimal.ZERO);
  }

  private static List<BigDecimal> masses(String row) {
    List<BigDecimal> masses = new ArrayList<>();
    Matcher found = MASS.matcher(row);
    while (found.find()) {
      BigDecimal number = number(found.group(2));
      if (found.group(3).equals("kg")) {
        number = number.movePointRight(3);
      }
      if (found.group(1) != null) {
        number = number.add(number(found.group(1)).multiply(BigDecimal.valueOf(16)));
      }
      masses.add(number);
    }
    return masses;
  }

  private static BigDecimal number(String printed) {
    return new BigDecimal(printed.replace("\u00a0", ""));
  }

  private static void assertSame(BigDecimal expected, BigDecimal actual, String where) {
    assertEquals(0, expected.compareTo(actual), expected + " and " + actual + " in\n" + where);
  }

  /**
   * Three decimals are the most that any unit has on a screen, but for an uncertainty, which has
   * two digits that count; and six in JSON.
   */
  @Test
  void noNumberShowsTheNoiseOfBinaryFractions() throws IOException {
    Pattern tooLong =
        Pattern.compile(
            "[1-9][0-9]*\\.[0-9]{4}|\\b0\\.(?!0*[1-9][0-9]?\\b)[0-9]{4}|[0-9][eE]-?[0-9]");
    Pattern tooLongInJson = Pattern.compile("[0-9]\\.[0-9]{7}|[0-9][eE]-?[0-9]");
    for (Plan plan : plans()) {
      none(tooLong, text(plan));
      StringWriter json = new StringWriter();
      new PlanJson("test").write(plan, json);
      none(tooLongInJson, json.toString());
    }
  }

  private static void none(Pattern pattern, String text) {
    Matcher found = pattern.matcher(text);
    assertFalse(
        found.find(),
        () -> text.substring(Math.max(0, found.start() - 60), found.end()) + " is noise");
  }

  private static String text(Plan plan) {
    StringWriter text = new StringWriter();
    new PlanText(Palette.PLAIN).write(plan, new PrintWriter(text, true));
    return text.toString();
  }
}
