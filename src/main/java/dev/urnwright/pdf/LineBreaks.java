package dev.urnwright.pdf;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.css.style.CalculatedStyle;
import org.xhtmlrenderer.layout.breaker.BreakPoint;
import org.xhtmlrenderer.layout.breaker.BreakPointsProvider;
import org.xhtmlrenderer.layout.breaker.DefaultLineBreakingStrategy;
import org.xhtmlrenderer.layout.breaker.LineBreakingStrategy;
import org.xhtmlrenderer.layout.breaker.ListBreakPointsProvider;

/** Breaks lines as usual, but never a number at its decimal mark. */
final class LineBreaks implements LineBreakingStrategy {
  private final LineBreakingStrategy usual = new DefaultLineBreakingStrategy();

  @Override
  public BreakPointsProvider getBreakPointsProvider(
      String text, String language, CalculatedStyle style) {
    BreakPointsProvider all = usual.getBreakPointsProvider(text, language, style);
    List<BreakPoint> kept = new ArrayList<>();
    for (BreakPoint point = all.next(); isPoint(point); point = all.next()) {
      if (!isInNumber(text, point.getPosition())) {
        kept.add(point);
      }
    }
    return new ListBreakPointsProvider(kept);
  }

  private static boolean isPoint(@Nullable BreakPoint point) {
    return point != null && point.getPosition() >= 0;
  }

  private static boolean isInNumber(String text, int at) {
    return at > 0
        && at < text.length()
        && (text.charAt(at - 1) == ',' || text.charAt(at - 1) == '.')
        && Character.isDigit(text.charAt(at));
  }
}
