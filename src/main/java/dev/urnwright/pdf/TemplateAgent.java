package dev.urnwright.pdf;

import java.io.IOException;
import java.io.InputStream;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextUserAgent;

/** Fetches what templates refer to out of their own folder, and nothing from anywhere else. */
final class TemplateAgent extends ITextUserAgent {
  private final TemplateFolder folder;
  private final PlainXhtml plain;

  TemplateAgent(
      TemplateFolder folder, PlainXhtml plain, ITextOutputDevice device, int dotsPerPixel) {
    super(device, dotsPerPixel);
    this.folder = folder;
    this.plain = plain;
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
    if (PlainXhtml.is(uri)) {
      return plain.open();
    }
    try {
      return folder.open(uri);
    } catch (IOException missing) {
      throw new BrokenTemplateException(String.valueOf(missing.getMessage()), missing);
    }
  }
}
