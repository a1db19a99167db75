package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What stands in a file's place when the program is killed, or the disk is full. */
class InterruptedOutputTest {
  private static final int KILLS = 20;
  private static final int SIZE = 3_000_000;
  private static final int LONGEST_LIFE_MILLISECONDS = 60;

  @TempDir Path folder;

  /** Writes the file over and over, all of one letter, then all of the next. */
  public static final class Writer {
    private Writer() {}

    /** Takes the file's name; says "ready" when it stands for the first time. */
    public static void main(String[] args) throws Exception {
      byte[] content = new byte[SIZE];
      for (int i = 0; ; i++) {
        Arrays.fill(content, (byte) ('a' + i % 26));
        try (OutputFile file = OutputFile.at(Path.of(args[0]), OutputFile.Existing.REPLACE)) {
          file.writeAside(content);
          file.putInPlace();
        }
        if (i == 0) {
          System.out.println("ready");
        }
      }
    }
  }

  @Test
  void aKilledProgramLeavesAWholeFile() throws Exception {
    Path target = folder.resolve("plan.pdf");
    Random random = new Random(5);
    for (int kill = 0; kill < KILLS; kill++) {
      Process writer = start("", Writer.class.getName(), target.toString());
      try (InputStream out = writer.getInputStream()) {
        assertEquals('r', out.read(), () -> "the writer of " + target + " didn't start");
        TimeUnit.MILLISECONDS.sleep(random.nextInt(LONGEST_LIFE_MILLISECONDS));
      } finally {
        writer.destroyForcibly().waitFor();
      }
      byte[] found = Files.readAllBytes(target);
      byte[] whole = new byte[SIZE];
      Arrays.fill(whole, found[0]);
      assertArrayEquals(whole, found);
    }
  }

  /** No file may grow past 16 blocks, which is what a full disk looks like from here. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aFullDiskLeavesNothingHalfDone() throws Exception {
    Path event = Files.copy(Path.of("samples/corner-cafe.yaml"), folder.resolve("cafe.yaml"));
    Path earlier = Files.writeString(folder.resolve("notes.txt"), "keep me");
    Process process = start("ulimit -f 16;", Main.class.getName(), "plan", event.toString());
    String printed;
    try (InputStream out = process.getInputStream()) {
      printed = new String(out.readAllBytes(), StandardCharsets.UTF_8);
    }
    assertEquals(ExitCode.PROBLEMS, process.waitFor(), printed);
    assertTrue(printed.contains("cafe-plan.pdf: can't be written"), printed);
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(List.of(event, earlier), files.sorted().toList());
    }
  }

  private static Process start(String before, String... command) throws IOException {
    List<String> java = new ArrayList<>();
    java.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    java.addAll(
        List.of("-XX:-UsePerfData", "-Xmx512m", "-cp", System.getProperty("java.class.path")));
    java.addAll(List.of(command));
    List<String> whole = new ArrayList<>();
    if (!before.isEmpty()) {
      whole.addAll(List.of("sh", "-c", before + " exec \"$@\"", "sh"));
    }
    whole.addAll(java);
    return new ProcessBuilder(whole).redirectErrorStream(true).start();
  }
}
