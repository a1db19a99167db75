package dev.urnwright.cli;

import dev.urnwright.brew.Readings;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.day.Happened;
import dev.urnwright.day.Ladder;
import dev.urnwright.day.Tasting;
import dev.urnwright.json.LadderJson;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.Plan;
import dev.urnwright.problem.Checked;
import dev.urnwright.quantity.Mass;
import dev.urnwright.text.AdjustmentText;
import dev.urnwright.text.LadderText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Finds the bypass by taste. */
@Command(
    header = "Find the water by taste, where there is no refractometer.",
    description = {
      "%nWater is added to a sample of concentrate in equal steps, and tasted each time. The ladder"
          + " tells what strength to expect after each, and the water for each dispenser.",
      "%nWith --tasted the plan is corrected by the step that tasted right, and NAME-left.pdf, the"
          + " sheets of what is left to do, is written unless --no-sheets. A bare number is in"
          + " grams, or in ounces with US units."
    },
    footer = {
      "  urnwright ladder supper.yaml",
      "  urnwright ladder supper.yaml --sample 169g --step 10g --steps 8",
      "  urnwright ladder supper.yaml --in house-F2",
      "  urnwright ladder supper.yaml --coffee house --tasted 5",
      "  urnwright ladder supper.yaml --tasted \"Long tables=5\" --tasted \"Stage=6\""
    })
final class LadderCommand extends Subcommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "the event file")
  private Path file;

  @Option(
      names = "--coffee",
      paramLabel = "NAME",
      description = "its short name in the event, such as house; left out, each coffee")
  private Optional<String> coffee = Optional.empty();

  @Option(names = "--sample", paramLabel = "MASS", description = "concentrate to begin with")
  private Optional<String> sample = Optional.empty();

  @Option(names = "--step", paramLabel = "MASS", description = "water of each step")
  private Optional<String> step = Optional.empty();

  @Option(names = "--steps", paramLabel = "COUNT", description = "how many, up to 40")
  private Optional<Integer> steps = Optional.empty();

  @Option(
      names = "--from",
      paramLabel = "STRENGTH",
      description = "of the concentrate, if it was read; left out, as planned")
  private Optional<String> from = Optional.empty();

  @Option(
      names = "--in",
      paramLabel = "FILL",
      description =
          "a dispenser that has its concentrate and no water yet: the ladder is made in it")
  private Optional<String> dispenser = Optional.empty();

  @Option(
      names = "--tasted",
      paramLabel = "[GROUP=]STEP",
      description =
          "the step that tasted right, for one group or for all; halves are fine; may be given"
              + " again")
  private List<String> tasted = List.of();

  @Option(
      names = "--batch",
      paramLabel = "ID",
      description = "of which batch the sample is; left out, the first. Those before it are brewed")
  private Optional<String> batch = Optional.empty();

  @Option(
      names = "--beverage",
      paramLabel = "MASS",
      description = "what that batch gave, weighed; left out, as planned")
  private Optional<String> beverage = Optional.empty();

  @Option(
      names = "--filled",
      paramLabel = "FILL",
      description = "a dispenser that is filled and stays as it is; may be given again")
  private List<String> filled = List.of();

  @Option(names = "--json", description = "print the result as JSON, and nothing else")
  private boolean json;

  @Mixin private LearningOptions learning = new LearningOptions();
  @Mixin private OutputOptions output = new OutputOptions();

  LadderCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    Checked<Plan> checked = Planning.plan(file, output.languages(), learning);
    if (checked.value().isEmpty()) {
      console().problems(checked.problems(), "no ladder was made");
      return ExitCode.PROBLEMS;
    }
    Plan plan = checked.value().get();
    PlanOptions options = new PlanOptions(spec.commandLine(), plan);
    List<Ladder> ladders = ladders(plan, options);
    Optional<Tasting.Outcome> outcome =
        tasted.isEmpty()
            ? Optional.empty()
            : Optional.of(correct(plan, one(ladders, options), options));
    if (json) {
      new LadderJson(Version.number()).write(plan, ladders, outcome, console().out());
    } else {
      print(plan, ladders, outcome);
    }
    Optional<Plan> left = outcome.flatMap(corrected -> corrected.adjustment().left());
    if (output.writes() && left.isPresent()) {
      new LeftSheets(file, output).write(left.get(), json ? console().err() : console().out());
    }
    return ExitCode.DONE;
  }

  private void print(Plan plan, List<Ladder> ladders, Optional<Tasting.Outcome> outcome) {
    LadderText text = new LadderText(plan, console().palette());
    if (outcome.isPresent()) {
      text.write(outcome.get(), console().out());
      new AdjustmentText(console().palette()).write(outcome.get().adjustment(), console().out());
      return;
    }
    for (int i = 0; i < ladders.size(); i++) {
      if (i > 0) {
        console().out().println();
      }
      text.write(ladders.get(i), console().out());
    }
  }

  private List<Ladder> ladders(Plan plan, PlanOptions options) {
    Ladder.Wish wish =
        new Ladder.Wish(
            sample.map(options::mass), step.map(options::mass), steps, from.map(options::strength));
    if (dispenser.isPresent()) {
      Fill fill = options.fill(dispenser.get());
      CoffeePlan of =
          plan.coffees().stream()
              .filter(each -> each.fills().contains(fill))
              .findFirst()
              .orElseThrow();
      return List.of(options.understood(() -> Ladder.inDispenser(plan, of, fill, wish)));
    }
    List<CoffeePlan> coffees =
        coffee.map(name -> List.of(options.coffee(name))).orElse(plan.coffees());
    return coffees.stream()
        .map(each -> options.understood(() -> Ladder.ofSample(plan, each, wish)))
        .toList();
  }

  private Ladder one(List<Ladder> ladders, PlanOptions options) {
    if (ladders.size() > 1) {
      throw options.misuse(
          "the event has several coffees; say which was tasted, with --coffee "
              + String.join(
                  " or ", ladders.stream().map(ladder -> ladder.coffee().coffee().key()).toList()));
    }
    return ladders.get(0);
  }

  private Tasting.Outcome correct(Plan plan, Ladder ladder, PlanOptions options) {
    Map<String, Double> right = new LinkedHashMap<>();
    List<String> groups = ladder.groups().stream().map(each -> each.group().name()).toList();
    for (String text : tasted) {
      TastedStep step = options.understood(() -> TastedStep.read(text, groups));
      step.groups().forEach(group -> right.put(group, step.step()));
    }
    Set<String> gone = new LinkedHashSet<>();
    filled.forEach(id -> gone.add(options.fill(id).id()));
    ladder.dispenser().ifPresent(fill -> gone.add(fill.id()));
    return options.understood(
        () ->
            new Tasting(plan, ladder, right)
                .correct(new Happened(brewed(ladder, options), gone, List.of())));
  }

  /** The tasted batch and those before it, as planned but for what was said of it. */
  private Map<String, WeighedBatch> brewed(Ladder ladder, PlanOptions options) {
    Map<String, WeighedBatch> brewed = new LinkedHashMap<>();
    List<Batch> batches = ladder.coffee().batches();
    String last =
        batch
            .map(id -> options.known(id, batches, Batch::id, "batch").id())
            .orElseGet(() -> tastedBatch(ladder));
    for (Batch each : batches) {
      boolean isTasted = each.id().equals(last);
      Optional<Mass> gave = isTasted ? beverage.map(options::mass) : Optional.empty();
      Readings readings = from.filter(read -> isTasted).map(options::agreed).orElse(Readings.NONE);
      brewed.put(
          each.id(), new WeighedBatch(each.brew().dose(), each.brew().water(), gave, readings));
      if (isTasted) {
        break;
      }
    }
    return brewed;
  }

  private static String tastedBatch(Ladder ladder) {
    return ladder
        .dispenser()
        .map(fill -> fill.draws().get(fill.draws().size() - 1).batchId())
        .orElse(ladder.coffee().batches().get(0).id());
  }
}
