package dev.urnwright.cli;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;

import dev.urnwright.input.GrammarEvents;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Rounds whose text, table of sites or table of returns somebody changed, broke or made up. */
final class HostileRounds implements Fuzz.Hostile {
  /** One day in so many is planned with all its sheets, one week with its list. */
  private static final int WITH_SHEETS = 150;

  private static final Pattern COMPLAINT =
      Pattern.compile(".+: .+; .+|\\d+ problems?; (mend .*|nothing was written)|and \\d+ more");

  private static final Pattern REMARK =
      Pattern.compile(".+; the row counts for nothing|and \\d+ more rows like these");

  private static final Pattern VALUE = Pattern.compile("(?<=: )[^,{}\\[\\]\\n#]+");

  private static final Pattern QUOTED_COMMA = Pattern.compile("\"([^\",]*),([^\",]*)\"");

  private static final List<String> DAYS =
      List.of(
          "2027-03-02",
          "2027-03-03",
          "2027-03-04", // with more people somewhere
          "2027-03-09", // with a site that is closed
          "2027-03-15", // a holiday, with one site that works
          "2027-03-28", // clocks go forward
          "2028-02-29");

  private static final List<String> OF_TABLES =
      List.of(
          "medium",
          "house",
          "decaf",
          "Quayside",
          "Carafe 2 l",
          "Carafe 3 l",
          "mon wed fri",
          "mon-mon",
          "fri-mon",
          "daily",
          "never",
          "mon tue mon",
          "06:20-06:50",
          "06:50-06:20",
          "23:50-00:10",
          "3",
          "0",
          "-1",
          "1e3",
          "2,5",
          "2.5",
          "41",
          "9999",
          "18",
          "200 ml",
          "0,2 l",
          "7 fl oz",
          "2026-03-02",
          "02.03.2027",
          "9999-12-31",
          "Harbour Office",
          "harbour office");

  private String text = "";
  private String sites = "";
  private String returns = "";
  private Random random = new Random(0);

  @Override
  public List<Object> lay(long seed, Path folder) throws IOException {
    if (text.isEmpty()) {
      text = Files.readString(Path.of("samples/ferry-lane-round.yaml"));
      sites = Files.readString(Path.of("samples/ferry-lane-sites.csv"));
      returns = Files.readString(Path.of("samples/ferry-lane-returns.csv"));
    }
    random = new Random(seed * 31 + 11);
    String round = random.nextInt(3) == 0 ? changed(text) : text;
    boolean workbook = random.nextInt(8) == 0;
    if (workbook) {
      round = round.replace("ferry-lane-sites.csv", "sites.xlsx");
      workbook(rows(sites), folder.resolve("sites.xlsx"));
    } else {
      Files.write(folder.resolve("ferry-lane-sites.csv"), table(sites));
    }
    Files.write(
        folder.resolve("ferry-lane-returns.csv"),
        random.nextInt(3) == 0 ? table(returns) : returns.getBytes(UTF_8));
    Path file = Files.write(folder.resolve("round.yaml"), encoded(round));
    List<Object> command = new ArrayList<>(List.of("round", file));
    command.addAll(
        random.nextInt(20) == 0 ? List.of("--week", "2027-03-01") : List.of("--date", pick(DAYS)));
    command.addAll(
        random.nextInt(WITH_SHEETS) == 0
            ? List.of("--out", folder.resolve("out"))
            : List.of("--no-sheets"));
    return command;
  }

  @Override
  public Pattern complaint() {
    return COMPLAINT;
  }

  @Override
  public Pattern remark() {
    return REMARK;
  }

  private byte[] table(String csv) {
    String separator = pick(List.of(",", ",", ",", ";", "\t"));
    String changed =
        rows(csv).stream()
            .map(row -> row.stream().map(this::quoted).collect(Collectors.joining(separator)))
            .collect(Collectors.joining("\n", "", "\n"));
    if (random.nextInt(6) == 0) {
      changed = broken(changed);
    }
    return encoded(changed);
  }

  private String quoted(String cell) {
    boolean needed = cell.chars().anyMatch(c -> ",;\"\n\t".indexOf(c) >= 0);
    return needed || random.nextInt(40) == 0 ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
  }

  /** The table's cells, changed. */
  private List<List<String>> rows(String csv) {
    List<List<String>> rows =
        QUOTED_COMMA
            .matcher(csv)
            .replaceAll("$1$2")
            .lines()
            .map(line -> (List<String>) new ArrayList<>(Arrays.asList(line.split(",", -1))))
            .collect(Collectors.toCollection(ArrayList::new));
    for (int changes = random.nextInt(4); changes > 0; changes--) {
      int at = random.nextInt(rows.size());
      List<String> row = rows.get(at);
      switch (random.nextInt(16)) {
        case 0 -> rows.add(at, new ArrayList<>(row));
        case 1 -> rows.set(at, new ArrayList<>());
        case 2 -> row.add(value());
        case 3 -> rows.add(rows.get(0));
        case 4 -> rows.set(0, rows.get(at));
        case 5 -> rows.set(0, row(rows.get(0)));
        case 6 -> many(rows, row);
        default -> rows.set(at, row(row));
      }
    }
    return rows;
  }

  /** With another value somewhere. */
  private List<String> row(List<String> row) {
    List<String> other = new ArrayList<>(row);
    if (!other.isEmpty()) {
      other.set(random.nextInt(other.size()), value());
    }
    return other;
  }

  private void many(List<List<String>> rows, List<String> row) {
    for (int i = 1 << random.nextInt(random.nextInt(10) == 0 ? 13 : 6); i > 0; i--) {
      List<String> other = new ArrayList<>(row);
      if (!other.isEmpty()) {
        other.set(0, other.get(0) + (random.nextBoolean() ? "" : " " + i));
      }
      rows.add(other);
    }
  }

  private String value() {
    return switch (random.nextInt(8)) {
      case 0 -> "";
      case 1 -> pick(GrammarEvents.HOSTILE);
      case 2 -> "x".repeat(1 << random.nextInt(14));
      default -> pick(OF_TABLES);
    };
  }

  private void workbook(List<List<String>> rows, Path file) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      if (random.nextInt(10) == 0) {
        book.createSheet(pick(List.of("Notes", "Sites 2")));
      }
      Sheet sheet = book.createSheet(pick(List.of("Sites", "Sheet1", "=1+1")));
      for (int r = 0; r < rows.size(); r++) {
        Row row = sheet.createRow(r);
        for (int c = 0; c < rows.get(r).size(); c++) {
          fill(row.createCell(c), rows.get(r).get(c));
        }
      }
      book.write(out);
    }
  }

  private void fill(Cell cell, String value) {
    if (value.matches("-?\\d{1,9}")) {
      cell.setCellValue(Integer.parseInt(value));
      return;
    }
    switch (random.nextInt(3000)) {
      case 0 -> cell.setCellFormula(pick(List.of("1+1", "A1", "1/0", "SUM(A1:A9)")));
      case 1 -> cell.setCellErrorValue((byte) 42);
      case 2 -> cell.setCellValue(random.nextBoolean());
      case 3 -> cell.setCellValue(LocalDate.of(2027, 3, 2));
      case 4 -> cell.setCellValue(random.nextDouble() * 1e6);
      default -> cell.setCellValue(value.substring(0, Math.min(value.length(), 32_000)));
    }
  }

  /** Values of a text that are others. */
  private String changed(String yaml) {
    String changed = yaml;
    for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
      List<MatchResult> values = VALUE.matcher(changed).results().toList();
      if (random.nextInt(8) == 0 || values.isEmpty()) {
        changed = broken(changed);
        continue;
      }
      MatchResult value = values.get(random.nextInt(values.size()));
      String other =
          random.nextInt(3) == 0
              ? pick(GrammarEvents.HOSTILE)
              : values.get(random.nextInt(values.size())).group();
      changed = changed.substring(0, value.start()) + other + changed.substring(value.end());
    }
    return changed;
  }

  private String broken(String whole) {
    if (whole.isEmpty()) {
      return whole;
    }
    StringBuilder changed = new StringBuilder(whole);
    int at = random.nextInt(changed.length());
    int to = Math.min(changed.length(), at + random.nextInt(40));
    switch (random.nextInt(4)) {
      case 0 -> changed.delete(at, to);
      case 1 -> changed.insert(at, changed.substring(at, to));
      case 2 -> changed.insert(at, ",;\"'\n{}[]:\t\u0000\u001b\u202e".charAt(random.nextInt(14)));
      default -> changed.setLength(at);
    }
    return changed.toString();
  }

  private byte[] encoded(String whole) {
    return switch (random.nextInt(20)) {
      case 0 -> ("\uFEFF" + whole).getBytes(UTF_8);
      case 1 -> whole.getBytes(UTF_16);
      case 2 -> whole.replace("\n", "\r\n").getBytes(UTF_8);
      case 3 -> whole.getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
      default -> whole.getBytes(UTF_8);
    };
  }

  private <T> T pick(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }
}
