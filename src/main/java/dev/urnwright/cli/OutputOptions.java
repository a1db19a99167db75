package dev.urnwright.cli;

import dev.urnwright.pdf.TemplateFolder;
import dev.urnwright.problem.Problem;
import dev.urnwright.wording.LanguageTag;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Which files a command writes, where, and what they are made from. */
final class OutputOptions {
  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "write the files into this folder; it is made if missing")
  private Optional<Path> folder = Optional.empty();

  @Option(names = "--no-sheets", description = "write no files")
  private boolean none;

  @Option(names = "--replace", description = "write over files that Urnwright didn't write, too")
  private boolean replace;

  @Option(
      names = "--templates",
      paramLabel = "DIR",
      description = "make the sheets from the templates in this folder; see 'templates'")
  private Optional<Path> templates = Optional.empty();

  @Option(
      names = "--language",
      paramLabel = "TAG",
      converter = Language.class,
      description = "write the sheets in this language: de, en, es, fr, or one of your templates'")
  private Optional<Locale> language = Optional.empty();

  /** Whether any file is to be written. */
  boolean writes() {
    return !none;
  }

  /**
   * A file named after an event, see {@link FileNames}, in the folder asked for, which is made.
   *
   * @param ending such as {@code -plan.pdf}
   * @throws RefusedException if the folder can't be had or the place is taken
   */
  OutputFile file(Path event, String ending) throws RefusedException {
    if (folder.isPresent()) {
      OutputFile.makeFolder(folder.get());
    }
    return OutputFile.at(
        FileNames.of(event, folder, ending),
        replace ? OutputFile.Existing.REPLACE : OutputFile.Existing.REPLACE_OURS);
  }

  /**
   * A folder named after an event, in the folder asked for, for what goes together; it is made.
   *
   * @param ending such as {@code -2027-03-02}
   * @throws RefusedException if it can't be had
   */
  Path folder(Path event, String ending) throws RefusedException {
    Path made = FileNames.of(event, folder, ending);
    OutputFile.makeFolder(made);
    return made;
  }

  /**
   * A file in a folder that was made.
   *
   * @throws RefusedException if the place is taken
   */
  OutputFile in(Path made, String name) throws RefusedException {
    return OutputFile.at(
        made.resolve(name),
        replace ? OutputFile.Existing.REPLACE : OutputFile.Existing.REPLACE_OURS);
  }

  /**
   * A firm's own templates, or else the shipped ones, in the language asked for.
   *
   * @throws RefusedException if what was named is no folder
   */
  TemplateFolder templates() throws IOException, RefusedException {
    TemplateFolder folder = folder(templates);
    return language.map(folder::in).orElse(folder);
  }

  /**
   * A firm's own templates, or else the shipped ones.
   *
   * @throws RefusedException if what was named is no folder, or has words that can't be used
   */
  static TemplateFolder folder(Optional<Path> named) throws IOException, RefusedException {
    if (named.isEmpty()) {
      return TemplateFolder.SHIPPED;
    }
    if (!Files.isDirectory(named.get())) {
      throw new RefusedException(
          named.get() + ": is not a folder; make one with 'urnwright templates'");
    }
    TemplateFolder folder = TemplateFolder.of(named.get());
    List<Problem> problems = OwnWords.problems(folder);
    if (!problems.isEmpty()) {
      throw new RefusedException(problems);
    }
    return folder;
  }

  /**
   * The languages that an event may ask for: those of the templates that have words, or any where
   * the sheets are in another one anyway.
   */
  Set<String> languages() throws IOException, RefusedException {
    return language.isPresent() ? Set.of(Locale.getISOLanguages()) : templates().languages();
  }

  /** Reads a language. */
  private static final class Language implements ITypeConverter<Locale> {
    @Override
    public Locale convert(String text) {
      return LanguageTag.read(text)
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "'" + text + "' is no language; expected one such as es or es-US"));
    }
  }
}
