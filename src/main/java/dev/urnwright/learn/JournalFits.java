package dev.urnwright.learn;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.journal.BrewEntry;
import dev.urnwright.quantity.Display;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** All that a journal teaches of brewing, for each coffee on each kind of brewer. */
public final class JournalFits {
  private JournalFits() {}

  /**
   * What was brewed alike.
   *
   * @param coffee its name in the journal
   * @param brewer the kind of brewer, when it was noted
   * @param method how it was brewed
   */
  public record Brewed(String coffee, Optional<String> brewer, BrewMethod method)
      implements Comparable<Brewed> {
    private static final Comparator<Brewed> BY_NAME =
        Comparator.comparing(Brewed::coffee)
            .thenComparing(brewed -> brewed.brewer().orElse(""))
            .thenComparing(Brewed::method);

    static Brewed of(BrewEntry entry) {
      return new Brewed(entry.coffee(), entry.brewer(), entry.method());
    }

    @Override
    public int compareTo(Brewed other) {
      return BY_NAME.compare(this, other);
    }
  }

  /**
   * Learns from all entries, where no event file says what was believed before: from {@link
   * Starting#usual}, with the steam loss of the latest entry.
   *
   * @param entries the oldest first
   * @return in the order of the names
   */
  public static Map<Brewed, Fit> of(List<BrewEntry> entries, Display display) {
    Map<Brewed, Fit> fits = new TreeMap<>();
    entries.stream()
        .collect(Collectors.groupingBy(Brewed::of))
        .forEach(
            (brewed, alike) ->
                fits.put(
                    brewed,
                    new BrewFitter(display)
                        .fit(
                            Starting.usual(
                                brewed.method(), alike.get(alike.size() - 1).steamLoss()),
                            alike)));
    return fits;
  }
}
