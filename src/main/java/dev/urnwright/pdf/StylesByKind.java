package dev.urnwright.pdf;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xhtmlrenderer.context.StyleReference;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.css.newmatch.PageInfo;

/**
 * Finds the style of an element once for all of its kind: those of the same name, attributes and
 * ancestors. The layout by itself tries every selector on every element, which is most of its work
 * on thousands of labels.
 */
final class StylesByKind extends StyleReference {
  /** Selectors by which elements of the same kind may differ, or that look like one. */
  private static final Pattern BY_SIBLINGS =
      Pattern.compile(":\\s*(last-child|nth-child|even|odd)|[+~]");

  private final TemplateAgent agent;
  private final int mostPages;
  private int pages;
  private final Map<Node, Kind> kinds = new IdentityHashMap<>();
  private final Kind root = new Kind();

  /**
   * Styles for one document.
   *
   * @param agent that has read its style sheets when the first style is asked for
   * @param mostPages that the document may take; a head that is larger than its page asks for pages
   *     without an end
   */
  StylesByKind(TemplateAgent agent, int mostPages) {
    super(agent);
    this.agent = agent;
    this.mostPages = mostPages;
  }

  /** Elements that look alike. */
  private static final class Kind {
    private final Map<String, Kind> children = new HashMap<>();
    private final Map<String, Optional<CascadedStyle>> pseudo = new HashMap<>();
    private @Nullable CascadedStyle style;
  }

  /** Whether a style sheet tells elements apart by those beside them, other than the first. */
  static boolean looksAtSiblings(String sheet) {
    return BY_SIBLINGS.matcher(sheet).find();
  }

  @Override
  public CascadedStyle getCascadedStyle(@Nullable Element element, boolean restyle) {
    if (element == null || restyle || agent.siblingsMatter()) {
      return super.getCascadedStyle(element, restyle);
    }
    Kind kind = kind(element);
    CascadedStyle style = kind.style;
    if (style == null) {
      style = super.getCascadedStyle(element, false);
      kind.style = style;
    }
    return style;
  }

  @Override
  public @Nullable CascadedStyle getPseudoElementStyle(Node node, String pseudoElement) {
    Node element = node instanceof Element ? node : node.getParentNode();
    if (agent.siblingsMatter() || element == null) {
      return super.getPseudoElementStyle(node, pseudoElement);
    }
    return kind(element)
        .pseudo
        .computeIfAbsent(
            pseudoElement, name -> Optional.ofNullable(super.getPseudoElementStyle(element, name)))
        .orElse(null);
  }

  /**
   * The style of one page more.
   *
   * @throws IllegalStateException if that is more than the document may take
   */
  @Override
  public PageInfo getPageStyle(@Nullable String pageName, String pseudoPage) {
    if (++pages > mostPages) {
      throw new IllegalStateException("they want more than " + mostPages + " pages");
    }
    return super.getPageStyle(pageName, pseudoPage);
  }

  private Kind kind(Node node) {
    if (!(node instanceof Element element)) {
      return root;
    }
    Kind known = kinds.get(element);
    if (known == null) {
      Node parent = element.getParentNode();
      known =
          (parent == null ? root : kind(parent))
              .children.computeIfAbsent(signature(element), any -> new Kind());
      kinds.put(element, known);
    }
    return known;
  }

  private static String signature(Element element) {
    StringBuilder text = new StringBuilder(element.getNodeName());
    NamedNodeMap attributes = element.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      Node attribute = attributes.item(i);
      text.append('\n')
          .append(attribute.getNodeName())
          .append('=')
          .append(attribute.getNodeValue());
    }
    return isFirst(element) ? text.append('\n').toString() : text.toString();
  }

  private static boolean isFirst(Element element) {
    for (Node before = element.getPreviousSibling();
        before != null;
        before = before.getPreviousSibling()) {
      if (before instanceof Element) {
        return false;
      }
    }
    return true;
  }
}
