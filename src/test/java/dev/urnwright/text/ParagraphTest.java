package dev.urnwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ParagraphTest {
  @Test
  void linesBreakAtBlanks() {
    assertEquals(
        List.of("brew water", "through the", "grounds"),
        Paragraph.wrap("brew water through the grounds", 11));
  }

  @Test
  void numberAndUnitStayTogether() {
    assertEquals(
        List.of("weigh in", "1715\u00a0g of it"), Paragraph.wrap("weigh in 1715\u00a0g of it", 12));
  }

  @Test
  void aWordWiderThanTheLineIsBrokenWithin() {
    assertEquals(List.of("a", "abcdef", "gh b"), Paragraph.wrap("a abcdefgh b", 6));
  }

  @Test
  void lettersOfTwoColumnsCountTwice() {
    assertEquals(List.of("珈琲の", "会 a"), Paragraph.wrap("珈琲の会 a", 7));
  }

  @Test
  void nothingIsOneEmptyLine() {
    assertEquals(List.of(""), Paragraph.wrap("", 10));
    assertEquals(List.of(""), Paragraph.wrap(" \n ", 10));
  }

  @Test
  void laterLinesHangUnderTheFirst() {
    assertEquals(List.of("  ! hot", "    water"), Paragraph.hang("  ! ", "hot water", 10));
  }

  @Test
  void oneColumnIsTooFewForALetterOfTwo() {
    assertThrows(IllegalArgumentException.class, () -> Paragraph.wrap("a", 1));
  }

  /** Widths from Unicode Standard Annex 11: W and F take two columns, combining marks none. */
  @ParameterizedTest
  @CsvSource({"abc, 3", "é, 1", "e\u0301, 1", "珈琲, 4", "ｶ, 1", "Ａ, 2", "한글, 4", "☕, 2", "🫖, 2"})
  void widthsOfLetters(String text, int columns) {
    assertEquals(columns, ScreenText.width(text));
  }

  @ParameterizedTest
  @CsvSource({
    "'a\u001b[31mb', 'a[31mb'",
    "'a\u0007b', ab",
    "'a\nb', 'a b'",
    "'a\u202eb', ab",
    "'a\u0085b', ab"
  })
  void whatMovesTheCursorIsLeftOut(String given, String shown) {
    assertEquals(shown, ScreenText.clean(given));
  }
}
