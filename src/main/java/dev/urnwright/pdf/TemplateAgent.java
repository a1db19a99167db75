package dev.urnwright.pdf;

import java.io.IOException;
import java.io.InputStream;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextUserAgent;

/** Fetches what templates refer to out of their own folder, and nothing from anywhere else. */
final class TemplateAgent extends ITextUserAgent {
  TemplateAgent(ITextOutputDevice device, int dotsPerPixel) {
    super(device, dotsPerPixel);
  }

  @Override
  public String resolveURI(String uri) {
    return uri;
  }

  @Override
  protected InputStream openStream(String uri) throws IOException {
    return Templates.open(uri);
  }
}
