package dev.urnwright.text;

import dev.urnwright.sheet.ReportView;
import dev.urnwright.sheet.ReportView.Both;
import dev.urnwright.sheet.ReportView.Part;
import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Stream;

/** Writes what became of an event for reading on a terminal. */
public final class ReportText {
  private final Palette palette;

  /** Text with that emphasis. */
  public ReportText(Palette palette) {
    this.palette = palette;
  }

  /** Writes it in lines of at most {@link PlanText#COLUMNS}. */
  public void write(ReportView view, PrintWriter out) {
    Screen screen = new Screen(out, palette, PlanText.COLUMNS);
    for (Part part : view.coffees()) {
      screen.title(part.coffee().toString());
      Table batches = new Table(List.of("batch", "", "beverage", "strength", "extraction", "kept"));
      part.batches()
          .forEach(
              row -> {
                List<Both> shown =
                    List.of(row.beverage(), row.strength(), row.extraction(), row.absorption());
                batches.row(cells(row.id(), "planned", shown.stream().map(Both::planned)), "");
                batches.row(cells("", "measured", shown.stream().map(Both::measured)), "");
              });
      batches.print(screen);
      screen.gap();
      Table groups = new Table(List.of("group", "guests", "planned", "poured", "back", "cost"));
      part.groups()
          .forEach(
              row ->
                  groups.row(
                      List.of(
                          row.group().text(),
                          row.guests().measured(),
                          row.cups().planned() + " cups",
                          row.cups().measured(),
                          row.cameBack(),
                          row.cost().orElse("")),
                      ""));
      groups.sum(List.of("together", "", "", "", part.cameBack(), part.cost().orElse("")));
      groups.print(screen);
      screen.gap();
    }
    screen.line(
        Screen.INDENT + ReportView.UNKNOWN + " was not measured, and is left out of the sums.");
  }

  private static List<String> cells(String first, String second, Stream<String> rest) {
    return Stream.concat(Stream.of(first, second), rest).toList();
  }
}
