package dev.urnwright.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.plan.Run;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every event file that we ship can be read and planned. */
class SamplesTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "samples/autumn-conference.yaml",
        "samples/harvest-supper.yaml",
        "samples/corner-cafe.yaml",
        "samples/office-carafes.yaml",
        "samples/lakeside-planting.yaml",
        "templates/event.yaml"
      })
  void canBePlanned(String file) {
    Checked<Event> event = new EventReader().read(Path.of(file));
    assertEquals(List.of(), event.problems());
    Checked<Plan> plan = new Planner().plan(event.value().orElseThrow());
    assertEquals(List.of(), plan.problems());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "samples/harvest-supper.yaml",
        "samples/corner-cafe.yaml",
        "samples/office-carafes.yaml",
        "samples/lakeside-planting.yaml",
        "templates/event.yaml"
      })
  void hasEnoughDispensersAndSafeCircuits(String file) {
    Event event = new EventReader().read(Path.of(file)).value().orElseThrow();
    Plan plan = new Planner().plan(event).value().orElseThrow();
    assertTrue(
        plan.cautions().stream()
            .noneMatch(caution -> List.of("refill", "circuit").contains(caution.code())),
        plan.cautions()::toString);
  }

  @ParameterizedTest
  @ValueSource(strings = {"samples/autumn-conference.yaml", "samples/harvest-supper.yaml"})
  void hasARunThatServesEveryGroupInTime(String file) {
    Event event = new EventReader().read(Path.of(file)).value().orElseThrow();
    Plan plan = new Planner().plan(event).value().orElseThrow();
    Run run = plan.run().orElseThrow();
    assertEquals(plan.batches().size(), run.batches().size());
    assertEquals(plan.fills().size(), run.fills().size());
    for (GroupPlan group : plan.groups()) {
      LocalDateTime first =
          group.fills().stream()
              .map(fill -> run.timeOf(fill).orElseThrow().due())
              .min(Comparator.naturalOrder())
              .orElseThrow();
      TimeWindow window = group.group().service().window().orElseThrow();
      assertEquals(event.date().orElseThrow().atTime(window.start()), first);
    }
  }

  @Test
  void theOneTooTightSaysWhoGoesShortAndWhatCuresIt() throws IOException {
    String text = Files.readString(Path.of("samples/too-tight.yaml"));
    List<Problem> problems = problems(text);
    assertEquals(1, problems.size(), problems::toString);
    String wrong = problems.get(0).wrong();
    assertTrue(
        wrong.startsWith("the run can't be made with the equipment and the time there is"), wrong);
    assertTrue(wrong.matches(".*'Swimmers' .*goes short of \\d+ cups from 07:00 to .*"), wrong);
    Matcher cures =
        Pattern.compile("any one of these cures it: 1 more Twin brewer; start (\\d+) min earlier")
            .matcher(problems.get(0).expected());
    assertTrue(cures.matches(), problems.get(0).expected());
    int earlier = Integer.parseInt(cures.group(1));
    assertEquals(List.of(), problems(text.replace("count: 1\n", "count: 2\n")));
    assertEquals(List.of(), problems(opening(text, earlier)));
    assertEquals(1, problems(opening(text, earlier - 5)).size());
  }

  private static String opening(String text, int minutesEarlier) {
    assertTrue(text.contains("opens: 06:00"));
    return text.replace(
        "opens: 06:00", "opens: " + LocalTime.of(6, 0).minusMinutes(minutesEarlier));
  }

  private List<Problem> problems(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("event.yaml"), text);
    return new Planner().plan(new EventReader().read(file).value().orElseThrow()).problems();
  }
}
