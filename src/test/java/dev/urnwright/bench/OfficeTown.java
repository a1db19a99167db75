package dev.urnwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Random;

/**
 * An invented town of offices of any size, for tests and for measuring: sites on legs, two or three
 * floors each, three strengths, a decaf here and there.
 */
public final class OfficeTown {
  private static final String[] STRENGTHS = {"mild", "medium", "medium", "strong"};

  private final Random random;
  private final int sites;

  /** A town, always the same for the same numbers. */
  public OfficeTown(int sites, long seed) {
    this.sites = sites;
    this.random = new Random(seed);
  }

  /** How many legs it takes: a hundred stops are enough for one driver. */
  public int legs() {
    return Math.max(2, sites / 100);
  }

  /** Writes {@code round.yaml} and {@code sites.csv} into a folder; returns the first. */
  public Path write(Path folder) throws IOException {
    Files.writeString(folder.resolve("sites.csv"), table());
    return Files.writeString(folder.resolve("round.yaml"), round());
  }

  private String round() {
    StringBuilder text = new StringBuilder("round: Town of " + sites + " offices\n");
    text.append("sites: sites.csv\nlegs:\n");
    for (int leg = 1; leg <= legs(); leg++) {
      text.append(
          String.format(
              Locale.ROOT,
              "  - {name: Leg %d, driver: Driver %d, leave: %s}%n",
              leg,
              leg,
              LocalTime.of(5, 0).plusMinutes(120L * leg / legs())));
    }
    int brewers = Math.max(2, sites / 80);
    text.append(
        String.format(
            Locale.ROOT,
            """
            carafes:
              - {name: Carafe 2 l, count: %d, capacity: 2.2 l, fill: 2 l, tare: 1.1 kg, hold: 12 h}
              - {name: Carafe 3 l, count: %d, capacity: 3.25 l, fill: 3 l, tare: 1.5 kg, hold: 12 h}
            coffees:
              house: {name: House, extraction: 20 %%, absorption: 2.1 g/g, concentrate: {ratio: 13},
                      bag: 1 kg, price: 20 EUR}
              decaf: {name: Decaf, decaf: yes, extraction: 19 %%, absorption: 2.2 g/g,
                      concentrate: {ratio: 13}, bag: 1 kg, price: 24 EUR}
            strengths: {mild: 1.20 %%, medium: 1.30 %%, strong: 1.42 %%}
            brewers:
              - {name: Tower, count: %d, dose: 500 g to 6 kg, water: 80 l, cycle: 20 min}
            kitchen: {fill_each: 30 s, fillers: %d, loading: 15 min, turnaround: 2 min, preheat: no}
            supplies:
              - {name: Labels, use: 1 per carafe, pack: 1000, price: 12 EUR}
            scale_step: 10 g
            """,
            sites * 10,
            sites * 10,
            brewers,
            Math.max(2, sites / 100)));
    return text.toString();
  }

  private String table() {
    StringBuilder text =
        new StringBuilder(
            "site,address,floor,leg,stop,window,carafe,carafes,strength,coffee,contact\n");
    for (int site = 1; site <= sites; site++) {
      int leg = 1 + (site - 1) % legs();
      int stop = 1 + (site - 1) / legs();
      int floors = 2 + random.nextInt(2);
      for (int floor = 1; floor <= floors; floor++) {
        boolean large = random.nextInt(3) == 0;
        text.append(
            String.format(
                Locale.ROOT,
                "Office %d,%d Long Street,Floor %d,Leg %d,%d,%s,%s,%d,%s,%s,Reception%n",
                site,
                site,
                floor,
                leg,
                stop,
                "07:30-10:00",
                large ? "Carafe 3 l" : "Carafe 2 l",
                1 + random.nextInt(2),
                STRENGTHS[random.nextInt(STRENGTHS.length)],
                random.nextInt(8) == 0 ? "decaf" : "house"));
      }
    }
    return text.toString();
  }
}
