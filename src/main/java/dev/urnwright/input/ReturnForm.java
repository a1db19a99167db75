package dev.urnwright.input;

import dev.urnwright.round.DayOfRound;
import dev.urnwright.round.Drop;
import java.io.IOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A table to enter what came back of a day: all that is known of each row, and room for the rest.
 */
public final class ReturnForm {
  private ReturnForm() {}

  /** Writes the table; doesn't close. */
  public static void write(DayOfRound day, Appendable out) throws IOException {
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setHeader(RoundReader.returnHeadings().toArray(String[]::new))
            .build();
    CSVPrinter printer = new CSVPrinter(out, format);
    for (DayOfRound.Delivery delivery : day.deliveries()) {
      Drop drop = delivery.drop();
      printer.printRecord(
          day.date(),
          CsvCells.guarded(drop.place().site()),
          CsvCells.guarded(drop.place().floor()),
          drop.content().coffee(),
          CsvCells.guarded(drop.content().strengthName()),
          CsvCells.guarded(drop.content().carafe()),
          delivery.carafes(),
          "",
          "");
    }
    printer.flush();
  }
}
