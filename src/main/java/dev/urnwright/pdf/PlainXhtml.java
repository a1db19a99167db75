package dev.urnwright.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xhtmlrenderer.simple.extend.XhtmlNamespaceHandler;

/**
 * How plain XHTML looks: the layout library's own style sheet. The layout tries every selector on
 * every element, so those of elements that a document doesn't have are left out.
 */
final class PlainXhtml {
  private static final @Nullable URL SHEET =
      XhtmlNamespaceHandler.class.getResource("/resources/css/XhtmlNamespaceHandler.css");

  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
  private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)}");
  private static final Pattern CONDITION = Pattern.compile("\\[[^]]*]|[.#:]+[\\w-]+");
  private static final Pattern ELEMENT = Pattern.compile("[a-zA-Z][\\w-]*");

  private final Set<String> elements = new HashSet<>();

  /** That for a document. */
  PlainXhtml(Document document) {
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      elements.add(all.item(i).getNodeName().toLowerCase(Locale.ROOT));
    }
  }

  static boolean is(String uri) {
    return SHEET != null && uri.equals(SHEET.toString());
  }

  InputStream open() throws IOException {
    if (SHEET == null) {
      throw new IOException("the layout library has no style sheet for plain XHTML");
    }
    try (InputStream in = SHEET.openStream()) {
      String whole = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return new ByteArrayInputStream(needed(whole).getBytes(StandardCharsets.UTF_8));
    }
  }

  /** The rules that concern an element of the document, and those that concern none. */
  String needed(String sheet) {
    return RULE.matcher(COMMENT.matcher(sheet).replaceAll(" "))
        .replaceAll(rule -> Matcher.quoteReplacement(needed(rule)));
  }

  private String needed(MatchResult rule) {
    String selectors =
        Arrays.stream(rule.group(1).split(","))
            .filter(this::concerns)
            .collect(Collectors.joining(","));
    return selectors.isBlank() ? "" : selectors + "{" + rule.group(2) + "}";
  }

  private boolean concerns(String selector) {
    return selector.strip().startsWith("@")
        || ELEMENT
            .matcher(CONDITION.matcher(selector).replaceAll(""))
            .results()
            .allMatch(name -> elements.contains(name.group().toLowerCase(Locale.ROOT)));
  }
}
