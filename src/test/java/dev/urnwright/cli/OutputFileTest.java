package dev.urnwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.urnwright.cli.OutputFile.Existing;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class OutputFileTest {
  @TempDir private Path folder;

  @Test
  void aNewFileHasItsContentAndNothingElseIsLeft() throws Exception {
    Path target = folder.resolve("plan.pdf");
    write(target, Existing.REPLACE_OURS, "new");
    assertEquals("new", Files.readString(target));
    assertEquals(List.of("plan.pdf"), names());
  }

  @Test
  void untilItIsPutInPlaceTheOldFileStands() throws Exception {
    Path target = folder.resolve("plan.pdf");
    Files.writeString(target, "old");
    try (OutputFile file = OutputFile.at(target, Existing.REPLACE)) {
      file.writeAside("new".getBytes(UTF_8));
      assertEquals("old", Files.readString(target));
    }
    assertEquals("old", Files.readString(target));
    assertEquals(List.of("plan.pdf"), names());
  }

  @Test
  void ourOwnPdfIsReplaced() throws Exception {
    Path target = folder.resolve("plan.pdf");
    Files.writeString(target, "%PDF-1.5\n<</Creator(Urnwright 0.1.0)>>");
    write(target, Existing.REPLACE_OURS, "new");
    assertEquals("new", Files.readString(target));
  }

  @Test
  void anothersPdfIsLeftAloneUnlessToldOtherwise() throws Exception {
    Path target = folder.resolve("plan.pdf");
    Files.writeString(target, "%PDF-1.5\n<</Creator(Somebody)>> Urnwright");
    RefusedException e =
        assertThrows(RefusedException.class, () -> OutputFile.at(target, Existing.REPLACE_OURS));
    assertEquals(
        target
            + ": was not written by Urnwright and was left alone; move it away, or give --replace",
        e.getMessage());
    write(target, Existing.REPLACE, "new");
    assertEquals("new", Files.readString(target));
  }

  @Test
  void aWorkbookSaysWhoseItIs() throws Exception {
    Path ours = folder.resolve("ours.xlsx");
    workbook(ours, "<Properties><Application>Urnwright</Application></Properties>");
    Path theirs = folder.resolve("theirs.xlsx");
    workbook(theirs, "<Properties><Application>A spreadsheet</Application></Properties>");
    Path broken = folder.resolve("broken.xlsx");
    Files.writeString(broken, "no workbook");
    assertTrue(Authorship.isOurs(ours));
    assertFalse(Authorship.isOurs(theirs));
    assertFalse(Authorship.isOurs(broken));
  }

  @Test
  void aCalendarSaysWhoseItIs() throws Exception {
    Path ours = folder.resolve("ours.ics");
    Files.writeString(ours, "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Urnwright//Run//EN\r\n");
    Path theirs = folder.resolve("theirs.ics");
    Files.writeString(
        theirs, "BEGIN:VCALENDAR\r\nPRODID:-//Somebody//EN\r\nNAME:PRODID:-//Urnwright//\r\n");
    assertTrue(Authorship.isOurs(ours));
    assertFalse(Authorship.isOurs(theirs));
  }

  @Test
  void anUnknownKindOfFileIsNeverOurs() throws Exception {
    Path notes = folder.resolve("notes.txt");
    Files.writeString(notes, "Urnwright");
    assertFalse(Authorship.isOurs(notes));
  }

  @Test
  void keepingMeansKeeping() throws Exception {
    Path target = folder.resolve("event.yaml");
    Files.writeString(target, "mine");
    RefusedException e =
        assertThrows(RefusedException.class, () -> OutputFile.at(target, Existing.KEEP));
    assertEquals(target + ": is there already and was left alone; name another", e.getMessage());
  }

  @ParameterizedTest
  @EnumSource
  void aFolderIsNoPlace(Existing existing) throws Exception {
    Path target = Files.createDirectory(folder.resolve("plan.pdf"));
    assertThrows(RefusedException.class, () -> OutputFile.at(target, existing));
  }

  @ParameterizedTest
  @EnumSource
  void aLinkIsNotFollowed(Existing existing) throws Exception {
    Path elsewhere = folder.resolve("precious.txt");
    Files.writeString(elsewhere, "precious");
    Path target = Files.createSymbolicLink(folder.resolve("plan.pdf"), elsewhere);
    assertThrows(RefusedException.class, () -> OutputFile.at(target, existing));
    assertEquals("precious", Files.readString(elsewhere));
  }

  @Test
  void whatAppearsMeanwhileIsNotWrittenOver() throws Exception {
    Path target = folder.resolve("plan.pdf");
    try (OutputFile file = OutputFile.at(target, Existing.REPLACE_OURS)) {
      file.writeAside("new".getBytes(UTF_8));
      Files.writeString(target, "somebody was faster");
      assertThrows(RefusedException.class, file::putInPlace);
    }
    assertEquals("somebody was faster", Files.readString(target));
    assertEquals(List.of("plan.pdf"), names());
  }

  @Test
  void aMissingFolderIsNamed() throws Exception {
    Path missing = folder.resolve("nowhere");
    try (OutputFile file = OutputFile.at(missing.resolve("plan.pdf"), Existing.REPLACE)) {
      RefusedException e = assertThrows(RefusedException.class, () -> file.writeAside(new byte[1]));
      assertTrue(e.getMessage().contains("there is no folder " + missing), e.getMessage());
    }
  }

  @Test
  void aFolderThatForbidsWritingIsNamed() throws Exception {
    assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
    try (OutputFile file = OutputFile.at(folder.resolve("plan.pdf"), Existing.REPLACE)) {
      assumeTrue(!Files.isWritable(folder), "the administrator may write anywhere");
      RefusedException e = assertThrows(RefusedException.class, () -> file.writeAside(new byte[1]));
      assertTrue(e.getMessage().contains("access denied; allow writing to"), e.getMessage());
    } finally {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  /** Where not even the administrator may write. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void aReadOnlyFolderIsNamedToTheAdministratorToo() throws Exception {
    Path kernels = Path.of("/sys");
    assumeTrue(Files.isDirectory(kernels));
    try (OutputFile file = OutputFile.at(kernels.resolve("plan.pdf"), Existing.REPLACE)) {
      RefusedException e = assertThrows(RefusedException.class, () -> file.writeAside(new byte[1]));
      assertTrue(e.getMessage().startsWith("/sys/plan.pdf: can't be written"), e.getMessage());
    }
  }

  @Test
  void whoMightNotReadTheOldFileMayNotReadTheNewOne() throws Exception {
    assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
    Path target = Files.writeString(folder.resolve("plan.pdf"), "old");
    Files.setPosixFilePermissions(target, PosixFilePermissions.fromString("rw-------"));
    write(target, Existing.REPLACE, "new");
    assertEquals("new", Files.readString(target));
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(target)));
  }

  private static void write(Path target, Existing existing, String content)
      throws RefusedException {
    try (OutputFile file = OutputFile.at(target, existing)) {
      file.writeAside(content.getBytes(UTF_8));
      file.putInPlace();
    }
  }

  private static void workbook(Path file, String properties) throws IOException {
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("docProps/app.xml"));
      zip.write(properties.getBytes(UTF_8));
      zip.closeEntry();
    }
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
