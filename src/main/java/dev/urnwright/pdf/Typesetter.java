package dev.urnwright.pdf;

import static java.util.Objects.requireNonNull;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import dev.urnwright.wording.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.util.Set;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xhtmlrenderer.pdf.DefaultPDFCreationListener;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.pdf.ITextTextRenderer;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** Fills a template, lays it out on pages and writes them. */
final class Typesetter {
  /** More than any firm prints at once. */
  private static final int MOST_PAGES = 10_000;

  private final Typefaces typefaces;
  private final TemplateFolder folder;
  private final Words words;
  private final Templates templates;

  Typesetter(TemplateFolder folder, Words words) throws IOException {
    this.folder = folder;
    this.words = words;
    typefaces = new Typefaces();
    templates = new Templates(folder, words, typefaces);
  }

  /**
   * Writes.
   *
   * @throws BrokenTemplateException if a firm's own templates can't be filled or laid out
   */
  void write(String template, Object view, Drawings drawings, OutputStream out) throws IOException {
    if (!folder.isFirms()) {
      print(template, view, drawings, out);
      return;
    }
    try {
      print(template, view, drawings, out);
    } catch (BrokenTemplateException wrong) {
      throw wrong;
    } catch (StackOverflowError tooDeep) {
      throw broken("nested too deep, or one includes itself", tooDeep);
    } catch (IllegalArgumentException | IllegalStateException wrong) {
      throw broken(String.valueOf(wrong.getMessage()), wrong);
    } catch (RuntimeException wrong) {
      // The layout fails in many ways on what it doesn't expect.
      throw broken("something in them can't be printed", wrong);
    }
  }

  private BrokenTemplateException broken(String why, Throwable failure) {
    return new BrokenTemplateException(
        folder.place()
            + ": the sheets can't be laid out with these templates: "
            + why
            + "; take your changes back one by one to find which",
        failure);
  }

  private void print(String template, Object view, Drawings drawings, OutputStream out)
      throws IOException {
    Document document = parsed(template, view);
    ITextOutputDevice device = new VisibleDevice(ITextRenderer.DEFAULT_DOTS_PER_POINT);
    TemplateAgent agent =
        new TemplateAgent(folder, document, device, ITextRenderer.DEFAULT_DOTS_PER_PIXEL);
    ITextRenderer renderer =
        new ITextRenderer(
            ITextRenderer.DEFAULT_DOTS_PER_POINT,
            ITextRenderer.DEFAULT_DOTS_PER_PIXEL,
            device,
            agent,
            typefaces.resolver(),
            new DrawingBoxes(device, drawings, typefaces),
            new ITextTextRenderer());
    renderer
        .getSharedContext()
        .setCss(new StylesByKind(agent, folder.isFirms() ? MOST_PAGES : Integer.MAX_VALUE));
    renderer.getSharedContext().setLineBreakingStrategy(new LineBreaks());
    renderer.setListener(new Imprint(words.locale().toLanguageTag()));
    renderer.setDocument(document, "");
    renderer.layout();
    try {
      renderer.createPDF(out);
    } catch (DocumentException failure) {
      throw new IOException("the sheets can't be written", failure);
    }
  }

  private Document parsed(String template, Object view) throws IOException {
    try {
      return parse(template, templates.fill(template, view));
    } catch (SAXParseException failure) {
      String marked = templates.fillMarked(template, view);
      try {
        parse(template, marked);
      } catch (SAXParseException again) {
        throw new TemplateFault(folder, words, Set.of()).of(template, marked, again);
      }
      throw new IllegalStateException("template " + template + " can't be read", failure);
    }
  }

  /** Doctypes are refused, and with them every entity that could fetch something. */
  private static Document parse(String template, String xhtml)
      throws IOException, SAXParseException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(new DefaultHandler());
      return builder.parse(new InputSource(new StringReader(xhtml)));
    } catch (SAXParseException failure) {
      throw failure;
    } catch (SAXException | ParserConfigurationException failure) {
      throw new IllegalStateException("template " + template + " can't be read", failure);
    }
  }

  /** Says who made the file. */
  private static final class Imprint extends DefaultPDFCreationListener {
    private final String language;

    Imprint(String language) {
      this.language = language;
    }

    @Override
    public void preOpen(ITextRenderer renderer) {
      PdfWriter writer = requireNonNull(renderer.getWriter());
      writer.getInfo().put(PdfName.CREATOR, new PdfString("Urnwright"));
      writer.getExtraCatalog().put(PdfName.LANG, new PdfString(language));
    }
  }
}
