package dev.urnwright.sheet;

import dev.urnwright.plan.PackingLine;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.wording.Words;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A part of the load, to tick off.
 *
 * @param title of the part
 * @param rows what to take along
 */
record PackingPart(String title, List<Row> rows) {
  static List<PackingPart> of(Plan plan, Display display, Words words) {
    List<PackingLine> lines = plan.packing();
    return Arrays.stream(PackingLine.Part.values())
        .map(
            part ->
                new PackingPart(
                    words.text(part.saying()),
                    lines.stream()
                        .filter(line -> line.part() == part)
                        .map(line -> Row.of(line, display, words))
                        .toList()))
        .filter(part -> !part.rows().isEmpty())
        .toList();
  }

  /**
   * Something to take along.
   *
   * @param item what
   * @param amount how much or how many, when the plan knows
   * @param detail numbers, circuits, stations; may be empty
   */
  record Row(Name item, Optional<String> amount, String detail) {
    private static Row of(PackingLine line, Display display, Words words) {
      return new Row(
          new Name(words.text(line.what())),
          line.amount().map(display::amount),
          line.how().map(words::text).orElse(""));
    }
  }
}
