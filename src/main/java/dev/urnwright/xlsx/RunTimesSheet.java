package dev.urnwright.xlsx;

import dev.urnwright.plan.Run;
import dev.urnwright.plan.Run.BatchTime;
import dev.urnwright.plan.Run.FillTime;
import dev.urnwright.schedule.BrewerUnit;
import java.util.List;
import java.util.stream.Stream;

/** When each dispenser is filled, poured and emptied, and when each batch is brewed; as planned. */
final class RunTimesSheet {
  private static final int BATCHES_COLUMN = 12;
  private static final int GAP = 3;

  private RunTimesSheet() {}

  static Grid fills(Units units, Format time) {
    return Grid.down(
        Layout.RUN_TIMES,
        Page.FIRST_ITEM,
        List.of(
            new Column("id", "Fill", Format.TEXT, 13),
            new Column("group", "Group", Format.TEXT, 24),
            new Column("coffee", "Coffee", Format.TEXT, 24),
            new Column("unit", "Dispenser", Format.TEXT, 18),
            new Column("station", "Station", Format.TEXT, 16),
            new Column("tap", "Side by side", Format.TEXT, 11),
            new Column("filled", "Filled", time, 11),
            new Column("due", "First pour", time, 11),
            new Column("lastPour", "Last pour", time, 11),
            new Column("useBy", "Use by", time, 11),
            new Column("warm", "At last pour, " + units.temperature(), Format.WHOLE, 11)));
  }

  static Grid batches(Format time) {
    return new Grid(
        Layout.RUN_TIMES,
        false,
        Page.FIRST_ITEM,
        BATCHES_COLUMN,
        List.of(
            new Column("id", "Batch", Format.TEXT, 13),
            new Column("unit", "Brewer", Format.TEXT, 18),
            new Column("start", "Start", time, 11),
            new Column("ready", "Ready", time, 11)));
  }

  static void write(Book book, Run run) {
    Grid fills = book.layout().fillTimes();
    Grid batches = book.layout().batchTimes();
    Page page =
        Page.of(book, Layout.RUN_TIMES, true)
            .widths(
                Stream.of(
                        fills.columns().stream().map(Column::width),
                        Stream.of(GAP),
                        batches.columns().stream().map(Column::width))
                    .flatMap(widths -> widths)
                    .toList())
            .title(
                "Run times",
                "When each dispenser is filled, first and last poured, and no longer good; when"
                    + " each batch starts and is ready. As planned: they do not follow changes,"
                    + " plan again.")
            .header(fills)
            .header(batches)
            .freeze(1, Page.FIRST_ITEM)
            .warn(
                BATCHES_COLUMN + batches.columns().size() - 1,
                Clock.changed(book),
                RunSheet.CHANGED);
    for (int i = 0; i < run.fills().size(); i++) {
      fill(book, page.line(fills.entry(i)), run.fills().get(i));
    }
    for (int i = 0; i < run.batches().size(); i++) {
      BatchTime time = run.batches().get(i);
      page.line(batches.entry(i))
          .text("id", time.batch().id())
          .text("unit", time.batch().unit().map(BrewerUnit::label).orElse("–"))
          .number("start", Clock.days(time.start()))
          .number("ready", Clock.days(time.ready()));
    }
    page.finish();
  }

  private static String coffee(Book book, FillTime time) {
    return book.plan().groups().stream()
        .filter(group -> group.fills().contains(time.fill()))
        .findFirst()
        .map(group -> Words.coffee(group.coffee()))
        .orElseThrow();
  }

  private static void fill(Book book, Line line, FillTime time) {
    line.text("id", time.fill().id())
        .text("group", time.fill().groupName())
        .text("coffee", coffee(book, time))
        .text("unit", time.unit())
        .text("station", time.station().orElse("–"))
        .text("tap", time.tap().hasOthers() ? time.tap().toString() : "–")
        .number("filled", Clock.days(time.filled()))
        .number("due", Clock.days(time.due()))
        .number("lastPour", Clock.days(time.lastPour()))
        .number("useBy", Clock.days(time.useBy()));
    time.heat()
        .ifPresentOrElse(
            heat -> line.number("warm", book.units().of(heat.lastPour())),
            () -> line.blank("warm"));
  }
}
