package dev.urnwright.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.xhtmlrenderer.layout.breaker.BreakPoint;
import org.xhtmlrenderer.layout.breaker.BreakPointsProvider;

/** Where lines may be broken. The reference is Java's own {@link java.text.BreakIterator}. */
class LineBreaksTest {
  private static final String LETTERS = "ab1 23 \u00a0.,:%·×=+äé -/–(";

  private final LineBreaks breaks = new LineBreaks();

  @Test
  void plainTextsAreBrokenWhereJavaWould() {
    Random random = new Random(11);
    int plain = 0;
    for (int i = 0; i < 300_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int length = random.nextInt(10); length > 0; length--) {
        text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
      }
      if (LineBreaks.isPlain(text.toString())) {
        plain++;
      }
      assertEquals(
          points(breaks.careful(text.toString(), "en", null)),
          at(text.toString()),
          "[" + text + "]");
    }
    assertTrue(plain > 50_000, "too few plain texts to tell: " + plain);
  }

  @Test
  void wordsOfASheetArePlain() {
    assertTrue(LineBreaks.isPlain("Büro 12, 3. Stock: 2,90\u00a0kg · mild 1.30\u00a0%"));
    assertFalse(LineBreaks.isPlain("Boathouse (upper)"));
    assertFalse(LineBreaks.isPlain("well-kept"));
    assertFalse(LineBreaks.isPlain("Кофе"));
  }

  @Test
  void numbersAndTimesAreNotBroken() {
    assertEquals(List.of(5, 12, 17), at("0.25 13:15, 1:2.5"));
    assertEquals(List.of(6, 12), at("07:30–10:00 "));
  }

  private List<Integer> at(String text) {
    return points(breaks.getBreakPointsProvider(text, "en", null));
  }

  private static List<Integer> points(BreakPointsProvider provider) {
    List<Integer> points = new ArrayList<>();
    for (BreakPoint point = provider.next();
        point != null && point.getPosition() >= 0;
        point = provider.next()) {
      points.add(point.getPosition());
    }
    return points;
  }
}
