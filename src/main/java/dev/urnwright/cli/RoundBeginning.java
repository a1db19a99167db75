package dev.urnwright.cli;

import dev.urnwright.form.WorkbookCells;
import dev.urnwright.input.RoundReader;
import dev.urnwright.input.TableCells;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;

/**
 * A round to start from: a commented text and its tables, written together or not at all.
 *
 * @param round the text
 * @param table of the sites, .csv or .xlsx
 */
record RoundBeginning(Path round, Path table) {
  private static final String TEXT = "/templates/round.yaml";
  private static final String SITES = "/templates/round-sites.csv";
  private static final String RETURNS = "/templates/round-returns.csv";

  /**
   * Where a round is begun: in a folder, in a text of that name, or beside a workbook of that name.
   */
  static RoundBeginning at(Path named) {
    if (Files.isDirectory(named)) {
      return new RoundBeginning(named.resolve("round.yaml"), named.resolve("sites.csv"));
    }
    return EventFiles.hasEnding(named)
        ? new RoundBeginning(FileNames.beside(named, ".yaml"), named)
        : new RoundBeginning(named, FileNames.beside(named, "-sites.csv"));
  }

  /**
   * Writes all files and returns them.
   *
   * @throws RefusedException if one of them is there already
   */
  List<Path> write() throws IOException, RefusedException {
    boolean workbook = EventFiles.hasEnding(table);
    if (workbook) {
      EventFiles.requireXlsx(table);
    }
    Map<Path, byte[]> contents = new LinkedHashMap<>();
    Path returns = workbook ? table : FileNames.beside(round, "-returns.csv");
    contents.put(
        round,
        template(TEXT)
            .replaceFirst("sites: sites\\.csv +", quoted("sites: " + table.getFileName() + "  "))
            .replaceFirst(
                "# returns: returns\\.csv +", quoted("returns: " + returns.getFileName() + "  "))
            .getBytes(StandardCharsets.UTF_8));
    contents.put(table, workbook ? workbook() : template(SITES).getBytes(StandardCharsets.UTF_8));
    if (!workbook) {
      contents.put(returns, template(RETURNS).getBytes(StandardCharsets.UTF_8));
    }
    List<OutputFile> files = new ArrayList<>();
    try {
      for (Map.Entry<Path, byte[]> content : contents.entrySet()) {
        OutputFile file = OutputFile.at(content.getKey(), OutputFile.Existing.KEEP);
        files.add(file);
        file.writeAside(content.getValue());
      }
      for (OutputFile file : files) {
        file.putInPlace();
      }
    } finally {
      files.forEach(OutputFile::close);
    }
    return List.copyOf(contents.keySet());
  }

  private static String quoted(String text) {
    return Matcher.quoteReplacement(text);
  }

  private byte[] workbook() throws IOException {
    String name = table.getFileName().toString().toLowerCase(Locale.ROOT);
    Map<String, TableCells> sheets = new LinkedHashMap<>();
    sheets.put(RoundReader.SITES_SHEET, RoundReader.table(name, template(SITES)));
    sheets.put(RoundReader.RETURNS_SHEET, RoundReader.table(name, template(RETURNS)));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    WorkbookCells.write(sheets, bytes);
    return bytes.toByteArray();
  }

  private static String template(String name) throws IOException {
    try (InputStream in = RoundBeginning.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException("the program was packed without " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
