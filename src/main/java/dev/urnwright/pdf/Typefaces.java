package dev.urnwright.pdf;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.xhtmlrenderer.pdf.FontFamily;
import org.xhtmlrenderer.pdf.ITextFontResolver;

/**
 * The two faces that sheets are set in, embedded: DejaVu Sans Condensed, regular and bold. It has
 * accents, Greek, Cyrillic and the signs of a prep sheet.
 */
final class Typefaces {
  /** The family's name in style sheets. */
  static final String FAMILY = "DejaVu Sans Condensed";

  private static final String FOLDER = "net/sf/jasperreports/fonts/dejavu/";
  private static final char REPLACEMENT = '\ufffd';

  private final BaseFont regular;
  private final BaseFont bold;

  Typefaces() throws IOException {
    try {
      regular = face("DejaVuSansCondensed.ttf");
      bold = face("DejaVuSansCondensed-Bold.ttf");
    } catch (DocumentException failure) {
      throw new IOException("a typeface can't be read", failure);
    }
  }

  private static BaseFont face(String file) throws DocumentException, IOException {
    return BaseFont.createFont(FOLDER + file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED);
  }

  BaseFont face(boolean wantsBold) {
    return wantsBold ? bold : regular;
  }

  /** Knows these two faces only; the built-in ones, which can't be embedded, are never loaded. */
  ITextFontResolver resolver() {
    ITextFontResolver resolver =
        new ITextFontResolver() {
          @Override
          protected Map<String, FontFamily> loadFonts() {
            return new HashMap<>();
          }
        };
    for (String family : new String[] {FAMILY, "Serif"}) {
      addFaces(resolver, family);
    }
    return resolver;
  }

  /** {@code Serif} is what the layout falls back to for families that it doesn't know. */
  private static void addFaces(ITextFontResolver resolver, String family) {
    try {
      resolver.addFont(FOLDER + "DejaVuSansCondensed.ttf", family, BaseFont.IDENTITY_H, true, null);
      resolver.addFont(
          FOLDER + "DejaVuSansCondensed-Bold.ttf", family, BaseFont.IDENTITY_H, true, null);
    } catch (DocumentException | IOException failure) {
      throw new IllegalStateException("a typeface can't be read", failure);
    }
  }

  /** The text with every letter that the faces lack replaced by a sign that shows the lack. */
  String shown(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            letter -> {
              if (Character.isWhitespace(letter)) {
                shown.append(' ');
              } else if (Character.isISOControl(letter) || !regular.charExists(letter)) {
                shown.append(REPLACEMENT);
              } else {
                shown.appendCodePoint(letter);
              }
            });
    return shown.toString();
  }
}
