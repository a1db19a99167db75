package dev.urnwright.input;

import java.util.Collection;

/** Checks that what a name refers to exists. */
final class References {
  private References() {}

  /** A problem unless the name is one of those known. */
  static boolean check(
      Located<String> named, String what, Collection<String> known, Problems problems) {
    return check(named, what, known, "list it under " + what + "s", problems);
  }

  /** The same, with what to do where there are no such names at all. */
  static boolean check(
      Located<String> named,
      String what,
      Collection<String> known,
      String whereNone,
      Problems problems) {
    if (known.contains(named.value())) {
      return true;
    }
    problems.at(
        named.location(),
        "no " + what + " is called " + Words.quoted(named.value()),
        known.isEmpty() ? whereNone : Nearest.among(named.value(), known));
    return false;
  }
}
