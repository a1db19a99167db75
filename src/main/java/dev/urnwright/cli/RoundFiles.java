package dev.urnwright.cli;

import dev.urnwright.dispatch.Dispatch;
import dev.urnwright.dispatch.LegDay;
import dev.urnwright.input.ReturnForm;
import dev.urnwright.pdf.RoundSheets;
import dev.urnwright.pdf.TemplateFolder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The files of a day of a round, in a folder of their own. A few are made at a time, so that memory
 * holds no more than a few legs' pages, and all are written aside before any takes its place.
 */
final class RoundFiles implements AutoCloseable {
  /** More at the same time would only take more memory. */
  private static final int MOST_WORKERS = 4;

  private final OutputOptions options;
  private final Path folder;
  private final List<OutputFile> files = new ArrayList<>();

  /**
   * Files to be made.
   *
   * @param folder that was made for them
   */
  RoundFiles(OutputOptions options, Path folder) {
    this.options = options;
    this.folder = folder;
  }

  /** Which sheets. */
  enum Sheet {
    /** What to brew and fill. */
    BREW,
    /** What a driver takes along, and where to. */
    PICK,
    /** A label for each carafe. */
    LABELS,
    /** A slip for each site. */
    SLIPS;

    /** All of them. */
    static final Set<Sheet> ALL = EnumSet.allOf(Sheet.class);
  }

  /** Writes one file's content. */
  private interface Rendering {
    void write(RoundSheets sheets, OutputStream out) throws IOException;
  }

  /**
   * One file to make.
   *
   * @param what it is, for the progress
   * @param file where it goes
   * @param rendering writes its content
   */
  private record Job(String what, OutputFile file, Rendering rendering) {}

  /** Makes the sheets asked for, some at the same time, and writes them aside. */
  void render(Dispatch day, TemplateFolder templates, Set<Sheet> which, Console console)
      throws IOException, RefusedException {
    List<Job> jobs = jobs(day, which);
    BlockingQueue<RoundSheets> idle = new LinkedBlockingQueue<>();
    int workers = Math.max(1, Math.min(Math.min(MOST_WORKERS, jobs.size()), processors()));
    for (int i = 0; i < workers; i++) {
      idle.add(
          new RoundSheets(
              templates, day.round())); // one for each, since typefaces aren't shared safely
    }
    ExecutorService pool = Executors.newFixedThreadPool(workers);
    try (Progress progress = Progress.of(console, Math.max(1, jobs.size()))) {
      List<Future<?>> made = new ArrayList<>();
      for (Job job : jobs) {
        made.add(pool.submit(() -> make(job, idle, progress)));
      }
      for (Future<?> each : made) {
        finish(each);
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private static int processors() {
    return Runtime.getRuntime().availableProcessors();
  }

  private static @Nullable Void make(Job job, BlockingQueue<RoundSheets> idle, Progress progress)
      throws IOException, RefusedException, InterruptedException {
    progress.step(job.what());
    RoundSheets sheets = idle.take();
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      job.rendering().write(sheets, bytes);
      job.file().writeAside(bytes.toByteArray());
    } finally {
      idle.add(sheets);
    }
    return null;
  }

  private static void finish(Future<?> job) throws IOException, RefusedException {
    try {
      job.get();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", interrupted);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RefusedException refused) {
        throw refused;
      }
      if (e.getCause() instanceof IOException failed) {
        throw failed;
      }
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException(e);
    }
  }

  private List<Job> jobs(Dispatch day, Set<Sheet> which) throws RefusedException {
    List<Job> jobs = new ArrayList<>();
    if (which.contains(Sheet.BREW)) {
      add(jobs, "brew room", "brew-room.pdf", (sheets, out) -> sheets.brewRoom(day, out));
    }
    int digits = String.valueOf(day.legs().size()).length();
    for (int i = 0; i < day.legs().size(); i++) {
      LegDay leg = day.legs().get(i);
      String what = leg.leg().name();
      String name = String.format(Locale.ROOT, "%0" + digits + "d-%s", i + 1, plain(what));
      if (which.contains(Sheet.PICK)) {
        add(
            jobs,
            what + ", pick list",
            name + "-pick-list.pdf",
            (sheets, out) -> sheets.pickList(day, leg, out));
      }
      if (which.contains(Sheet.LABELS)) {
        add(
            jobs,
            what + ", labels",
            name + "-labels.pdf",
            (sheets, out) -> sheets.labels(day, leg, out));
      }
      if (which.contains(Sheet.SLIPS)) {
        add(
            jobs,
            what + ", slips",
            name + "-slips.pdf",
            (sheets, out) -> sheets.slips(day, leg, out));
      }
    }
    return jobs;
  }

  private void add(List<Job> jobs, String what, String name, Rendering rendering)
      throws RefusedException {
    OutputFile file = options.in(folder, name);
    files.add(file);
    jobs.add(new Job(what, file, rendering));
  }

  /**
   * Writes a table to enter what comes back, with what is delivered; one that is there already, and
   * perhaps filled in, is left alone.
   *
   * @return the table, if it is a new one
   */
  Optional<Path> returns(Dispatch day) throws IOException, RefusedException {
    Path table = folder.resolve("returns.csv");
    if (Files.exists(table)) {
      return Optional.empty();
    }
    StringBuilder text = new StringBuilder();
    ReturnForm.write(day.day(), text);
    try (OutputFile file = OutputFile.at(table, OutputFile.Existing.KEEP)) {
      file.writeAside(text.toString().getBytes(StandardCharsets.UTF_8));
      file.putInPlace();
    }
    return Optional.of(table);
  }

  /** Moves all to their places and returns these. */
  List<Path> putInPlace() throws RefusedException {
    for (OutputFile file : files) {
      file.putInPlace();
    }
    return files.stream().map(OutputFile::target).toList();
  }

  /** Sheets of an earlier run in the folder that this day no longer has. */
  List<Path> stale() throws IOException {
    List<Path> written = files.stream().map(OutputFile::target).toList();
    try (Stream<Path> there = Files.list(folder)) {
      return there
          .filter(path -> path.toString().endsWith(".pdf") && !written.contains(path))
          .sorted()
          .toList();
    }
  }

  /** A leg's name as part of a file's: letters and digits of ASCII, and hyphens. */
  private static String plain(String name) {
    String ascii =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .replaceAll("\\p{M}+", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    return ascii.isEmpty() ? "leg" : ascii;
  }

  @Override
  public void close() {
    files.forEach(OutputFile::close);
  }
}
