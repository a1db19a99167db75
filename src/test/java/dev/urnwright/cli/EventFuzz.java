package dev.urnwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Hands the program many hostile files and says what went wrong: a fault, a hang, a message without
 * a place, an output of refused input. Memory is limited from outside, with {@code -Xmx512m}.
 */
public final class EventFuzz implements AutoCloseable {
  /** Longer than this is a hang, on a machine that does nothing else. */
  private static final long QUIET_SECONDS = 5;

  /** The same where other work may be going on. */
  private static final long BUSY_SECONDS = 120;

  /** One file in so many is planned with all its sheets; the others are only checked. */
  private static final int PLANNED = 400;

  private static final Pattern PROBLEM =
      Pattern.compile(
          ".+\\.yaml(:\\d+:\\d+)?: .+; .+|\\d+ problems?; (mend .*|nothing was written)|.+\\.yaml: .+");

  private final HostileFiles files = new HostileFiles();
  private final Path folder;
  private final long limitSeconds;
  private ExecutorService worker = Executors.newSingleThreadExecutor(EventFuzz::daemon);
  private int accepted;

  private EventFuzz(Path folder, long limitSeconds) {
    this.folder = folder;
    this.limitSeconds = limitSeconds;
  }

  static EventFuzz in(Path folder) {
    return new EventFuzz(folder, BUSY_SECONDS);
  }

  /** How many files had nothing wrong with them. */
  int accepted() {
    return accepted;
  }

  /** What went wrong with the file of a seed. */
  Optional<String> fault(long seed) throws IOException, InterruptedException {
    Path file = Files.write(folder.resolve("f.yaml"), files.of(seed));
    Path out = folder.resolve("out");
    boolean planned = seed % PLANNED == 0;
    Object[] command =
        planned ? new Object[] {"plan", file, "--out", out} : new Object[] {"check", file};
    Run run;
    try {
      run = worker.submit(() -> Run.of(command)).get(limitSeconds, TimeUnit.SECONDS);
    } catch (TimeoutException e) {
      worker.shutdownNow();
      worker = Executors.newSingleThreadExecutor(EventFuzz::daemon);
      return Optional.of("still at it after " + limitSeconds + " s");
    } catch (ExecutionException e) {
      return Optional.of("escaped: " + e.getCause());
    }
    Optional<String> wrong = judge(run, planned ? written(out) : List.of());
    clear(out);
    return wrong;
  }

  private Optional<String> judge(Run run, List<Path> written) {
    if (run.code() == ExitCode.DONE) {
      accepted++;
      return run.err().isEmpty() ? Optional.empty() : Optional.of("done, yet says " + run.err());
    }
    if (run.code() != ExitCode.PROBLEMS) {
      return Optional.of("exit code " + run.code() + ": " + run.err());
    }
    if (!written.isEmpty()) {
      return Optional.of("refused, yet wrote " + written);
    }
    return run.err().isBlank()
        ? Optional.of("refused without a word")
        : run.err().lines().filter(line -> !PROBLEM.matcher(line).matches()).findFirst();
  }

  private static List<Path> written(Path out) throws IOException {
    if (!Files.exists(out)) {
      return List.of();
    }
    try (Stream<Path> inside = Files.list(out)) {
      return inside.toList();
    }
  }

  private static void clear(Path out) throws IOException {
    if (Files.exists(out)) {
      try (Stream<Path> inside = Files.walk(out)) {
        List<Path> deepestFirst = inside.sorted(Comparator.reverseOrder()).toList();
        for (Path path : deepestFirst) {
          Files.delete(path);
        }
      }
    }
  }

  private static Thread daemon(Runnable task) {
    Thread thread = new Thread(task, "trial");
    thread.setDaemon(true);
    return thread;
  }

  @Override
  public void close() {
    worker.shutdownNow();
  }

  /** Runs the seeds from the first argument up to the second, and prints what it finds. */
  public static void main(String[] args) throws Exception {
    long from = Long.parseLong(args[0]);
    long to = Long.parseLong(args[1]);
    List<Long> faults = new ArrayList<>();
    long start = System.nanoTime();
    long slowest = 0;
    long slowestSeed = from;
    try (EventFuzz fuzz = new EventFuzz(Files.createTempDirectory("fuzz"), QUIET_SECONDS)) {
      for (long seed = from; seed < to; seed++) {
        long began = System.nanoTime();
        Optional<String> fault = fuzz.fault(seed);
        long took = System.nanoTime() - began;
        if (took > slowest) {
          slowest = took;
          slowestSeed = seed;
        }
        if (fault.isPresent()) {
          faults.add(seed);
          System.out.println(seed + ": " + fault.get());
        }
      }
      System.out.printf(
          "%d files, %d accepted, %d faults, slowest %.2f s (%d), %.0f s in all%n",
          to - from,
          fuzz.accepted,
          faults.size(),
          slowest / 1e9,
          slowestSeed,
          (System.nanoTime() - start) / 1e9);
    }
    System.exit(faults.isEmpty() ? 0 : 1);
  }
}
