package dev.urnwright.pdf;

import com.samskivert.mustache.DefaultCollector;
import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.MustacheException;
import dev.urnwright.wording.Words;
import java.io.IOException;
import java.io.StringReader;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Fills the templates of a folder. */
final class Templates {
  /** Of the shipped templates, some 50 are taken in by others. */
  private static final int MOST_TAKEN_IN = 500;

  /** The shipped templates call for some 350 words. */
  private static final int MOST_WORDS = 5000;

  private final TemplateFolder folder;
  private final Words words;
  private final Typefaces typefaces;
  private final Mustache.Compiler compiler;

  /**
   * Templates whose texts are set in these faces.
   *
   * @param words that they call for
   * @param typefaces that say what can be printed
   */
  Templates(TemplateFolder folder, Words words, Typefaces typefaces) {
    this.folder = folder;
    this.words = words;
    this.typefaces = typefaces;
    compiler =
        Mustache.compiler()
            .strictSections(true)
            .zeroIsFalse(true)
            .withCollector(new OptionalsToo())
            .withFormatter(Templates::text)
            .withEscaper(text -> escaped(typefaces.shown(text)));
  }

  /**
   * Fills a template.
   *
   * @throws BrokenTemplateException if a template of the firm's own is wrong
   * @throws IllegalStateException if a shipped one is, or names something that the view lacks
   */
  String fill(String name, Object view) throws IOException {
    Set<String> opened = new LinkedHashSet<>();
    try {
      return fill(name, view, opened, TemplateFault::unmarked);
    } catch (MustacheException failure) {
      throw new TemplateFault(folder, words, opened).of(name, failure, compiler);
    }
  }

  /** The same, with a mark at each line's beginning that tells where it came from. */
  String fillMarked(String name, Object view) throws IOException {
    return fill(name, view, new LinkedHashSet<>(), TemplateFault::marked);
  }

  private String fill(String name, Object view, Set<String> opened, Marking marking)
      throws IOException {
    opened.add(name);
    int[] taken = new int[1];
    int[] said = new int[1];
    return compiler
        .withLoader(
            partial -> {
              if (partial.startsWith(Words.MARK)) {
                opened.add(partial);
                if (++said[0] > MOST_WORDS) {
                  throw new BrokenTemplateException(
                      "the words '"
                          + partial
                          + "' are said over and over; do they call themselves?",
                      new IllegalStateException(partial));
                }
                return new StringReader(shown(partial.substring(Words.MARK.length())));
              }
              String file = partial + ".xhtml";
              opened.add(file);
              if (++taken[0] > MOST_TAKEN_IN) {
                throw new BrokenTemplateException(
                    folder.place(file) + ": is taken in over and over; does it take in itself?",
                    new IllegalStateException(file));
              }
              return new StringReader(marking.mark(file, partial(file)));
            })
        .compile(marking.mark(name, folder.text(name)))
        .execute(view);
  }

  private String partial(String file) {
    try {
      return folder.text(file);
    } catch (IOException missing) {
      throw new BrokenTemplateException(String.valueOf(missing.getMessage()), missing);
    }
  }

  /** Words are plain text: what XHTML takes for its own is escaped, marks are left alone. */
  private String shown(String key) {
    String text = words.find(key).map(Words.Found::words).orElseThrow(() -> new MissingWords(key));
    return typefaces.shown(text).replace("&", "&amp;").replace("<", "&lt;");
  }

  /** A template calls for words that no language has. */
  static final class MissingWords extends MustacheException {
    private static final long serialVersionUID = 1L;

    private final String key;

    MissingWords(String key) {
      super("there are no words '" + key + "'");
      this.key = key;
    }

    String key() {
      return key;
    }
  }

  /** What is done to a file's text before it is filled. */
  interface Marking {
    String mark(String file, String text);
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

  /**
   * Lets a section stand for a value that may be missing, and templates see our own figures and
   * words alone: no other object's methods, through which Java itself could be reached.
   */
  private static final class OptionalsToo extends DefaultCollector {
    private static final String OURS = "dev.urnwright.";
    private static final Set<String> EVERY_OBJECTS = Set.of("class", "getClass", "hashCode");

    @Override
    public Mustache.@Nullable VariableFetcher createFetcher(Object context, String name) {
      boolean ours = context instanceof Map || context.getClass().getName().startsWith(OURS);
      return ours && !EVERY_OBJECTS.contains(name) ? super.createFetcher(context, name) : null;
    }

    @Override
    public Iterator<?> toIterator(Object value) {
      return value instanceof Optional<?> optional
          ? optional.stream().iterator()
          : super.toIterator(value);
    }
  }
}
