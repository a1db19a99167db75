package dev.urnwright.cli;

import dev.urnwright.input.Nearest;
import dev.urnwright.pdf.BrokenTemplateException;
import dev.urnwright.text.PlanText;
import dev.urnwright.wording.BrokenWordsException;
import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program. */
public final class Main {
  private final Console console;
  private final Commands commands;

  Main(Console console) {
    this.console = console;
    this.commands = new Commands(console);
  }

  /** Runs the command that the arguments name and ends the process with its exit code. */
  public static void main(String[] args) {
    StandardOutput output = new StandardOutput(new FileOutputStream(FileDescriptor.out));
    StandardOutput errors = new StandardOutput(new FileOutputStream(FileDescriptor.err));
    Optional<java.io.Console> terminal = Optional.ofNullable(System.console());
    Console console =
        new Console(
            new BufferedReader(new InputStreamReader(System.in, charset(terminal))),
            writer(output, terminal),
            writer(errors, terminal),
            Ansi.AUTO.enabled() ? Ansi.ON : Ansi.OFF,
            terminal.isPresent(),
            System.getenv("URNWRIGHT_DEBUG") != null);
    int code = new Main(console).run(args);
    console.out().flush();
    if (output.loss().isPresent()) {
      console.complain("urnwright: standard output: " + output.loss().get().getMessage());
      code = Math.max(code, ExitCode.PROBLEMS);
    }
    console.err().flush();
    System.exit(code);
  }

  /** Runs one command and returns its exit code. */
  int run(String... args) {
    CommandLine line = line(commands.called(args));
    line.registerConverter(Path.class, new FilePaths());
    line.registerConverter(UUID.class, Main::id);
    line.registerConverter(LocalDate.class, Main::day);
    line.setOut(console.out())
        .setErr(console.err())
        .setColorScheme(CommandLine.Help.defaultColorScheme(console.ansi()))
        .setUsageHelpWidth(PlanText.COLUMNS)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler(this::misused)
        .setExecutionExceptionHandler((e, command, result) -> failed(e));
    try {
      return line.execute(args);
    } catch (OutOfMemoryError | StackOverflowError e) {
      return fault(e);
    }
  }

  private static UUID id(String text) {
    try {
      return UUID.fromString(text);
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException(
          "'" + text + "' is not the id of an entry; 'urnwright journal list' shows them");
    }
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new TypeConversionException(
          "'" + text + "' is not a day; expected year-month-day such as 2027-06-05");
    }
  }

  /** All commands, as their help, the manual and the completions list them. */
  CommandLine commands() {
    return line(commands.names());
  }

  private CommandLine line(Collection<String> names) {
    CommandLine line = new CommandLine(new RootCommand(console));
    names.forEach(name -> line.addSubcommand(name, commands.make(name)));
    return line;
  }

  private int misused(ParameterException e, String[] args) {
    String command = e.getCommandLine().getCommandSpec().qualifiedName();
    String wrong =
        e instanceof UnmatchedArgumentException unmatched ? unknown(unmatched) : e.getMessage();
    console.complain("urnwright: " + wrong);
    console.complain("'" + command + " --help' explains");
    return ExitCode.MISUSE;
  }

  private static String unknown(UnmatchedArgumentException e) {
    String given = "'" + e.getUnmatched().get(0) + "'";
    boolean commands = !e.getCommandLine().getSubcommands().isEmpty();
    String wrong =
        e.isUnknownOption()
            ? "unknown option " + given
            : commands ? "unknown command " + given : given + " is more than this command takes";
    List<String> likely =
        Nearest.to(e.getUnmatched().get(0), e.getSuggestions())
            .map(List::of)
            .orElse(e.getSuggestions());
    return likely.isEmpty()
        ? wrong
        : wrong + "; did you mean '" + String.join("' or '", likely) + "'?";
  }

  private int failed(Exception e) {
    if (e instanceof RefusedException refused) {
      refused.messages().forEach(console::complain);
      return ExitCode.PROBLEMS;
    }
    if (e instanceof BrokenTemplateException || e instanceof BrokenWordsException) {
      console.complain(String.valueOf(e.getMessage()));
      return ExitCode.PROBLEMS;
    }
    return fault(e);
  }

  private int fault(Throwable e) {
    console.complain(
        "urnwright: a fault of the program, not of your event: "
            + e
            + " (with URNWRIGHT_DEBUG=1 it says where)");
    if (console.traces()) {
      e.printStackTrace(console.err());
    }
    return ExitCode.FAULT;
  }

  /**
   * A terminal's own character set where it names one; else UTF-8, which files and pipes expect and
   * a terminal in the C locale nearly always shows.
   */
  private static PrintWriter writer(OutputStream out, Optional<java.io.Console> terminal) {
    return new PrintWriter(new OutputStreamWriter(out, charset(terminal)));
  }

  private static Charset charset(Optional<java.io.Console> terminal) {
    return terminal
        .map(java.io.Console::charset)
        .filter(named -> !named.equals(StandardCharsets.US_ASCII))
        .orElse(StandardCharsets.UTF_8);
  }
}
