package dev.urnwright.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** A style sheet keeps all that concerns a document. */
class PlainXhtmlTest {
  @Test
  void selectorsOfOtherElementsAreLeftOut() throws Exception {
    assertEquals(
        "html,p{display:block}b{font-weight:bold}",
        needed(
            "<html><p><b>x</b></p></html>",
            "html, ul,p { display: block } b, i { font-weight: bold }"));
  }

  @Test
  void everyElementOfASelectorMustBeThere() throws Exception {
    String sheet =
        "table[align=\"left\"] > caption { margin: 0 } a:link, td:first-child { color: red }";
    assertEquals("", needed("<html><table/></html>", sheet));
    assertEquals(
        "table[align=\"left\"]>caption{margin:0}", needed("<table><caption/></table>", sheet));
    assertEquals("td:first-child{color:red}", needed("<td/>", sheet));
  }

  @Test
  void whatConcernsNoElementStays() throws Exception {
    assertEquals(
        "@page{margin:1in}*{color:red}.x{color:blue}",
        needed(
            "<html/>",
            "/* p { } */@page { margin: 1in } * { color: red } .x, p .x { color: blue }"));
  }

  private static String needed(String xhtml, String sheet) throws Exception {
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(xhtml)));
    return new PlainXhtml(document).needed(sheet).replaceAll("\\s+", "");
  }
}
