package dev.urnwright.input;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the known name that somebody most likely meant. */
public final class Nearest {
  private static final int MOST_LISTED = 24;
  private static final int MOST_COMPARED = 1000;
  private static final int LONGEST_COMPARED = 100;

  private Nearest() {}

  /** What was expected instead of a name: {@code did you mean 'medium'? known: mild, medium}. */
  public static String among(String name, Collection<String> known) {
    return among(name, known, known.isEmpty() ? "none is known" : "known: " + list(known));
  }

  /** The same, with the list of the known names already in words. */
  static String among(String name, Collection<String> known, String list) {
    return to(name, known)
        .map(near -> "did you mean " + Words.quoted(near) + "? " + list)
        .orElse(list);
  }

  private static String list(Collection<String> known) {
    String listed =
        known.stream().limit(MOST_LISTED).map(Words::plain).collect(Collectors.joining(", "));
    return known.size() <= MOST_LISTED
        ? listed
        : listed + " and " + (known.size() - MOST_LISTED) + " more";
  }

  /** The known name nearest to this one, when few letters have to change. */
  public static Optional<String> to(String name, Collection<String> known) {
    if (name.length() > LONGEST_COMPARED) {
      return Optional.empty();
    }
    List<String> longer = known.stream().filter(candidate -> begins(candidate, name)).toList();
    if (longer.size() == 1) {
      return Optional.of(longer.get(0));
    }
    String wanted = bare(name);
    String best = "";
    int least = 1 + Math.max(1, wanted.length() / 3);
    int compared = 0;
    for (String candidate : known) {
      if (++compared > MOST_COMPARED) {
        break;
      }
      String bare = bare(candidate);
      if (Math.abs(bare.length() - wanted.length()) < least) {
        int distance = distance(wanted, bare);
        if (distance < least) {
          least = distance;
          best = candidate;
        }
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(best);
  }

  /** Whether somebody left out the name's second word: {@code cups} for {@code cups_each}. */
  private static boolean begins(String candidate, String name) {
    return candidate.startsWith(name + "_") || candidate.startsWith(name + " ");
  }

  private static String bare(String name) {
    StringBuilder bare = new StringBuilder(name.length());
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (c != ' ' && c != '_' && c != '-') {
        bare.append(Character.toLowerCase(c));
      }
    }
    return bare.toString();
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
