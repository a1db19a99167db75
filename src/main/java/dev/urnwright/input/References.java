package dev.urnwright.input;

import java.util.Collection;

/** Checks that what a name refers to exists. */
final class References {
  private References() {}

  /** A problem unless the name is one of those known. */
  static boolean check(
      Located<String> named, String what, Collection<String> known, Problems problems) {
    if (known.contains(named.value())) {
      return true;
    }
    problems.at(
        named.location(),
        "no " + what + " is called " + Words.quoted(named.value()),
        Nearest.among(named.value(), known));
    return false;
  }
}
