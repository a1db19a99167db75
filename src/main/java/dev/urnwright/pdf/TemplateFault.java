package dev.urnwright.pdf;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.MustacheException;
import dev.urnwright.wording.Words;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.xml.sax.SAXParseException;

/**
 * Finds the file and line of a template that is wrong. The template engine knows a line and not the
 * file, the XML parser a place in the filled text and not in the template.
 *
 * @param folder the templates
 * @param words that were called for
 * @param opened the files and words that were in use
 */
record TemplateFault(TemplateFolder folder, Words words, Set<String> opened) {
  private static final Pattern LINE = Pattern.compile("line (\\d+)");
  private static final Pattern MARK = Pattern.compile("<\\?at ([^:?]+):(\\d+)\\?>");

  /** What a fault of the template engine's means. */
  RuntimeException of(String name, MustacheException failure, Mustache.Compiler compiler)
      throws IOException {
    for (String used : opened) {
      if (used.startsWith(Words.MARK)) {
        Optional<RuntimeException> wrong = ofWords(used, failure, compiler);
        if (wrong.isPresent()) {
          return wrong.get();
        }
      }
    }
    List<String> files = ownFirst();
    if (failure instanceof Templates.MissingWords missing) {
      for (String file : files) {
        int line = lineWith(file, Words.MARK + missing.key());
        if (line > 0) {
          return broken(file, line, String.valueOf(missing.getMessage()), failure);
        }
      }
    }
    if (failure instanceof MustacheException.Context missing) {
      for (String file : files) {
        List<String> lines = folder.text(file).lines().toList();
        if (missing.lineNo <= lines.size() && lines.get(missing.lineNo - 1).contains(missing.key)) {
          return broken(
              file, missing.lineNo, "there is nothing called '" + missing.key + "'", failure);
        }
      }
    }
    for (String file : files) {
      try (Reader reader = folder.reader(file)) {
        compiler.compile(reader);
      } catch (MustacheException wrong) {
        Matcher line = LINE.matcher(String.valueOf(wrong.getMessage()));
        return broken(
            file, line.find() ? Integer.parseInt(line.group(1)) : 1, words(wrong), failure);
      }
    }
    return broken(name, 1, words(failure), failure);
  }

  /** Whether it is these words that are wrong: their marks, or a name that they use. */
  private Optional<RuntimeException> ofWords(
      String used, MustacheException failure, Mustache.Compiler compiler) throws IOException {
    Words.Found found = words.find(used.substring(Words.MARK.length())).orElse(null);
    if (found == null) {
      return Optional.empty();
    }
    try {
      compiler.compile(found.words());
    } catch (MustacheException wrong) {
      return Optional.of(
          broken(found.file(), found.line(), words(wrong).replaceAll(" @ line.*", ""), failure));
    }
    return failure instanceof MustacheException.Context missing
            && found.words().contains("{{" + missing.key + "}}")
            && opened.stream()
                .filter(file -> !file.startsWith(Words.MARK))
                .noneMatch(file -> names(file, missing))
        ? Optional.of(
            broken(
                found.file(),
                found.line(),
                "there is nothing called '" + missing.key + "'",
                failure))
        : Optional.empty();
  }

  private boolean names(String file, MustacheException.Context missing) {
    try {
      List<String> lines = folder.text(file).lines().toList();
      return missing.lineNo <= lines.size()
          && lines.get(missing.lineNo - 1).matches(".*\\{\\{[#^]?" + missing.key + "}}.*");
    } catch (IOException e) {
      return false;
    }
  }

  private int lineWith(String file, String text) throws IOException {
    List<String> lines = folder.text(file).lines().toList();
    for (int at = 0; at < lines.size(); at++) {
      if (lines.get(at).contains(text)) {
        return at + 1;
      }
    }
    return 0;
  }

  /** What a fault in the filled text means. */
  RuntimeException of(String name, String marked, SAXParseException failure) throws IOException {
    String before = upTo(marked, failure.getLineNumber(), failure.getColumnNumber());
    Matcher mark = MARK.matcher(before);
    String file = name;
    int line = 1;
    while (mark.find()) {
      file = mark.group(1);
      line = Integer.parseInt(mark.group(2));
    }
    return broken(file, line, "not well-formed XHTML: " + failure.getMessage(), failure);
  }

  private RuntimeException broken(String file, int line, String wrong, Exception failure)
      throws IOException {
    String message = folder.place(file) + ":" + line + ": " + wrong;
    if (!folder.isFirms()) {
      return new IllegalStateException("template " + message, failure);
    }
    String cure =
        folder.isOwn(file)
            ? "; the shipped template of that name is right"
            : "; it is a shipped one, so a file of your own before it may be wrong";
    return new BrokenTemplateException(message + cure, failure);
  }

  private static String upTo(String text, int line, int column) {
    int at = 0;
    for (int i = 1; i < line && text.indexOf('\n', at) >= 0; i++) {
      at = text.indexOf('\n', at) + 1;
    }
    return text.substring(0, Math.min(text.length(), at + Math.max(0, column - 1)));
  }

  /** The files in use, those first that may well be wrong. */
  private List<String> ownFirst() throws IOException {
    List<String> files = new ArrayList<>();
    for (String file : opened) {
      if (file.startsWith(Words.MARK)) {
        continue;
      }
      files.add(folder.isOwn(file) ? 0 : files.size(), file);
    }
    return files;
  }

  private static String words(Exception failure) {
    return String.valueOf(failure.getMessage());
  }

  static String unmarked(String file, String text) {
    return text;
  }

  /** A processing instruction before each line that doesn't begin inside a tag or a comment. */
  static String marked(String file, String text) {
    StringBuilder marked = new StringBuilder();
    String until = ""; // what ends the tag or comment we are in
    int number = 0;
    for (String line : text.split("\n", -1)) {
      number++;
      if (until.isEmpty() && !line.startsWith("<?xml") && !line.startsWith("<!DOCTYPE")) {
        marked.append("<?at ").append(file).append(':').append(number).append("?>");
      }
      marked.append(line).append('\n');
      until = after(line, until);
    }
    return marked.toString();
  }

  private static String after(String line, String before) {
    String until = before;
    int at = 0;
    while (at >= 0) {
      if (until.isEmpty()) {
        at = line.indexOf('<', at);
        until = at < 0 ? "" : line.startsWith("<!--", at) ? "-->" : ">";
      } else {
        at = line.indexOf(until, at);
        until = at < 0 ? until : "";
      }
    }
    return until;
  }
}
