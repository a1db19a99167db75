package dev.urnwright.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.problem.Problem;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are no workbooks, or that could do harm, are refused in one line each. */
class HostileWorkbooksTest {
  private static final String SHEET = "xl/worksheets/sheet1.xml";

  @TempDir private Path folder;
  private Map<String, byte[]> parts;

  @BeforeEach
  void takeApart() throws IOException {
    parts = new LinkedHashMap<>();
    try (ZipInputStream zip =
        new ZipInputStream(new ByteArrayInputStream(Forms.of(Forms.SMALL, folder)))) {
      for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        parts.put(part.getName(), zip.readAllBytes());
      }
    }
  }

  @Test
  void putTogetherAgainItIsTaken() throws IOException {
    assertEquals("", said(together()));
  }

  @Test
  void whatIsNoWorkbookIsCalledByItsName() throws Exception {
    assertEquals("this file is empty", said(new byte[0]));
    assertEquals("this is not a workbook", said("event: Mill fair\n".getBytes(UTF_8)));
    assertEquals("this is an archive, but not a workbook", said(zip(Map.of("a", new byte[9]))));
    assertEquals(
        "this is a sheet of the kind .ods",
        said(zip(Map.of("mimetype", "application/vnd.oasis".getBytes(UTF_8)))));
    assertEquals(
        "there is no such file",
        EventWorkbook.open(folder.resolve("none.xlsx")).problems().get(0).wrong());
    assertEquals("this is a folder", EventWorkbook.open(folder).problems().get(0).wrong());
    ByteArrayOutputStream old = new ByteArrayOutputStream();
    try (HSSFWorkbook workbook = new HSSFWorkbook()) {
      workbook.createSheet("My event");
      workbook.write(old);
    }
    assertEquals("this is a workbook of the old kind (.xls)", said(old.toByteArray()));
  }

  @Test
  void aPasswordIsSaidToBeInTheWay() throws Exception {
    ByteArrayOutputStream locked = new ByteArrayOutputStream();
    try (POIFSFileSystem files = new POIFSFileSystem()) {
      Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("thimble");
      try (OPCPackage plain = OPCPackage.open(new ByteArrayInputStream(together()));
          OutputStream out = encryptor.getDataStream(files)) {
        plain.save(out);
      }
      files.writeFilesystem(locked);
    }
    assertEquals("this workbook is locked with a password", said(locked.toByteArray()));
  }

  @Test
  void macrosAndOtherFilesAreRefused() throws IOException {
    parts.put("xl/vbaProject.bin", new byte[100]);
    assertEquals("this workbook has macros", said(together()));
    parts.remove("xl/vbaProject.bin");
    parts.put("xl/externalLinks/externalLink1.xml", "<externalLink/>".getBytes(UTF_8));
    assertEquals("this workbook takes figures from other files", said(together()));
  }

  @Test
  void whatUnpacksToVeryMuchIsRefused() throws IOException {
    parts.put("xl/media/image1.png", new byte[120 << 20]);
    assertEquals("this workbook unpacks to more than any event needs", said(together()));
    parts.remove("xl/media/image1.png");
    StringBuilder strings = new StringBuilder(text("xl/sharedStrings.xml"));
    strings.insert(strings.lastIndexOf("</sst>"), "<si><t>mill</t></si>".repeat(1_500_000));
    parts.put("xl/sharedStrings.xml", strings.toString().getBytes(UTF_8));
    assertEquals("this workbook unpacks to more than any event needs", said(together()));
  }

  @Test
  void aMillionRowsAreRefusedAndAMillionEmptyOnesAreNot() throws IOException {
    String groups = text(groupsSheet());
    StringBuilder rows = new StringBuilder();
    for (int row = 30; row < 1_000_000; row++) {
      rows.append("<row r=\"").append(row).append("\"><c r=\"A").append(row);
      rows.append("\"><v>7</v></c></row>");
    }
    parts.put(groupsSheet(), groups.replace("</sheetData>", rows + "</sheetData>").getBytes(UTF_8));
    assertEquals("this sheet has more rows than any event needs", said(together()));
    parts.put(
        groupsSheet(),
        groups
            .replace("</sheetData>", rows.toString().replaceAll("<c .*?</c>", "") + "</sheetData>")
            .getBytes(UTF_8));
    assertEquals("", said(together()));
  }

  @Test
  void entitiesAreNotUnfolded() throws IOException {
    parts.put(
        SHEET,
        text(SHEET)
            .replaceFirst(
                "<worksheet",
                "<!DOCTYPE worksheet [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><worksheet")
            .replaceFirst("<sheetData>", "<sheetData>&x;")
            .getBytes(UTF_8));
    assertEquals("this workbook is damaged", said(together()));
  }

  /** Bytes changed, cut off, doubled: refused or read, never a fault. */
  @Test
  void damageIsSaidToBeDamage() throws IOException {
    int refused = 0;
    for (int seed = 0; seed < 150; seed++) {
      Random random = new Random(seed);
      Map<String, byte[]> whole = new LinkedHashMap<>(parts);
      if (seed % 3 > 0) {
        String name = List.copyOf(parts.keySet()).get(random.nextInt(parts.size()));
        parts.put(name, damaged(parts.get(name), random));
      }
      byte[] bytes = seed % 3 > 0 ? together() : damaged(together(), random);
      refused += said(bytes).isEmpty() ? 0 : 1;
      parts = whole;
    }
    assertTrue(refused > 50, "only " + refused + " were refused");
  }

  private static byte[] damaged(byte[] whole, Random random) {
    byte[] bytes = whole.clone();
    if (bytes.length == 0) {
      return bytes;
    }
    if (random.nextInt(3) == 0) {
      return java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length));
    }
    for (int i = 0; i < 1 + random.nextInt(20); i++) {
      bytes[random.nextInt(bytes.length)] =
          random.nextBoolean() ? (byte) random.nextInt(256) : (byte) ('0' + random.nextInt(10));
    }
    return bytes;
  }

  private String groupsSheet() {
    int number = FormSheet.all().stream().map(FormSheet::name).toList().indexOf("My groups") + 1;
    return "xl/worksheets/sheet" + number + ".xml";
  }

  private String text(String part) {
    return new String(parts.get(part), UTF_8);
  }

  private byte[] together() throws IOException {
    return zip(parts);
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

  /** What is wrong with a file of these bytes, first of all; nothing if it is taken. */
  private String said(byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("event.xlsx"), bytes);
    List<Problem> problems = EventWorkbook.open(file).problems();
    problems.forEach(problem -> assertFalse(problem.expected().isBlank()));
    return problems.isEmpty() ? "" : problems.get(0).wrong();
  }

  private static final java.nio.charset.Charset UTF_8 = StandardCharsets.UTF_8;
}
