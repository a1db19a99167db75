package dev.urnwright.xlsx;

import java.util.HashMap;
import java.util.Map;

/** A line whose formulas are written first and whose planned figures follow. */
final class Cached {
  private final Line line;
  private final Map<String, String> formulas = new HashMap<>();

  Cached(Line line) {
    this.line = line;
  }

  /** Keeps a formula until its figure is known. */
  Cached formula(String key, String template) {
    formulas.put(key, template);
    return this;
  }

  /** Writes the formula with the number that it gives as planned. */
  Cached number(String key, double planned) {
    line.formula(key, formula(key), planned);
    return this;
  }

  /** Writes the formula with the words that it gives as planned. */
  Cached text(String key, String planned) {
    if (line.entry().grid().column(key).format().isText()) {
      line.formulaText(key, formula(key), planned);
    } else {
      line.emptyFormula(key, formula(key));
    }
    return this;
  }

  private String formula(String key) {
    String template = formulas.get(key);
    if (template == null) {
      throw new IllegalArgumentException("no formula was given for " + key);
    }
    return template;
  }
}
