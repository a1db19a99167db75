package dev.urnwright.schedule;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import dev.urnwright.schedule.RunProblem.Kind;
import java.util.ArrayList;
import java.util.List;

/**
 * The scheduler's question put to OR-Tools' CP-SAT (Apache-2.0): batches of given sizes, least
 * waiting. It counts the batches of each size that get ready on each kind of brewer at each minute.
 * Grams must be whole numbers.
 */
final class SolverModel {
  static {
    Loader.loadNativeLibraries();
  }

  private final RunProblem problem;
  private final CpModel model = new CpModel();
  private final List<Batches> all = new ArrayList<>();
  private final LinearExprBuilder value = LinearExpr.newBuilder();
  private long latest;

  /**
   * Orders that share batches.
   *
   * @param coffee index
   * @param orders in the order in which they are due
   * @param sizes of their batches
   * @param inOrder whether all of one size are ready before any of the next
   */
  record Service(int coffee, List<Order> orders, List<Size> sizes, boolean inOrder) {}

  /**
   * Equal batches.
   *
   * @param doseSteps of each
   * @param count of them
   * @param kinds that may brew them
   */
  record Size(long doseSteps, int count, List<Integer> kinds) {}

  /**
   * What the solver says.
   *
   * @param status such as OPTIMAL
   * @param leastWait of the best schedule found, gram minutes
   * @param bound below which no wait is
   * @param seconds it took, the model's making not counted
   */
  record Answer(CpSolverStatus status, double leastWait, double bound, double seconds) {}

  /** How many batches of a size are ready on a kind at a minute. */
  private record Batches(int kind, int ready, long grams, IntVar number) {}

  private SolverModel(RunProblem problem) {
    this.problem = problem;
  }

  static Answer solve(RunProblem problem, List<Service> services, double seconds) {
    SolverModel model = new SolverModel(problem);
    services.forEach(model::add);
    model.brewers();
    model.circuits();
    model.model.maximize(model.value);
    CpSolver solver = new CpSolver();
    solver.getParameters().setMaxTimeInSeconds(seconds);
    solver.getParameters().setNumWorkers(2);
    solver.getParameters().setRandomSeed(1);
    CpSolverStatus status = solver.solve(model.model);
    return new Answer(
        status,
        model.latest - solver.objectiveValue(),
        model.latest - solver.bestObjectiveBound(),
        solver.wallTime());
  }

  private void add(Service service) {
    long gramsPerStep = Math.round(problem.coffees().get(service.coffee()).gramsPerStep());
    long ordered = service.orders().stream().mapToLong(o -> (long) o.grams()).sum();
    int first = service.orders().get(0).earliestReady();
    int last = service.orders().get(service.orders().size() - 1).latestReady();
    List<Batches> here = new ArrayList<>();
    List<IntVar[]> readyBy = new ArrayList<>();
    long brewed = 0;
    for (Size size : service.sizes()) {
      List<Batches> these = batches(size, size.doseSteps() * gramsPerStep, first, last);
      here.addAll(these);
      readyBy.add(readyBy(these, size.count(), first, last));
      brewed += size.count() * size.doseSteps() * gramsPerStep;
    }
    all.addAll(here);
    here.forEach(batches -> value.addTerm(batches.number(), batches.grams() * batches.ready()));
    for (int i = 1; service.inOrder() && i < readyBy.size(); i++) {
      follows(
          readyBy.get(i), service.sizes().get(i), readyBy.get(i - 1), service.sizes().get(i - 1));
    }
    boolean equal = service.sizes().size() == 1;
    long unit = equal ? service.sizes().get(0).doseSteps() * gramsPerStep : gramsPerStep;
    for (int minute = first; minute <= last; minute++) {
      LinearExprBuilder ready = LinearExpr.newBuilder();
      for (int i = 0; i < readyBy.size(); i++) {
        ready.addTerm(
            readyBy.get(i)[minute - first], equal ? 1 : service.sizes().get(i).doseSteps());
      }
      long least = Math.floorDiv(due(service, minute) + unit - 1, unit);
      long most = Math.floorDiv(fresh(service, minute, brewed), unit);
      model.addLinearConstraint(ready, least, most);
    }
    surplus(brewed - ordered, here, last);
    for (Order order : service.orders()) {
      latest += (long) order.grams() * order.latestReady();
    }
  }

  private List<Batches> batches(Size size, long grams, int first, int last) {
    List<Batches> batches = new ArrayList<>();
    for (int kind : size.kinds()) {
      int most = Math.min(size.count(), problem.kinds().get(kind).units());
      int earliest = problem.earliestStart() + problem.kinds().get(kind).brewMinutes();
      for (int ready = Math.max(first, earliest); ready <= last; ready++) {
        batches.add(new Batches(kind, ready, grams, model.newIntVar(0, most, "")));
      }
    }
    return batches;
  }

  /** How many of some batches are ready by each minute; all of them by the last. */
  private IntVar[] readyBy(List<Batches> batches, int count, int first, int last) {
    IntVar[] readyBy = new IntVar[last - first + 1];
    for (int i = 0; i < readyBy.length; i++) {
      readyBy[i] = model.newIntVar(i == readyBy.length - 1 ? count : 0, count, "");
      LinearExprBuilder sum = LinearExpr.newBuilder();
      if (i > 0) {
        sum.add(readyBy[i - 1]);
      }
      int minute = first + i;
      batches.stream().filter(b -> b.ready() == minute).forEach(b -> sum.add(b.number()));
      model.addEquality(readyBy[i], sum);
    }
    return readyBy;
  }

  /** None of one size is ready until all of another are. */
  private void follows(IntVar[] later, Size laterSize, IntVar[] sooner, Size soonerSize) {
    for (int i = 0; i < later.length; i++) {
      IntVar may = model.newBoolVar("");
      model.addGreaterOrEqual(sooner[i], LinearExpr.term(may, soonerSize.count()));
      model.addLessOrEqual(later[i], LinearExpr.term(may, laterSize.count()));
    }
  }

  /** The grams that must be ready by a minute. */
  private static long due(Service service, int minute) {
    return service.orders().stream()
        .filter(order -> order.latestReady() <= minute)
        .mapToLong(order -> (long) order.grams())
        .sum();
  }

  /** The grams that may be ready by a minute: up to the first order that must not be brewed yet. */
  private static long fresh(Service service, int minute, long all) {
    long before = 0;
    for (Order order : service.orders()) {
      if (order.earliestReady() > minute) {
        return before;
      }
      before += (long) order.grams();
    }
    return all;
  }

  /** What nobody ordered is left of the last batch and waits for nobody. */
  private void surplus(long grams, List<Batches> here, int last) {
    if (grams > 0) {
      IntVar lastReady = model.newIntVar(0, last, "");
      for (Batches batches : here) {
        IntVar any = model.newBoolVar("");
        model.addLessOrEqual(batches.number(), LinearExpr.term(any, batches.grams()));
        model.addGreaterOrEqual(lastReady, LinearExpr.term(any, batches.ready()));
      }
      value.addTerm(lastReady, -grams);
    }
  }

  private void brewers() {
    for (int kind = 0; kind < problem.kinds().size(); kind++) {
      Kind brewer = problem.kinds().get(kind);
      for (int minute = firstMinute(); minute <= lastMinute(); minute++) {
        LinearExprBuilder busy = LinearExpr.newBuilder();
        for (Batches batches : all) {
          if (batches.kind() == kind
              && batches.ready() - brewer.brewMinutes() <= minute
              && minute < batches.ready() + brewer.turnaroundMinutes()) {
            busy.add(batches.number());
          }
        }
        model.addLessOrEqual(busy, brewer.units());
      }
    }
  }

  private void circuits() {
    for (int circuit = 0; circuit < problem.circuitWatts().size(); circuit++) {
      for (int minute = firstMinute(); minute <= lastMinute(); minute++) {
        LinearExprBuilder load = LinearExpr.newBuilder();
        for (Batches batches : all) {
          Kind brewer = problem.kinds().get(batches.kind());
          if (brewer.circuit() == circuit
              && batches.ready() - brewer.brewMinutes() <= minute
              && minute < batches.ready()) {
            load.addTerm(batches.number(), (long) brewer.watts());
          }
        }
        model.addLessOrEqual(load, problem.circuitWatts().get(circuit).longValue());
      }
    }
  }

  private int firstMinute() {
    return problem.earliestStart();
  }

  private int lastMinute() {
    return all.stream().mapToInt(Batches::ready).max().orElse(0);
  }
}
