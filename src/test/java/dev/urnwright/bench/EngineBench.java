package dev.urnwright.bench;

import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Provision;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.problem.Checked;
import dev.urnwright.quantity.Share;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Time to plan one event that is already in memory. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class EngineBench {
  /** How many groups the event has. */
  @Param({"5", "500", "50000"})
  public int groups;

  private Event event;

  /** Makes the event: uncertain guests, brewers, dispensers, nine strengths. */
  @Setup
  public void makeEvent() {
    List<GuestGroup> guests =
        IntStream.range(0, groups)
            .mapToObj(i -> Events.group("Group " + i, 20 + i % 60, 200, 1.2 + 0.03 * (i % 9)))
            .toList();
    event =
        Events.event(
            Events.serving(new Provision.ServiceLevel(Share.ofPercent(95)), 2),
            List.of(Events.coffee("house", Events.ratio(13))),
            guests,
            Events.equipment(
                5,
                List.of(
                    Events.brewer("Brewer", 4, 150, 20_000, 300)), // large enough for all groups
                List.of(Events.dispenser("Airpot", 1_000_000, 2.2, 40))));
  }

  /** Plans it. */
  @Benchmark
  public Checked<Plan> plan() {
    Checked<Plan> plan = new Planner().plan(event);
    if (plan.value().isEmpty()) {
      throw new IllegalStateException("the event must be one that can be planned");
    }
    return plan;
  }

  /** Runs this benchmark. */
  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(EngineBench.class.getSimpleName()).build()).run();
  }
}
