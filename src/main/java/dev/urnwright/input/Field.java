package dev.urnwright.input;

/**
 * One key of a mapping.
 *
 * @param name the key
 * @param kind what it takes
 * @param required whether it must be there
 * @param help what it is for, in one line
 * @param <T> what it becomes
 */
record Field<T>(String name, Kind<T> kind, boolean required, String help) {
  static <T> Field<T> required(String name, Kind<T> kind, String help) {
    return new Field<>(name, kind, true, help);
  }

  static <T> Field<T> optional(String name, Kind<T> kind, String help) {
    return new Field<>(name, kind, false, help);
  }
}
