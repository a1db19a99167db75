package dev.urnwright.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextUserAgent;
import org.xhtmlrenderer.simple.extend.XhtmlNamespaceHandler;

/** Fetches what templates refer to out of their own folder, and nothing from anywhere else. */
final class TemplateAgent extends ITextUserAgent {
  /** How plain XHTML looks: the layout library's own style sheet. */
  private static final URL PLAIN_XHTML =
      XhtmlNamespaceHandler.class.getResource("/resources/css/XhtmlNamespaceHandler.css");

  private final TemplateFolder folder;

  TemplateAgent(TemplateFolder folder, ITextOutputDevice device, int dotsPerPixel) {
    super(device, dotsPerPixel);
    this.folder = folder;
  }

  @Override
  public @Nullable String resolveURI(@Nullable String uri) {
    return uri;
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
