package dev.urnwright.input;

import dev.urnwright.event.GuestGroup.Arrivals;
import dev.urnwright.quantity.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** How guests spread over their window: a word, or shares of equal parts of it. */
final class ArrivalsKind implements Kind<Arrivals> {
  private static final int MOST_PARTS = 96;
  private static final String EXPECTED =
      "expected even, early or late, or the shares of equal parts of the window such as"
          + " [30 %, 50 %, 20 %]";
  private static final Scalar<Share> SHARE = Amounts.share("30 %", "0 %", "100 %");
  private static final Scalar<Arrivals> WORD =
      Words.choice(
          EXPECTED,
          List.of("even", "early", "late"),
          List.of(Arrivals.EVEN, Arrivals.EARLY, Arrivals.LATE));

  @Override
  public Optional<Arrivals> read(Node node, Problems problems) {
    return node instanceof SequenceNode parts ? shares(parts, problems) : WORD.read(node, problems);
  }

  private static Optional<Arrivals> shares(SequenceNode parts, Problems problems) {
    int count = parts.getValue().size();
    if (count == 0 || count > MOST_PARTS) {
      problems.at(
          parts,
          count == 0 ? "this list is empty" : "this list has " + count + " shares",
          count == 0 ? EXPECTED : "expected " + MOST_PARTS + " at most");
      return Optional.empty();
    }
    List<Share> shares = new ArrayList<>();
    for (Node part : parts.getValue()) {
      SHARE.read(part, problems).ifPresent(shares::add);
    }
    return shares.size() == count && Whole.isWhole(shares, parts, problems)
        ? Optional.of(Arrivals.listed(shares))
        : Optional.empty();
  }

  @Override
  public Shape shape() {
    return new Shape.Parts(WORD.shape(), SHARE.shape());
  }

  @Override
  public String expected() {
    return EXPECTED;
  }
}
