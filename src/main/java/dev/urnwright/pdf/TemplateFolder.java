package dev.urnwright.pdf;

import dev.urnwright.wording.WordFile;
import dev.urnwright.wording.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Where the files stand that sheets are made from: those that the program ships, or a firm's own
 * folder, in which what is missing is taken from the shipped ones. Nothing outside is ever opened.
 */
public final class TemplateFolder {
  /** What the program ships. */
  public static final TemplateFolder SHIPPED =
      new TemplateFolder(Optional.empty(), Optional.empty());

  private static final String PACKED = "/templates/";

  /** A plain file name: no folder, no scheme, nothing hidden. */
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*");

  private static final Pattern REFERRED =
      Pattern.compile("\\{\\{>\\s*(?!word\\.)([\\w.-]+?)\\s*}}|href=\"([\\w.-]+)\"");

  private static final Pattern CALLED = Pattern.compile("\\{\\{>\\s*word\\.([\\w.-]+)");

  private static final List<String> LANGUAGES = List.of("de", "en", "es", "fr");
  private static final Pattern WORDS = Pattern.compile("words_([a-z]{2,3})\\.properties");

  private final Optional<Path> own;
  private final Optional<Locale> spoken;

  private TemplateFolder(Optional<Path> own, Optional<Locale> spoken) {
    this.own = own;
    this.spoken = spoken;
  }

  /** A firm's own folder. */
  public static TemplateFolder of(Path own) {
    return new TemplateFolder(Optional.of(own), Optional.empty());
  }

  /** The names of the shipped files that sheets are made from, all that may be changed. */
  public static Set<String> names() throws IOException {
    Set<String> names = new LinkedHashSet<>();
    for (String sheets :
        new String[] {
          PrepSheets.TEMPLATE,
          PrepSheets.LEFT,
          ChartPage.TEMPLATE,
          ReportSheets.TEMPLATE,
          ScaleSheet.TEMPLATE,
          RoundSheets.BREW_ROOM,
          RoundSheets.PICK_LIST,
          RoundSheets.LABELS,
          RoundSheets.SLIPS,
          RoundSheets.WEEK
        }) {
      SHIPPED.collect(sheets, names);
    }
    LANGUAGES.forEach(language -> names.add(Words.fileName(Locale.forLanguageTag(language))));
    return names;
  }

  /** The same folder, for sheets in another language than their event's. */
  public TemplateFolder in(Locale language) {
    return new TemplateFolder(own, Optional.of(language));
  }

  /** The languages that have words, in order. */
  public Set<String> languages() throws IOException {
    Set<String> languages = new TreeSet<>(LANGUAGES);
    if (own.isPresent()) {
      try (Stream<Path> files = Files.list(own.get())) {
        files
            .map(file -> WORDS.matcher(file.getFileName().toString()))
            .filter(Matcher::matches)
            .forEach(file -> languages.add(file.group(1)));
      }
    }
    return languages;
  }

  /**
   * The words for an event's sheets: the firm's own, then the shipped ones of that language, then
   * the English.
   *
   * @param ofEvent the event's language, unless another is spoken
   * @throws BrokenTemplateException if nobody has words of that language
   */
  public Words words(Locale ofEvent) throws IOException {
    Locale language = spoken.orElse(ofEvent);
    if (!languages().contains(language.getLanguage())) {
      throw new BrokenTemplateException(
          "there are no words in the language '"
              + language.toLanguageTag()
              + "'; expected one of "
              + String.join(", ", languages())
              + ", or a file "
              + Words.fileName(language)
              + " in a folder named by --templates");
    }
    List<WordFile> files = new ArrayList<>();
    for (String name :
        new LinkedHashSet<>(List.of(Words.fileName(language), Words.fileName(Locale.ENGLISH)))) {
      if (isOwn(name)) {
        files.add(WordFile.of(name, text(name)));
      }
      if (TemplateFolder.class.getResource(PACKED + name) != null) {
        files.add(WordFile.of(name, SHIPPED.text(name)));
      }
    }
    return new Words(language, files);
  }

  /** The words that the program ships, in each of its languages. */
  public List<WordFile> shippedWords() throws IOException {
    List<WordFile> files = new ArrayList<>();
    for (String language : LANGUAGES) {
      String name = Words.fileName(Locale.forLanguageTag(language));
      files.add(WordFile.of(name, SHIPPED.text(name)));
    }
    return files;
  }

  /** A firm's own words, named by where they stand. */
  public List<WordFile> ownWords() throws IOException {
    List<WordFile> files = new ArrayList<>();
    for (String language : languages()) {
      String name = Words.fileName(Locale.forLanguageTag(language));
      if (isOwn(name)) {
        files.add(WordFile.of(place(name), text(name)));
      }
    }
    return files;
  }

  /** The keys of the words that templates and words call for, shipped ones and the firm's own. */
  public Set<String> wordsOfTemplates() throws IOException {
    Set<String> files = new LinkedHashSet<>(names());
    if (own.isPresent()) {
      try (Stream<Path> mine = Files.list(own.get())) {
        mine.map(file -> file.getFileName().toString()).forEach(files::add);
      }
    }
    Set<String> keys = new TreeSet<>();
    for (String file : files) {
      if (file.endsWith(".xhtml") || WORDS.matcher(file).matches()) {
        keys.addAll(called(text(file)));
        if (isOwn(file) && TemplateFolder.class.getResource(PACKED + file) != null) {
          keys.addAll(called(SHIPPED.text(file)));
        }
      }
    }
    return keys;
  }

  private static Set<String> called(String template) {
    Set<String> keys = new TreeSet<>();
    Matcher call = CALLED.matcher(template);
    while (call.find()) {
      keys.add(call.group(1));
    }
    return keys;
  }

  private void collect(String name, Set<String> names) throws IOException {
    if (!names.add(name) || !name.endsWith(".xhtml")) {
      return;
    }
    Matcher referred = REFERRED.matcher(text(name));
    while (referred.find()) {
      String other = referred.group(1) == null ? referred.group(2) : referred.group(1) + ".xhtml";
      collect(other, names);
    }
  }

  /**
   * Opens a file.
   *
   * @throws IOException if it isn't a plain file name, there is no such file, or it is a link out
   *     of the folder
   */
  public InputStream open(String name) throws IOException {
    if (isOwn(name)) {
      return Files.newInputStream(own.orElseThrow().resolve(name));
    }
    InputStream stream =
        NAME.matcher(name).matches()
            ? TemplateFolder.class.getResourceAsStream(PACKED + name)
            : null;
    if (stream == null) {
      throw new IOException("no file of that name is in the folder " + place() + ": " + name);
    }
    return stream;
  }

  Reader reader(String name) throws IOException {
    return new InputStreamReader(open(name), StandardCharsets.UTF_8);
  }

  String text(String name) throws IOException {
    try (InputStream in = open(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Whether this is a firm's own folder. */
  boolean isFirms() {
    return own.isPresent();
  }

  /** Whether a file is the firm's own. */
  boolean isOwn(String name) throws IOException {
    if (own.isEmpty() || !NAME.matcher(name).matches()) {
      return false;
    }
    Path file = own.get().resolve(name);
    return Files.isRegularFile(file)
        && own.get().toRealPath().equals(file.toRealPath().getParent());
  }

  /** The folder, for people. */
  String place() {
    return own.map(Path::toString).orElse("templates");
  }

  /** Where a file stands, for people. */
  String place(String name) {
    return own.map(folder -> folder.resolve(name).toString()).orElse("templates/" + name);
  }
}
