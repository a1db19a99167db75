package dev.urnwright.input;

import dev.urnwright.problem.Problem;
import dev.urnwright.round.Return;
import dev.urnwright.round.Round;
import java.util.List;

/**
 * A round as it was read.
 *
 * @param round what was asked for
 * @param returns what came back so far
 * @param strangers rows of returns of sites that the table doesn't have, which count for nothing
 */
public record RoundFile(Round round, List<Return> returns, List<Problem> strangers) {
  /** Copies the lists. */
  public RoundFile {
    returns = List.copyOf(returns);
    strangers = List.copyOf(strangers);
  }
}
