package dev.urnwright.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextUserAgent;
import org.xhtmlrenderer.resource.CSSResource;
import org.xhtmlrenderer.simple.extend.XhtmlNamespaceHandler;

/** Fetches what templates refer to out of their own folder, and nothing from anywhere else. */
final class TemplateAgent extends ITextUserAgent {
  /** How plain XHTML looks: the layout library's own style sheet. */
  private static final @Nullable URL PLAIN_XHTML =
      XhtmlNamespaceHandler.class.getResource("/resources/css/XhtmlNamespaceHandler.css");

  private final TemplateFolder folder;
  private boolean siblingsMatter;

  TemplateAgent(
      TemplateFolder folder, Document document, ITextOutputDevice device, int dotsPerPixel) {
    super(device, dotsPerPixel);
    this.folder = folder;
    NodeList styles = document.getElementsByTagName("style");
    for (int i = 0; i < styles.getLength(); i++) {
      siblingsMatter |= StylesByKind.looksAtSiblings(styles.item(i).getTextContent());
    }
  }

  /** Whether a style sheet read so far tells elements apart by those beside them. */
  boolean siblingsMatter() {
    return siblingsMatter;
  }

  @Override
  public @Nullable String resolveURI(@Nullable String uri) {
    return uri;
  }

  @Override
  public CSSResource getCSSResource(String uri) {
    try (InputStream in = openStream(uri)) {
      byte[] sheet = in.readAllBytes();
      siblingsMatter |= StylesByKind.looksAtSiblings(new String(sheet, StandardCharsets.UTF_8));
      return new CSSResource(new ByteArrayInputStream(sheet));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /**
   * {@inheritDoc}
   *
   * @throws BrokenTemplateException if the folder has no such file; the layout would go on without
   */
  @Override
  protected InputStream openStream(String uri) throws IOException {
    if (PLAIN_XHTML != null && uri.equals(PLAIN_XHTML.toString())) {
      return PLAIN_XHTML.openStream();
    }
    try {
      return folder.open(uri);
    } catch (IOException missing) {
      throw new BrokenTemplateException(String.valueOf(missing.getMessage()), missing);
    }
  }
}
