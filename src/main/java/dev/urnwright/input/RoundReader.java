package dev.urnwright.input;

import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import dev.urnwright.round.Drop;
import dev.urnwright.round.Return;
import dev.urnwright.round.Round;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/** Reads a round with its tables. Nothing of a file can make it throw. */
public final class RoundReader {
  /** The sheet of a workbook that holds the sites. */
  public static final String SITES_SHEET = "Sites";

  /** The sheet of a workbook that holds the returns. */
  public static final String RETURNS_SHEET = "Returns";

  private final BiFunction<Path, String, Checked<TableCells>> workbooks;
  private final FirstLook look;

  /**
   * A reader that takes sheets in any language.
   *
   * @param workbooks opens the sheet of that name in a workbook
   */
  public RoundReader(BiFunction<Path, String, Checked<TableCells>> workbooks) {
    this.workbooks = workbooks;
    look = FirstLook.WHATEVER_LANGUAGE;
  }

  /**
   * A reader that takes sheets in some languages.
   *
   * @param workbooks opens the sheet of that name in a workbook
   * @param languages those that have words, as ISO codes
   */
  public RoundReader(
      BiFunction<Path, String, Checked<TableCells>> workbooks, Set<String> languages) {
    this.workbooks = workbooks;
    look = FirstLook.of(languages);
  }

  /**
   * The cells of a table of comma-separated values that has no problems.
   *
   * @param name of the table, for places
   */
  public static TableCells table(String name, String text) {
    return CsvCells.cells(text, new Problems(name, Document.SITES)).orElseThrow();
  }

  /** The headings of a table of sites, in the order in which people would write them. */
  public static List<String> siteHeadings() {
    return DropBinder.FIELDS.names().stream().map(name -> name.replace('_', ' ')).toList();
  }

  /** The headings of a table of returns. */
  public static List<String> returnHeadings() {
    return ReturnBinder.FIELDS.names().stream().map(name -> name.replace('_', ' ')).toList();
  }

  /**
   * Reads a round.
   *
   * @param file in YAML, UTF-8, of 16 MiB at most; its tables lie beside it
   * @param returns a table of returns instead of the one that the file names
   * @return the round; or all that is wrong with the file and its tables
   */
  public Checked<RoundFile> open(Path file, Optional<Path> returns) {
    Problems problems = new Problems(file.toString(), Document.ROUND);
    Optional<RoundBinder.Bound> bound =
        SourceFile.text(file, problems)
            .flatMap(text -> YamlTree.root(text, problems))
            .flatMap(
                root ->
                    look.at(root, "round", problems)
                        .flatMap(typed -> new RoundBinder(problems).bind(root)));
    if (bound.isEmpty()) {
      return Checked.refused(problems.all());
    }
    RoundBinder.Bound round = bound.get();
    List<Problem> found = new ArrayList<>();
    Optional<Path> sites = round.sites().flatMap(name -> beside(file, name, problems));
    Optional<Rows> siteRows = sites.flatMap(path -> rows(path, SITES_SHEET, Document.SITES, found));
    List<Drop> drops =
        siteRows
            .map(rows -> new DropBinder(round.known(), rows.problems()).bind(rows.rows()))
            .orElse(List.of());
    siteRows.ifPresent(rows -> found.addAll(rows.problems().all()));
    if (siteRows.isPresent() && found.isEmpty()) {
      sitesOfExceptions(round.named(), drops, problems);
      if (drops.isEmpty()) {
        found.add(
            new Problem(
                place(siteRows.get()), "this table has no sites", "expected a row at least"));
      }
    }
    Optional<Path> back =
        returns.or(() -> round.returns().flatMap(name -> beside(file, name, problems)));
    Optional<Rows> backRows =
        found.isEmpty()
            ? back.flatMap(path -> rows(path, RETURNS_SHEET, Document.RETURNS, found))
            : Optional.empty();
    List<Return> entries = List.of();
    List<Problem> strangers = List.of();
    if (backRows.isPresent()) {
      ReturnBinder binder = new ReturnBinder(drops, backRows.get().problems());
      entries = binder.bind(backRows.get().rows());
      strangers = binder.strangers();
      found.addAll(backRows.get().problems().all());
    }
    found.addAll(0, problems.all());
    if (!found.isEmpty() || round.round().isEmpty()) {
      return Checked.refused(found);
    }
    return Checked.of(new RoundFile(with(round.round().get(), drops), entries, strangers));
  }

  private static Location place(Rows rows) {
    return rows.problems().wholeFile();
  }

  /**
   * The rows of a table.
   *
   * @param rows by their headings
   * @param problems that collect what is wrong with them
   */
  private record Rows(List<Typed.Mapping> rows, Problems problems) {}

  private Optional<Rows> rows(Path path, String sheet, Document document, List<Problem> found) {
    if (isWorkbook(path)) {
      Checked<TableCells> cells = workbooks.apply(path, sheet);
      found.addAll(cells.problems());
      return cells
          .value()
          .map(
              table -> {
                Problems problems = Problems.ofTable(path.toString(), document);
                return new Rows(TableRows.of(table, document.fields(), problems), problems);
              });
    }
    Problems problems = new Problems(path.toString(), document);
    Optional<TableCells> cells = CsvCells.read(path, problems);
    if (cells.isEmpty()) {
      found.addAll(problems.all());
    }
    return cells.map(table -> new Rows(TableRows.of(table, document.fields(), problems), problems));
  }

  private static boolean isWorkbook(Path path) {
    String name = path.toString().toLowerCase(Locale.ROOT);
    return name.endsWith(".xlsx")
        || name.endsWith(".xlsm")
        || name.endsWith(".xls")
        || name.endsWith(".ods");
  }

  private static Optional<Path> beside(Path file, Located<String> name, Problems problems) {
    try {
      return Optional.of(file.resolveSibling(name.value()));
    } catch (InvalidPathException impossible) {
      problems.at(
          name.location(),
          Words.quoted(name.value()) + " can't be the name of a file",
          "expected a table such as sites.csv");
      return Optional.empty();
    }
  }

  private static void sitesOfExceptions(
      List<ChangeBinder.Named> named, List<Drop> drops, Problems problems) {
    Set<String> sites = drops.stream().map(drop -> drop.place().site()).collect(Collectors.toSet());
    for (ChangeBinder.Named exception : named) {
      String site = exception.site().value();
      if (References.check(exception.site(), "site", sites, problems)) {
        exception
            .floor()
            .ifPresent(
                floor ->
                    References.check(
                        floor,
                        "floor of " + Words.plain(site),
                        drops.stream()
                            .filter(drop -> drop.place().site().equals(site))
                            .map(drop -> drop.place().floor())
                            .distinct()
                            .toList(),
                        problems));
      }
    }
  }

  private static Round with(Round round, List<Drop> drops) {
    return new Round(
        round.name(),
        round.room(),
        round.carafes(),
        round.legs(),
        drops,
        round.changes(),
        round.rules(),
        round.defaults(),
        round.location());
  }
}
