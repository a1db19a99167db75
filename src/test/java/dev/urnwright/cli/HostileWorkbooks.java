package dev.urnwright.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import dev.urnwright.input.GrammarEvents;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Filled-in forms that somebody changed, broke or booby-trapped. */
final class HostileWorkbooks implements Fuzz.Hostile {
  /** One in so many is planned with all its sheets, another converted; the others are checked. */
  private static final int PLANNED = 200;

  private static final int CONVERTED = 50;

  private static final List<String> SAMPLES =
      List.of(
          "samples/autumn-conference.yaml",
          "samples/harvest-supper.yaml",
          "samples/corner-cafe.yaml",
          "templates/event.yaml");

  private static final Pattern COMPLAINT =
      Pattern.compile(
          ".+\\.xlsx(!.+)?: .+; .+|\\d+ problems?; (mend .*|nothing was written)|.+\\.xlsx: .+"
              + "|.+\\.yaml: .+");

  private static final Pattern CELL =
      Pattern.compile("<c r=\"([A-Z]+)(\\d+)\"([^>]*?)(/>|>.*?</c>)", Pattern.DOTALL);

  private static final List<String> PLACES =
      List.of(
          "A", "7", "", "A0", "ZZZZ1", "A99999999999", "a1", "-1", "$A$1", "A1:B2", "XFD1048576");

  private static final List<String> RANGES =
      List.of("A1", "A1:", ":", "", "A1:ZZZ9", "B5:C6", "A:C", "5:6", "#REF!", "A99999999999:B1");

  private static final List<String> NUMBERS =
      List.of(
          "1e400",
          "-1",
          "NaN",
          "INF",
          "60",
          "0",
          "-0",
          "2958466",
          "45678.5",
          "0.999999",
          "1e-320",
          "1E+15",
          "0x10",
          "1,5",
          " 7 ",
          "123456789012345678901234567890",
          "∞",
          "");

  private final List<Map<String, byte[]>> forms = new ArrayList<>();
  private Random random = new Random(0);

  @Override
  public List<Object> lay(long seed, Path folder) throws IOException {
    if (forms.isEmpty()) {
      for (String sample : SAMPLES) {
        forms.add(form(Path.of(sample)));
      }
    }
    random = new Random(seed * 31 + 5);
    Path file = Files.write(folder.resolve("f.xlsx"), workbook());
    if (seed % PLANNED == 0) {
      return List.of("plan", file, "--out", folder.resolve("out"));
    }
    return seed % CONVERTED == 1
        ? List.of("convert", file, folder.resolve("g.yaml"))
        : List.of("check", file);
  }

  @Override
  public Pattern complaint() {
    return COMPLAINT;
  }

  private static Map<String, byte[]> form(Path sample) throws IOException {
    Path folder = Files.createTempDirectory("form");
    Path file = folder.resolve("form.xlsx");
    Run run = Run.of("convert", sample, file);
    if (run.code() != ExitCode.DONE) {
      throw new IllegalStateException(run.err());
    }
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream zip =
        new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(file)))) {
      for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        parts.put(part.getName(), zip.readAllBytes());
      }
    }
    Files.delete(file);
    Files.delete(folder);
    return parts;
  }

  private byte[] workbook() throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>(pick(forms));
    int how = random.nextInt(20);
    if (how < 12) {
      for (int changes = 1 + random.nextInt(4); changes > 0; changes--) {
        change(parts, sheet(parts), this::cell);
      }
    } else if (how < 14) {
      change(parts, sheet(parts), this::structure);
    } else if (how < 15) {
      change(parts, "xl/workbook.xml", this::book);
    } else if (how < 17) {
      change(parts, pick(List.copyOf(parts.keySet())), this::xml);
    } else if (how < 18) {
      parts(parts);
    }
    byte[] bytes = zip(parts);
    return how < 18 ? bytes : archive(bytes);
  }

  private interface Change {
    String of(String xml);
  }

  private static void change(Map<String, byte[]> parts, String name, Change change) {
    parts.computeIfPresent(name, (same, xml) -> change.of(new String(xml, UTF_8)).getBytes(UTF_8));
  }

  private String sheet(Map<String, byte[]> parts) {
    return pick(parts.keySet().stream().filter(name -> name.contains("/sheet")).toList());
  }

  /** Another content or another kind of one cell. */
  private String cell(String xml) {
    Matcher cells = CELL.matcher(xml);
    int count = (int) cells.results().count();
    if (count == 0) {
      return xml;
    }
    int chosen = random.nextInt(count);
    cells.reset();
    for (int i = 0; i <= chosen; i++) {
      if (!cells.find()) {
        return xml;
      }
    }
    String place = random.nextInt(25) == 0 ? pick(PLACES) : cells.group(1) + cells.group(2);
    return xml.substring(0, cells.start()) + filled(place) + xml.substring(cells.end());
  }

  private String filled(String place) {
    String style =
        random.nextBoolean() ? "" : " s=\"" + pick(List.of("0", "3", "5", "999", "-1", "x")) + "\"";
    String begin = "<c r=\"" + place + "\"" + style;
    return switch (random.nextInt(12)) {
      case 0 ->
          begin
              + "><f>"
              + escaped(pick(List.of("1+1", "A1", "SUM(A:A)", "", "WEBSERVICE(\"http://x\")")))
              + "</f><v>2</v></c>";
      case 1 ->
          begin
              + " t=\"e\"><v>"
              + pick(List.of("#REF!", "#N/A", "", "#NAME?", "no error"))
              + "</v></c>";
      case 2 -> begin + " t=\"b\"><v>" + pick(List.of("0", "1", "true", "7", "")) + "</v></c>";
      case 3 ->
          begin
              + " t=\"s\"><v>"
              + pick(List.of("0", "1", "99999", "-1", "x", "", "1.5", "2147483648"))
              + "</v></c>";
      case 4, 5 -> begin + "><v>" + pick(NUMBERS) + "</v></c>";
      case 6 ->
          begin + " t=\"d\"><v>" + pick(List.of("2027-03-28", "2027-02-30", "x", "")) + "</v></c>";
      case 7 -> begin + " t=\"zzz\"><v>1</v></c>";
      case 8 ->
          begin
              + " t=\"inlineStr\"><is><r><t>2</t></r><rPh sb=\"0\" eb=\"1\"><t>x</t></rPh><r><t>40 ml</t></r></is></c>";
      case 9 -> begin + " t=\"str\"><v>" + "x".repeat(1 << random.nextInt(17)) + "</v></c>";
      default -> begin + " t=\"inlineStr\"><is><t>" + escaped(value()) + "</t></is></c>";
    };
  }

  private String value() {
    String value = pick(GrammarEvents.HOSTILE);
    return value.startsWith("\"") && value.endsWith("\"") && value.length() > 1
        ? value.substring(1, value.length() - 1)
        : value;
  }

  /** Rows, merged cells and headings that are not where they belong. */
  private String structure(String xml) {
    return switch (random.nextInt(8)) {
      case 0 ->
          xml.replace(
              "</sheetData>",
              "</sheetData><mergeCells><mergeCell ref=\"" + pick(RANGES) + "\"/></mergeCells>");
      case 1 ->
          xml.replaceFirst(
              "<row r=\"5\"",
              "<row r=\"" + pick(List.of("-5", "0", "x", "99999999999", "4", "2147483647")) + "\"");
      case 2 -> xml.replaceFirst("(<row r=\"5\".*?</row>)", "$1".repeat(1 + random.nextInt(3)));
      case 3 -> xml.replaceFirst("<row r=\"4\".*?</row>", "");
      case 4 -> xml.replace("</sheetData>", rows(1 << random.nextInt(15)) + "</sheetData>");
      case 5 -> xml.replaceAll(" r=\"[A-Z]+\\d+\"", "");
      case 6 ->
          xml.replaceFirst(
              "<sheetData>.*</sheetData>",
              pick(List.of("", "<sheetData/>", "<sheetData>x</sheetData>")));
      default ->
          xml.replace("<c ", "<x:c ")
              .replace("</c>", "</x:c>")
              .replace(
                  "<worksheet ",
                  "<worksheet xmlns:x=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" ");
    };
  }

  private static String rows(int count) {
    StringBuilder rows = new StringBuilder();
    for (int row = 100; row < 100 + count; row++) {
      rows.append("<row r=\"").append(row).append("\"><c r=\"A").append(row);
      rows.append("\"><v>7</v></c></row>");
    }
    return rows.toString();
  }

  /** Sheets under other names, twice, or leading nowhere. */
  private String book(String xml) {
    return switch (random.nextInt(7)) {
      case 0 ->
          xml.replace(
              "My groups",
              pick(
                  List.of(
                      "My grups",
                      "my_GROUPS",
                      "Notes",
                      "My event",
                      "",
                      "=1+1",
                      "../../x",
                      "Urnwright")));
      case 1 ->
          xml.replace("date1904=\"false\"", "date1904=\"" + pick(List.of("true", "1", "x")) + "\"");
      case 2 ->
          xml.replaceFirst(
              "r:id=\"rId\\d+\"", "r:id=\"" + pick(List.of("rId99", "", "rId1")) + "\"");
      case 3 -> xml.replaceFirst("(<sheet .*?/>)", "$1$1");
      case 4 -> xml.replaceAll("<sheet .*?/>", "");
      case 5 -> xml.replaceFirst("<sheets>.*</sheets>", "");
      default -> xml.replaceFirst("(<sheet name=\"My event\")", "$1 state=\"veryHidden\"");
    };
  }

  /** Broken XML, or XML that would fetch or unfold something. */
  private String xml(String xml) {
    int element = xml.indexOf('<', 60);
    return switch (random.nextInt(10)) {
      case 0 -> xml.substring(0, random.nextInt(xml.length() + 1));
      case 1 -> doctype(xml, "<!ENTITY x SYSTEM \"file:///etc/passwd\">");
      case 2 ->
          doctype(
              xml,
              "<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">"
                  .concat(
                      "<!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;\"><!ENTITY d \"&c;&c;&c;&c;&c;&c;&c;&c;\">"
                          .concat(
                              "<!ENTITY e \"&d;&d;&d;&d;&d;&d;&d;&d;\"><!ENTITY x \"&e;&e;&e;&e;&e;&e;&e;&e;\">")));
      case 3 -> doctype(xml, "<!ENTITY % x SYSTEM \"http://127.0.0.1:9/x\"> %x;");
      case 4 -> xml.replaceFirst("UTF-8", pick(List.of("UTF-16", "ISO-8859-1", "no-such", "")));
      case 5 ->
          element < 0
              ? xml
              : xml.substring(0, element)
                  + "<x>".repeat(1 << random.nextInt(14))
                  + xml.substring(element);
      case 6 ->
          element < 0
              ? xml
              : xml.substring(0, element)
                  + "<x a=\""
                  + "y".repeat(1 << random.nextInt(18))
                  + "\"/>"
                  + xml.substring(element);
      case 7 ->
          xml.replaceFirst(
              "(Target=\")[^\"]*\"",
              "$1"
                  + pick(
                      List.of(
                          "file:///etc/passwd\" TargetMode=\"External\"",
                          "../../../../etc/passwd\"",
                          "\"",
                          "http://127.0.0.1:9/\" TargetMode=\"External\"",
                          "/xl/workbook.xml\"")));
      case 8 -> xml.replaceFirst("xmlns=\"[^\"]*\"", "xmlns=\"urn:x\"");
      default -> swapped(xml);
    };
  }

  private static String doctype(String xml, String entities) {
    int root = xml.indexOf('<', xml.indexOf("?>") + 2);
    if (root < 0) {
      return xml;
    }
    int open = xml.indexOf('>', root);
    return xml.substring(0, root)
        + "<!DOCTYPE x ["
        + entities
        + "]>"
        + xml.substring(root, open + 1)
        + "&x;"
        + xml.substring(open + 1);
  }

  private String swapped(String xml) {
    char[] letters = xml.toCharArray();
    for (int i = 1 + random.nextInt(6); i > 0 && letters.length > 0; i--) {
      letters[random.nextInt(letters.length)] = "<>\"'&/=09aA \u0001".charAt(random.nextInt(13));
    }
    return new String(letters);
  }

  /** Parts that are missing, foreign, or much larger than they look. */
  private void parts(Map<String, byte[]> parts) {
    switch (random.nextInt(8)) {
      case 0 -> parts.remove(pick(List.copyOf(parts.keySet())));
      case 1 -> parts.put("xl/vbaProject.bin", new byte[9]);
      case 2 -> parts.put("xl/externalLinks/externalLink1.xml", "<x/>".getBytes(UTF_8));
      case 3 -> parts.put("xl/media/image1.png", new byte[1 << (12 + random.nextInt(15))]);
      case 4 ->
          parts.put(
              pick(List.of("../../x", "/etc/x", "xl\\x", "", "x/".repeat(500), "\u0001")),
              new byte[3]);
      case 5 -> {
        for (int i = random.nextInt(6000); i > 0; i--) {
          parts.put("xl/p" + i, new byte[0]);
        }
      }
      case 6 -> parts.put("xl/sharedStrings.xml", new byte[0]);
      default -> {
        String strings = new String(parts.get("xl/sharedStrings.xml"), UTF_8);
        String many = "<si><t>x</t></si>".repeat(1 << random.nextInt(20));
        parts.put(
            "xl/sharedStrings.xml", strings.replace("</sst>", many + "</sst>").getBytes(UTF_8));
      }
    }
  }

  /** Damage to the archive itself. */
  private byte[] archive(byte[] whole) {
    byte[] bytes = whole.clone();
    switch (random.nextInt(5)) {
      case 0 -> {
        return Arrays.copyOf(bytes, random.nextInt(bytes.length));
      }
      case 1 -> {
        // the same name twice
        String text = new String(bytes, ISO_8859_1);
        return text.replace("sheet2.xml", "sheet3.xml").getBytes(ISO_8859_1);
      }
      case 2 -> {
        String text = new String(bytes, ISO_8859_1);
        int header = text.indexOf("PK\u0001\u0002");
        for (int i = 0; header >= 0 && i < 5; i++) {
          bytes[header + 6 + random.nextInt(30)] = (byte) random.nextInt(256);
        }
      }
      case 3 -> bytes[6] |= 1; // encrypted, says the first part
      default -> {
        for (int i = random.nextInt(40); i > 0; i--) {
          bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
      }
    }
    return bytes;
  }

  private static byte[] zip(Map<String, byte[]> parts) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
      }
    }
    return out.toByteArray();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private <T> T pick(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }
}
