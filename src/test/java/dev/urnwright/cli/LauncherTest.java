package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher's script, with a jar that says what it was given. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
  private static final Path SCRIPT = Path.of("src/distribution/bin/urnwright");
  private static final long PATIENCE_SECONDS = 120;

  @TempDir Path folder;
  private Path launcher;
  private Path archives;

  /** What the jar runs. */
  public static final class Echo {
    private Echo() {}

    /** Prints its arguments, one a line, and ends with 3. */
    public static void main(String[] args) {
      for (String arg : args) {
        System.out.println("[" + arg + "]");
      }
      System.exit(3);
    }
  }

  @BeforeEach
  void install() throws IOException {
    launcher = folder.resolve("installed/bin/urnwright");
    archives = folder.resolve("archives");
    Files.createDirectories(launcher.getParent());
    Files.createDirectories(folder.resolve("installed/lib"));
    Files.copy(SCRIPT, launcher);
    assertTrue(launcher.toFile().setExecutable(true));
    Files.writeString(folder.resolve("installed/lib/classes.txt"), "java/lang/Object\n");
    jar(folder.resolve("installed/lib/urnwright.jar"));
  }

  @Test
  void handsOnArgumentsAndExitCode() throws Exception {
    Run run = run(launcher, Map.of(), "plan", "two words.yaml", "--out", "a*b", "");
    assertEquals("[plan]\n[two words.yaml]\n[--out]\n[a*b]\n[]\n", run.output());
    assertEquals(3, run.code());
  }

  @Test
  void isFoundThroughLinks() throws Exception {
    Path near =
        Files.createSymbolicLink(folder.resolve("near"), Path.of("installed/bin/urnwright"));
    Path far = Files.createSymbolicLink(folder.resolve("far"), near);
    assertEquals("[check]\n", run(far, Map.of(), "check").output());
  }

  @Test
  void makesItsArchiveOnceAndRunsWithIt() throws Exception {
    assertEquals("[check]\n", run(launcher, Map.of(), "check").output());
    for (long i = 0; i < PATIENCE_SECONDS * 10 && madeArchives().isEmpty(); i++) {
      TimeUnit.MILLISECONDS.sleep(100);
    }
    List<Path> made = madeArchives();
    assertEquals(1, made.size(), "archives in " + archives);
    assertEquals("[check]\n", run(launcher, Map.of(), "check").output());
    assertEquals(made, madeArchives());
  }

  @Test
  void runsWithoutArchives() throws Exception {
    assertEquals(
        "[check]\n", run(launcher, Map.of("URNWRIGHT_ARCHIVES", "none"), "check").output());
    Path file = Files.createFile(folder.resolve("a file"));
    assertEquals(
        "[check]\n",
        run(launcher, Map.of("URNWRIGHT_ARCHIVES", file + "/under"), "check").output());
  }

  @Test
  void saysWhenThereIsNoJava() throws Exception {
    Run run = run(launcher, Map.of("JAVA_HOME", folder.resolve("nowhere").toString()), "check");
    assertEquals(ExitCode.FAULT, run.code());
    assertEquals(
        "urnwright: no Java found; install Java 17 or later, or set JAVA_HOME\n", run.output());
  }

  @Test
  void saysWhenJavaIsTooOld() throws Exception {
    Path java = folder.resolve("old/bin/java");
    Files.createDirectories(java.getParent());
    Files.writeString(java, "#!/bin/sh\necho 'openjdk version \"11.0.2\" 2019-01-15' >&2\n");
    assertTrue(java.toFile().setExecutable(true));
    Run run = run(launcher, Map.of("JAVA_HOME", folder.resolve("old").toString()), "check");
    assertEquals(ExitCode.FAULT, run.code());
    assertTrue(run.output().contains("too old; install Java 17 or later"), run.output());
  }

  private record Run(String output, int code) {}

  private Run run(Path script, Map<String, String> environment, String... args) throws Exception {
    List<String> command = new ArrayList<>(List.of(script.toString()));
    command.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().put("URNWRIGHT_ARCHIVES", archives.toString());
    builder.environment().putAll(environment);
    Process process = builder.start();
    String output;
    try (InputStream in = process.getInputStream()) {
      output = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS));
    return new Run(output, process.exitValue());
  }

  private List<Path> madeArchives() throws IOException {
    if (!Files.isDirectory(archives)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(archives)) {
      return files.filter(file -> file.toString().endsWith(".jsa")).toList();
    }
  }

  private static void jar(Path file) throws IOException {
    Manifest manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Echo.class.getName());
    String name = Echo.class.getName().replace('.', '/') + ".class";
    try (OutputStream out = Files.newOutputStream(file);
        JarOutputStream jar = new JarOutputStream(out, manifest);
        InputStream bytes = Echo.class.getResourceAsStream("/" + name)) {
      jar.putNextEntry(new JarEntry(name));
      jar.write(bytes.readAllBytes());
    }
  }
}
