package dev.urnwright.cli;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Hands the program many hostile things and says what went wrong: a fault, a hang, a message that
 * is none, a file that appeared or changed although the command was refused. Memory is limited from
 * outside, with {@code -Xmx512m}.
 */
public final class Fuzz implements AutoCloseable {
  /**
   * More work than this, of all threads, is a hang: some 5 s of a quiet machine with two processors
   * that hasn't compiled the program yet, three times over. Not by the clock, for others may be
   * busy.
   */
  private static final long MOST_WORK_SECONDS = 30;

  /** Nothing but a lock takes so long without working. */
  private static final long PATIENCE_SECONDS = 300;

  private static final long LOOK_MILLISECONDS = 200;

  /** After so many the command line says how far it is. */
  private static final long REPORT = 500;

  private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}&&[^\\n]]");
  private static final Pattern QUOTED = Pattern.compile("'[^']*'");
  private static final Pattern JAVA =
      Pattern.compile("\\bat dev\\.urnwright|Exception\\b|\\bjava\\.|\\bnull\\b");

  private final Hostile hostile;
  private final Path folder;
  private int accepted;

  private Fuzz(Hostile hostile, Path folder) {
    this.hostile = hostile;
    this.folder = folder;
  }

  /** Tries in a folder of its own. */
  static Fuzz of(Hostile hostile, Path folder) {
    return new Fuzz(hostile, folder);
  }

  /** Something that might be handed to the program; the same for the same seed. */
  interface Hostile {
    /**
     * Puts files into an empty folder.
     *
     * @return the arguments that make the program meet them
     */
    List<Object> lay(long seed, Path folder) throws IOException;

    /** Whether a refused command may leave its mark there. */
    default boolean mayChange(Path file) {
      return false;
    }

    /** What every line on the error output looks like. */
    default Pattern complaint() {
      return Pattern.compile(".*");
    }

    /** What every line on the error output looks like when all is well; usually there is none. */
    default Pattern remark() {
      return Pattern.compile("");
    }
  }

  /** How many times nothing was wrong. */
  int accepted() {
    return accepted;
  }

  /** What went wrong with a seed. */
  Optional<String> fault(long seed) throws IOException, InterruptedException {
    clear();
    List<Object> command = hostile.lay(seed, folder);
    Map<Path, Integer> before = content();
    FutureTask<Run> trial = new FutureTask<>(() -> Run.of(command.toArray()));
    Thread thread = new Thread(trial, "trial");
    thread.setDaemon(true);
    thread.start();
    Run run;
    try {
      run = result(trial);
    } catch (TimeoutException e) {
      thread.interrupt();
      return Optional.of(shown(command) + "still at it after " + e.getMessage());
    } catch (ExecutionException e) {
      return Optional.of(shown(command) + "escaped: " + e.getCause());
    }
    return judge(run, before).map(wrong -> shown(command) + wrong);
  }

  private static Run result(FutureTask<Run> trial)
      throws TimeoutException, ExecutionException, InterruptedException {
    long before = worked();
    for (long looks = 1; ; looks++) {
      try {
        return trial.get(LOOK_MILLISECONDS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException notYet) {
        if (worked() - before > TimeUnit.SECONDS.toNanos(MOST_WORK_SECONDS)) {
          throw new TimeoutException(MOST_WORK_SECONDS + " s of work");
        }
        if (looks * LOOK_MILLISECONDS > TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS)) {
          throw new TimeoutException(PATIENCE_SECONDS + " s");
        }
      }
    }
  }

  /** What all threads have worked, in nanoseconds. */
  private static long worked() {
    return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
  }

  private Optional<String> judge(Run run, Map<Path, Integer> before) throws IOException {
    if (CONTROL.matcher(run.out() + run.err()).find()) {
      return Optional.of("control characters on the terminal: " + run.out() + run.err());
    }
    if (run.code() == ExitCode.DONE) {
      accepted++;
      return run.err()
          .lines()
          .filter(line -> !hostile.remark().matcher(line).matches())
          .findFirst()
          .map(line -> "done, yet says " + line);
    }
    if (run.code() != ExitCode.PROBLEMS && run.code() != ExitCode.MISUSE) {
      return Optional.of("exit code " + run.code() + ": " + run.err());
    }
    Map<Path, Integer> after = content();
    if (!after.equals(before)) {
      return Optional.of("refused, yet of " + before + " it made " + after + ": " + run.err());
    }
    if (run.err().isBlank()) {
      return Optional.of("refused without a word");
    }
    return run.err()
        .lines()
        .filter(line -> !hostile.complaint().matcher(line).matches() || isJava(line))
        .findFirst();
  }

  /** Whether a message is the program's own words instead of the user's. */
  private static boolean isJava(String line) {
    return JAVA.matcher(QUOTED.matcher(line).replaceAll("")).find();
  }

  /** All files, with a number that tells their content. */
  private Map<Path, Integer> content() throws IOException {
    Map<Path, Integer> content = new TreeMap<>();
    try (Stream<Path> inside = Files.walk(folder)) {
      inside
          .filter(file -> Files.isRegularFile(file) && !hostile.mayChange(file))
          .forEach(file -> content.put(folder.relativize(file), Arrays.hashCode(bytes(file))));
    }
    return content;
  }

  private void clear() throws IOException {
    try (Stream<Path> inside = Files.walk(folder)) {
      List<Path> deepestFirst =
          inside.filter(path -> !path.equals(folder)).sorted(Comparator.reverseOrder()).toList();
      for (Path path : deepestFirst) {
        Files.delete(path);
      }
    }
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String shown(List<Object> command) {
    return command.stream().map(Object::toString).toList() + ": ";
  }

  @Override
  public void close() throws IOException {
    clear();
  }

  /**
   * Runs the seeds from the second argument up to the third, and prints what it finds; the first
   * says with what.
   */
  public static void main(String[] args) throws Exception {
    Hostile hostile = Hostilities.called(args[0]);
    long from = Long.parseLong(args[1]);
    long to = Long.parseLong(args[2]);
    int faults = 0;
    long start = System.nanoTime();
    try (Fuzz fuzz = new Fuzz(hostile, Files.createTempDirectory("fuzz"))) {
      for (long seed = from; seed < to; seed++) {
        Optional<String> fault = fuzz.fault(seed);
        if (fault.isPresent()) {
          faults++;
          System.out.println(seed + ": " + fault.get());
        }
        if ((seed + 1 - from) % REPORT == 0 || seed + 1 == to) {
          System.out.printf(
              "%d tried, %d accepted, %d faults, %.0f s%n",
              seed + 1 - from, fuzz.accepted, faults, (System.nanoTime() - start) / 1e9);
        }
      }
    }
    System.exit(faults == 0 ? 0 : 1);
  }
}
