package dev.urnwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

class TableTest {
  @Test
  void namesGoLeftAndFiguresRight() {
    Table table = new Table(List.of("group", "bypass"));
    table.row(List.of("Visitors", "395 g"), "");
    table.row(List.of("Crew", "1715 g"), "in the barn");
    assertEquals(
        """
          group     bypass
          Visitors   395 g
          Crew      1715 g
            in the barn
        """,
        printed(table, 40));
  }

  @Test
  void aLongNameIsWrappedAndTheFigureIsWhole() {
    Table table = new Table(List.of("group", "bypass"));
    table.row(List.of("The friends of the old orchard", "1715 g"), "");
    assertEquals(
        """
          group            bypass
          The friends of   1715 g
          the old orchard
        """,
        printed(table, 25));
  }

  @Test
  void anEndlessNameEndsInDots() {
    Table table = new Table(List.of("group", "bypass"));
    table.row(List.of("a".repeat(60), "1715 g"), "");
    assertEquals(
        """
          group       bypass
          aaaaaaaaaa  1715 g
          aaaaaaaaaa
          aaaaaaaaaa
          ...
        """,
        printed(table, 20));
  }

  @Test
  void withoutRoomForColumnsARowBecomesAList() {
    Table table = new Table(List.of("group", "concentrate", "bypass"));
    table.row(List.of("Visitors", "1715 g", "395 g"), "");
    assertEquals(
        """
          Visitors
            concentrate: 1715 g
            bypass: 395 g
        """,
        printed(table, 26));
  }

  private static String printed(Table table, int columns) {
    StringWriter text = new StringWriter();
    table.print(new Screen(new PrintWriter(text), Palette.PLAIN, columns));
    return text.toString().replace(System.lineSeparator(), "\n");
  }
}
