package dev.urnwright.xlsx;

import dev.urnwright.plan.Run;
import dev.urnwright.plan.Run.Action;
import java.util.List;

/** Everything that hands must do, in order of time, as planned. */
final class RunSheet {
  static final String CHANGED = "Inputs have changed: plan again";

  private RunSheet() {}

  static Grid grid(Format time) {
    return Grid.down(
        Layout.RUN,
        Page.FIRST_ITEM,
        List.of(
            new Column("time", "Time", time, 12),
            new Column("done", "Done", Format.TEXT, 7),
            new Column("do", "Do", Format.TEXT, 12),
            new Column("what", "What", Format.TEXT, 18),
            new Column("where", "Where", Format.TEXT, 22),
            new Column("detail", "Detail", Format.TEXT, 62)));
  }

  static void write(Book book, Run run) {
    Grid grid = book.layout().actions();
    Page page =
        Page.of(book, Layout.RUN, true)
            .widths(grid.columns().stream().map(Column::width).toList())
            .title(
                "Run",
                "What to do, in order of time. It is as planned and does not follow changes: plan"
                    + " again. Hot liquid scalds and full dispensers are heavy: use two hands,"
                    + " keep the path clear, follow your local rules.")
            .header(grid)
            .freeze(1, Page.FIRST_ITEM)
            .warn(grid.columns().size() - 1, Clock.changed(book), CHANGED);
    List<Action> actions = run.actions();
    for (int i = 0; i < actions.size(); i++) {
      Action action = actions.get(i);
      page.line(grid.entry(i))
          .number("time", Clock.days(action.at()))
          .blankInput("done")
          .text("do", action.kind().words())
          .text("what", action.what())
          .text("where", action.where())
          .text("detail", action.detail());
    }
    page.finish();
  }
}
