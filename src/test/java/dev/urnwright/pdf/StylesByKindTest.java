package dev.urnwright.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xhtmlrenderer.context.StyleReference;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xml.sax.InputSource;

/** An element's style is what the layout library itself would find for it. */
class StylesByKindTest {
  private static final String BODY =
      """
      <body class="on-A4"><div class="sheet"><h1>One</h1>
      <table class="list"><thead><tr><th class="num">n</th><th>x</th></tr></thead>
      <tbody><tr><td class="num">1</td><td><b>a</b> <i>b</i><b>c</b></td></tr>
      <tr><td>2</td><td class="num"><span class="box"/><span class="line short"/></td></tr>
      <tr id="third"><td width="20%">3</td><td lang="fr">x<br/>y</td></tr></tbody></table></div>
      <div class="sheet"><h1>Two</h1><p class="note">n</p><p class="note">m</p></div>
      <div class="running"><table class="list"><tr><td><b>a</b></td></tr></table></div></body>
      """;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        ".num { color: red } td.num { color: blue } tr td { padding: 1pt } .box:before { content: 'x' }",
        ".sheet:first-child h1 { color: red } .running td { margin: 2pt } .list > tbody { color: blue }",
        "tr:last-child td { color: red }",
        "tr:nth-child(2) { color: red } td:nth-child(odd) { color: blue }",
        "tr:even { color: red } p:odd { color: blue }",
        "b + i { color: red } th + th { color: blue }",
        "td[width] { color: red } #third { color: blue } :lang(fr) { color: green }"
      })
  void everyElementLooksAsTheLibraryWouldHaveIt(String sheet) throws Exception {
    assertEquals(styles(sheet, false), styles(sheet, true));
  }

  @Test
  void selectorsThatLookAtSiblingsAreKnown() {
    assertTrue(StylesByKind.looksAtSiblings("tr:last-child { color: red }"));
    assertTrue(StylesByKind.looksAtSiblings("p + p { color: red }"));
  }

  private static List<String> styles(String sheet, boolean byKind) throws Exception {
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(
                new InputSource(
                    new StringReader(
                        "<html><head><link rel=\"stylesheet\" type=\"text/css\" href=\"round-leg.css\"/>"
                            + "<style type=\"text/css\"><![CDATA["
                            + sheet
                            + "]]></style></head>"
                            + BODY
                            + "</html>")));
    ITextOutputDevice device = new ITextOutputDevice(ITextRenderer.DEFAULT_DOTS_PER_POINT);
    TemplateAgent agent =
        new TemplateAgent(
            TemplateFolder.SHIPPED, document, device, ITextRenderer.DEFAULT_DOTS_PER_PIXEL);
    ITextRenderer renderer = new ITextRenderer(device, agent);
    if (byKind) {
      renderer.getSharedContext().setCss(new StylesByKind(agent, 10));
    }
    renderer.setDocument(document, "");
    StyleReference css = renderer.getSharedContext().getCss();
    List<String> found = new ArrayList<>();
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      CascadedStyle before = css.getPseudoElementStyle(element, "before");
      found.add(
          element.getNodeName()
              + " "
              + css.getCascadedStyle(element, false).getFingerprint()
              + " "
              + (before == null ? "" : before.getFingerprint()));
    }
    return found;
  }
}
