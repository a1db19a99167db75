package dev.urnwright.pdf;

import com.samskivert.mustache.DefaultCollector;
import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.MustacheException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Optional;
import java.util.regex.Pattern;

/** The files that sheets are made from, found on the class path in the folder {@code templates}. */
final class Templates {
  private static final String FOLDER = "/templates/";

  /** A plain file name: no folder, no scheme, nothing hidden. */
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*");

  private final Mustache.Compiler compiler;

  /**
   * Templates whose texts are set in these faces.
   *
   * @param typefaces that say what can be printed
   */
  Templates(Typefaces typefaces) {
    compiler =
        Mustache.compiler()
            .strictSections(true)
            .zeroIsFalse(true)
            .withCollector(new OptionalsToo())
            .withFormatter(Templates::text)
            .withEscaper(text -> escaped(typefaces.shown(text)))
            .withLoader(name -> reader(name + ".xhtml"));
  }

  /**
   * Fills a template.
   *
   * @throws IllegalStateException if the template names something that the view doesn't have
   */
  String fill(String name, Object view) throws IOException {
    try (Reader reader = reader(name)) {
      return compiler.compile(reader).execute(view);
    } catch (MustacheException failure) {
      throw new IllegalStateException("template " + name + ": " + failure.getMessage(), failure);
    }
  }

  private static Reader reader(String name) throws IOException {
    return new InputStreamReader(open(name), StandardCharsets.UTF_8);
  }

  /**
   * Opens a file of the folder.
   *
   * @throws IOException if it isn't a plain file name or there is no such file
   */
  static InputStream open(String name) throws IOException {
    InputStream stream =
        NAME.matcher(name).matches() ? Templates.class.getResourceAsStream(FOLDER + name) : null;
    if (stream == null) {
      throw new IOException("no file of that name is in the folder templates: " + name);
    }
    return stream;
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  private static String text(Object value) {
    if (value instanceof Optional) {
      throw new IllegalStateException(
          "a value that may be missing needs a section of its own, with {{.}} in it");
    }
    return String.valueOf(value);
  }

  /** Lets a section stand for a value that may be missing. */
  private static final class OptionalsToo extends DefaultCollector {
    @Override
    public Iterator<?> toIterator(Object value) {
      return value instanceof Optional<?> optional
          ? optional.stream().iterator()
          : super.toIterator(value);
    }
  }
}
