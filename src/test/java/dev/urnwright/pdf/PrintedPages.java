package dev.urnwright.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A PDF read back by another library: text of each page and where each letter stands. */
final class PrintedPages implements AutoCloseable {
  private final PDDocument document;

  private PrintedPages(PDDocument document) {
    this.document = document;
  }

  /** Something that writes a PDF. */
  interface Printing {
    void to(OutputStream out) throws IOException;
  }

  static PrintedPages of(Printing printing) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    printing.to(out);
    return new PrintedPages(Loader.loadPDF(out.toByteArray()));
  }

  PDDocument document() {
    return document;
  }

  /**
   * The text of each page, cell by cell as it was printed; spaces and line ends are made single
   * spaces, no-break spaces are kept.
   */
  List<String> texts() throws IOException {
    return texts(false);
  }

  /** The same line by line, across all cells. */
  List<String> lines() throws IOException {
    return texts(true);
  }

  private List<String> texts(boolean byPosition) throws IOException {
    List<String> texts = new ArrayList<>();
    for (int page = 1; page <= document.getNumberOfPages(); page++) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(byPosition);

      stripper.setStartPage(page);
      stripper.setEndPage(page);
      texts.add(stripper.getText(document).replaceAll("[ \\n\\r]+", " "));
    }
    return texts;
  }

  /**
   * A visible letter.
   *
   * @param text what it reads
   * @param left edge in points from the left of the page
   * @param right edge
   * @param base its baseline, in points from the top of the page
   * @param size of the type in points
   */
  record Letter(String text, double left, double right, double base, double size) {}

  List<Letter> letters(int page) throws IOException {
    List<Letter> letters = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition text) {
            if (!text.getUnicode().isBlank()) {
              letters.add(
                  new Letter(
                      text.getUnicode(),
                      text.getXDirAdj(),
                      text.getXDirAdj() + text.getWidthDirAdj(),
                      text.getYDirAdj(),
                      text.getFontSizeInPt()));
            }
          }
        };
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    stripper.getText(document);
    return letters;
  }

  /** Letters that leave the margins, in points from each edge of the page. */
  List<String> outside(double margin) throws IOException {
    List<String> outside = new ArrayList<>();
    for (int page = 1; page <= document.getNumberOfPages(); page++) {
      double width = document.getPage(page - 1).getMediaBox().getWidth();
      double height = document.getPage(page - 1).getMediaBox().getHeight();
      for (Letter letter : letters(page)) {
        if (letter.left() < margin
            || letter.right() > width - margin
            || letter.base() - letter.size() < 0
            || letter.base() > height - margin) {
          outside.add("page " + page + ": " + letter);
        }
      }
    }
    return outside;
  }

  /** Letters of one line that lie on top of each other, as when a number runs out of its cell. */
  List<String> overlapping() throws IOException {
    List<String> overlapping = new ArrayList<>();
    for (int page = 1; page <= document.getNumberOfPages(); page++) {
      List<Letter> letters = letters(page);
      letters.sort(Comparator.comparingDouble(Letter::base).thenComparingDouble(Letter::left));
      for (int at = 1; at < letters.size(); at++) {
        Letter before = letters.get(at - 1);
        Letter letter = letters.get(at);
        // Kerning and accents reach a little over; a whole tenth of the size is a collision.
        double allowed = 0.1 * Math.min(letter.size(), before.size());
        if (Math.abs(letter.base() - before.base()) < 0.01
            && letter.left() < before.right() - allowed) {
          overlapping.add("page " + page + ": " + before + " and " + letter);
        }
      }
    }
    return overlapping;
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
