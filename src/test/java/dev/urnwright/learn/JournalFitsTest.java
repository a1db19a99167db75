package dev.urnwright.learn;

import static dev.urnwright.learn.Journals.DISPLAY;
import static dev.urnwright.learn.Journals.brew;
import static dev.urnwright.learn.Journals.thrice;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.journal.BrewEntry;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JournalFitsTest {
  static final List<BrewEntry> ENTRIES =
      List.of(
          named(brew(60, 960, Optional.of(810.0), thrice(1.40)), "House", Optional.of("Tall")),
          named(brew(60, 960, Optional.of(834.0), thrice(1.40)), "House", Optional.empty()),
          named(
              brew(BrewMethod.IMMERSION, 60, 960, Optional.of(780.0), thrice(1.40)),
              "House",
              Optional.empty()),
          named(brew(60, 960, Optional.of(834.0), thrice(1.40)), "Decaf", Optional.of("Tall")));

  @Test
  void whatWasBrewedAlikeIsLearnedTogether() {
    Map<JournalFits.Brewed, Fit> fits = JournalFits.of(ENTRIES, DISPLAY);
    assertEquals(
        List.of(
            new JournalFits.Brewed("Decaf", Optional.of("Tall"), BrewMethod.PERCOLATION),
            new JournalFits.Brewed("House", Optional.empty(), BrewMethod.PERCOLATION),
            new JournalFits.Brewed("House", Optional.empty(), BrewMethod.IMMERSION),
            new JournalFits.Brewed("House", Optional.of("Tall"), BrewMethod.PERCOLATION)),
        List.copyOf(fits.keySet()));
    // 2.5 g/g weighed and 2.1 g/g usual: (16 × 2.1 + 100 × 2.5) / 116
    Fit tall =
        fits.get(new JournalFits.Brewed("House", Optional.of("Tall"), BrewMethod.PERCOLATION));
    assertEquals(2.444828, tall.absorption().orElseThrow().value().gramsPerGram(), 1e-6);
    // steeped grounds keep 3.0 g/g, as usual
    Fit steeped = fits.get(new JournalFits.Brewed("House", Optional.empty(), BrewMethod.IMMERSION));
    assertEquals(3.0, steeped.absorption().orElseThrow().value().gramsPerGram(), 1e-9);
  }

  private static BrewEntry named(BrewEntry entry, String coffee, Optional<String> brewer) {
    return new BrewEntry(
        entry.id(),
        entry.recordedAt(),
        entry.occasion(),
        entry.batch(),
        coffee,
        brewer,
        entry.method(),
        entry.steamLoss(),
        entry.weighed());
  }
}
