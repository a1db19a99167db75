package dev.urnwright.cli;

import dev.urnwright.input.GrammarEvents;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Command lines made of the program's own commands and options, their values likely or hostile. */
final class HostileCommands implements Fuzz.Hostile {
  private static final List<String> LIKELY =
      List.of(
          "480 g",
          "6.24 kg",
          "5200",
          "1.81",
          "1,81 %",
          "21 °C",
          "2.3 kg",
          "house-1",
          "house-F1",
          "Tall brewer",
          "House",
          "2027-06-05",
          "svg",
          "pdf",
          "png",
          "yaml",
          "3",
          "cafe",
          "01234567-89ab-cdef-0123-456789abcdef",
          "Long tables=2.3 kg",
          "Long tables=5",
          "To go=120 g",
          "To go=9",
          "house-F1=120 g",
          "x=y=z",
          "=",
          "a=");

  private static final List<String> NAMES =
      List.of(
          "event.yaml",
          "event.yaml",
          "event.yaml",
          "event.xlsx",
          "empty.yaml",
          "broken.yaml",
          "missing.yaml",
          "folder",
          "missing/x.yaml",
          "j.db",
          "new.xlsx",
          "new.pdf",
          "new.csv",
          "new.json",
          "new.svg",
          "new.txt",
          "event.yaml/x",
          "a b",
          "-x",
          "näme ☕.yaml",
          "\u202Etxt.yaml",
          "esc\u001b[31m.yaml",
          "line\nend.yaml",
          ".hidden",
          "x".repeat(300),
          "folder/..",
          "folder/../event.yaml",
          "%s%n",
          "CON",
          "@event.yaml");

  private static final List<String> JOURNALS =
      List.of(
          "j.db",
          "j.db",
          "j.db",
          "event.yaml",
          "folder",
          "missing/j.db",
          "event.yaml/j.db",
          "jdbc:h2:mem:x",
          "jdbc:postgresql://127.0.0.1:9/x",
          "jdbc:postgresql://u:secret@h/x",
          "jdbc:postgresql:",
          "jdbc:sqlite::memory:",
          "http://127.0.0.1:9/");

  private final List<CommandLine> commands = new ArrayList<>();
  private Random random = new Random(0);

  HostileCommands() {
    Console nobody =
        new Console(
            new BufferedReader(Reader.nullReader()),
            new PrintWriter(Writer.nullWriter()),
            new PrintWriter(Writer.nullWriter()),
            Ansi.OFF,
            false,
            false);
    collect(new Main(nobody).commands());
  }

  private void collect(CommandLine command) {
    commands.add(command);
    command.getSubcommands().values().forEach(this::collect);
  }

  @Override
  public List<Object> lay(long seed, Path folder) throws IOException {
    random = new Random(seed * 31 + 11);
    Files.copy(
        Path.of(pick(List.of("samples/corner-cafe.yaml", "samples/office-carafes.yaml"))),
        folder.resolve("event.yaml"));
    Files.writeString(folder.resolve("empty.yaml"), "");
    Files.writeString(folder.resolve("broken.yaml"), GrammarEvents.of(seed));
    Files.writeString(folder.resolve("event.xlsx"), "no workbook");
    Files.createDirectory(folder.resolve("folder"));
    CommandLine command = pick(commands);
    List<Object> line = new ArrayList<>();
    for (CommandLine at = command; at.getParent() != null; at = at.getParent()) {
      line.add(0, at.getCommandName());
    }
    List<OptionSpec> options = new ArrayList<>(command.getCommandSpec().options());
    Collections.shuffle(options, random);
    for (OptionSpec option : options) {
      // Without --journal it would be the user's own.
      boolean journal = option.longestName().equals("--journal");
      if (journal || random.nextInt(100) < (option.required() ? 85 : 22)) {
        int times = option.isMultiValue() ? 1 + random.nextInt(3) : 1;
        for (int i = 0; i < times; i++) {
          line.add(
              random.nextInt(60) == 0 && !journal
                  ? option.longestName() + "x"
                  : option.longestName());
          if (option.arity().max() > 0) {
            line.add(journal ? journal(folder) : value(option, folder));
          }
        }
      }
    }
    for (ArgSpec parameter : command.getCommandSpec().positionalParameters()) {
      if (random.nextInt(30) > 0) {
        line.add(value(parameter, folder));
      }
    }
    if (random.nextInt(40) == 0) {
      line.add(pick(GrammarEvents.HOSTILE));
    }
    return line;
  }

  /** A journal is made where it is missing, whatever is asked of it then. */
  @Override
  public boolean mayChange(Path file) {
    return file.getFileName().toString().startsWith("j.db");
  }

  private Object journal(Path folder) {
    String name = pick(JOURNALS);
    return name.contains(":") ? name : folder.resolve(name);
  }

  private Object value(ArgSpec argument, Path folder) {
    boolean path =
        argument.type() == Path.class
            || (argument.auxiliaryTypes().length > 0 && argument.auxiliaryTypes()[0] == Path.class);
    if (path) {
      return random.nextInt(40) == 0 ? "" : folder + "/" + pick(NAMES);
    }
    String hostile = pick(GrammarEvents.HOSTILE);
    // A message that repeats "null" would look like a fault.
    return random.nextInt(3) > 0 || hostile.equals("null") ? pick(LIKELY) : hostile;
  }

  private <T> T pick(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }
}
