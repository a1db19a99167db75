package dev.urnwright.xlsx;

import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Run;
import java.time.LocalDateTime;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.DateUtil;

/** Times of the run, and the words that they don't follow. */
final class Clock {
  static final Format TIME = new Format("hh:mm");

  private static final Format DAY_AND_TIME = new Format("d mmm hh:mm");

  /** Cached figures and formulas agree better than this; a changed guest shows. */
  private static final double SAME = 1e-4;

  private Clock() {}

  /** How times are shown: with their day where the work goes past midnight. */
  static Format format(Plan plan, Run run) {
    boolean oneDay = times(run).map(LocalDateTime::toLocalDate).distinct().limit(2).count() < 2;
    return oneDay || plan.event().date().isEmpty() ? TIME : DAY_AND_TIME;
  }

  private static Stream<LocalDateTime> times(Run run) {
    return Stream.concat(
        run.actions().stream().map(Run.Action::at),
        run.fills().stream().flatMap(fill -> Stream.of(fill.filled(), fill.useBy())));
  }

  /** Days as spreadsheets count them. */
  static double days(LocalDateTime time) {
    return DateUtil.getExcelDate(time);
  }

  /** Whether a coffee takes another dose, another bypass or other fills than were planned. */
  static String changed(Book book) {
    double dose = 0;
    double bypass = 0;
    for (CoffeePlan coffee : book.plan().coffees()) {
      dose += book.units().of(coffee.needed().brew().dose());
      bypass += book.units().of(coffee.needed().blend().bypass());
    }
    return "OR("
        + differs("dose", dose)
        + ","
        + differs("bypass", bypass)
        + ",SUM("
        + CoffeesSheet.all("fills")
        + ")<>"
        + book.plan().fills().size()
        + ")";
  }

  private static String differs(String key, double planned) {
    return "ABS(SUM(" + CoffeesSheet.all(key) + ")-" + planned + ")>" + SAME * (1 + planned);
  }
}
