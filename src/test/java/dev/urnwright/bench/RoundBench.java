package dev.urnwright.bench;

import dev.urnwright.dispatch.Dispatch;
import dev.urnwright.dispatch.Dispatcher;
import dev.urnwright.dispatch.LegDay;
import dev.urnwright.form.WorkbookCells;
import dev.urnwright.input.RoundFile;
import dev.urnwright.input.RoundReader;
import dev.urnwright.pdf.RoundSheets;
import dev.urnwright.pdf.TemplateFolder;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * How long a round of so many sites takes to read, plan and print, one sheet after the other, and
 * how much heap that fills at the most.
 */
final class RoundBench {
  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

  private RoundBench() {}

  public static void main(String[] args) throws IOException {
    Path folder = Files.createTempDirectory("round");
    Path file = new OfficeTown(Integer.parseInt(args[0]), 4).write(folder);
    long start = System.nanoTime();
    RoundFile round =
        new RoundReader(WorkbookCells::read).open(file, Optional.empty()).value().orElseThrow();
    say("read", start);
    start = System.nanoTime();
    Dispatch day =
        new Dispatcher(round.round(), round.returns(), true).dispatch(MONDAY).value().orElseThrow();
    say("planned", start);
    start = System.nanoTime();
    RoundSheets sheets = new RoundSheets(TemplateFolder.SHIPPED, round.round());
    sheets.brewRoom(day, OutputStream.nullOutputStream());
    for (LegDay leg : day.legs()) {
      sheets.pickList(day, leg, OutputStream.nullOutputStream());
      sheets.labels(day, leg, OutputStream.nullOutputStream());
      sheets.slips(day, leg, OutputStream.nullOutputStream());
    }
    say("printed", start);
    System.out.printf(
        Locale.ROOT,
        "%d sites, %d carafes, %d batches; heap at most %d MiB%n",
        day.sites(),
        day.carafes(),
        day.brewing().batches().size(),
        peak() >> 20);
  }

  private static void say(String what, long start) {
    System.out.printf(Locale.ROOT, "%-8s %6.2f s%n", what, (System.nanoTime() - start) / 1e9);
  }

  private static long peak() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP)
        .map(MemoryPoolMXBean::getPeakUsage)
        .mapToLong(usage -> usage.getUsed())
        .sum();
  }
}
