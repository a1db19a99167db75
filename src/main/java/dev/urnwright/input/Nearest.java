package dev.urnwright.input;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name that somebody most likely meant. */
final class Nearest {
  private static final int MOST_LISTED = 24;
  private static final int MOST_COMPARED = 1000;
  private static final int LONGEST_COMPARED = 100;

  private Nearest() {}

  /**
   * What was expected instead of a name: {@code did you mean 'headcount'? known keys: …}.
   *
   * @param heading such as {@code known keys}
   */
  static String among(String name, Collection<String> known, String heading) {
    if (known.isEmpty()) {
      return heading + ": none";
    }
    List<String> listed = known.stream().limit(MOST_LISTED).toList();
    String list = heading + ": " + String.join(", ", listed);
    if (known.size() > listed.size()) {
      list += " and " + (known.size() - listed.size()) + " more";
    }
    String rest = list;
    return to(name, known).map(near -> "did you mean '" + near + "'? " + rest).orElse(list);
  }

  /** The known name nearest to this one, when few letters have to change. */
  static Optional<String> to(String name, Collection<String> known) {
    String wanted = bare(name);
    String best = "";
    int least = 1 + Math.max(1, wanted.length() / 3);
    if (wanted.length() > LONGEST_COMPARED) {
      return Optional.empty();
    }
    for (String candidate : known.stream().limit(MOST_COMPARED).toList()) {
      String bare = bare(candidate);
      int distance =
          Math.abs(bare.length() - wanted.length()) >= least ? least : distance(wanted, bare);
      if (distance < least) {
        least = distance;
        best = candidate;
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(best);
  }

  private static String bare(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
  }

  /** Letters to insert, drop, change or swap with their neighbour. */
  private static int distance(String a, String b) {
    int[][] steps = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          steps[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int step = Math.min(steps[i - 1][j], steps[i][j - 1]) + 1;
        step = Math.min(step, steps[i - 1][j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          step = Math.min(step, steps[i - 2][j - 2] + 1);
        }
        steps[i][j] = step;
      }
    }
    return steps[a.length()][b.length()];
  }
}
