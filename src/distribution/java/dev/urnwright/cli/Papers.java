package dev.urnwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/** Writes the manual and the shell's completions out of the commands themselves. */
public final class Papers {
  private Papers() {}

  /** Writes into the folder that the only argument names. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    PrintWriter nowhere =
        new PrintWriter(
            new OutputStreamWriter(OutputStream.nullOutputStream(), StandardCharsets.UTF_8));
    CommandLine commands =
        new Main(
                new Console(
                    new BufferedReader(Reader.nullReader()),
                    nowhere,
                    nowhere,
                    Ansi.OFF,
                    false,
                    false))
            .commands();
    Path manual = Files.createDirectories(folder.resolve("manual"));
    int failed =
        ManPageGenerator.generateManPage(
            manual.toFile(), null, new boolean[0], true, pages(commands));
    if (failed != CommandLine.ExitCode.OK) {
      throw new IOException("the manual could not be written into " + manual);
    }
    Files.writeString(folder.resolve("urnwright.bash"), AutoComplete.bash("urnwright", commands));
  }

  private static CommandSpec[] pages(CommandLine commands) {
    return Stream.concat(Stream.of(commands), commands.getSubcommands().values().stream())
        .map(CommandLine::getCommandSpec)
        .filter(spec -> !spec.name().equals("help"))
        .toArray(CommandSpec[]::new);
  }
}
