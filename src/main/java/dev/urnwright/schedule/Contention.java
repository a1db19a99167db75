package dev.urnwright.schedule;

import java.util.List;

/** Which choices of a backward search stand in each other's way, so that their order matters. */
record Contention(RunProblem problem) {
  /**
   * Drops a choice that another coffee's later batch could go before without touching it: placing
   * the later one first reaches the same. Choices of the same coffee are alternatives and stay.
   */
  void settle(List<SearchState> children) {
    if (problem.coffees().size() > 1) {
      List<SearchState> all = List.copyOf(children);
      children.removeIf(child -> isUncontended(child.placed(), all));
    }
  }

  private boolean isUncontended(Placement placement, List<SearchState> children) {
    for (int coffee = 0; coffee < problem.coffees().size(); coffee++) {
      if (coffee != placement.coffee() && allGoBefore(coffee, placement, children)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a coffee has choices, and all of them go before a placement. */
  private boolean allGoBefore(int coffee, Placement placement, List<SearchState> children) {
    boolean any = false;
    for (SearchState child : children) {
      if (child.placed().coffee() == coffee) {
        any = true;
        if (!goesBefore(child.placed(), placement)) {
          return false;
        }
      }
    }
    return any;
  }

  private boolean goesBefore(Placement other, Placement placement) {
    if (other.ready() <= placement.ready()) {
      return false;
    }
    if (other.start() >= placement.ready()
        && (other.kind() != placement.kind()
            || other.start() - problem.kinds().get(other.kind()).turnaroundMinutes()
                >= placement.ready())) {
      return true; // it is over, looking back, before this one begins
    }
    int circuit = problem.kinds().get(other.kind()).circuit();
    return other.kind() != placement.kind()
        && (circuit < 0 || circuit != problem.kinds().get(placement.kind()).circuit());
  }
}
