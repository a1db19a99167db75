package dev.urnwright.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.GuestGroup.Guests;
import dev.urnwright.event.Learned;
import dev.urnwright.journal.BrewEntry.Occasion;
import dev.urnwright.journal.ServiceEntry;
import dev.urnwright.journal.ServiceEntry.Asked;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GuestFitterTest {
  private static final Share ALL = Share.ofFraction(1);
  private static final Guests BEFORE = new Guests(1, Share.ofPercent(60), 1.5);

  @Test
  void oneDinnerMovesTheRateInPart() {
    // λ₀ = 0.6 × 1.5 = 0.9; prior 1/0.3² = 11.1111 cups of 12.3457 guests
    // v = (0.25 × 0.9)² × (2.776445 / 1.959964)² = 0.101589; at λ = 1.0181
    // φ = 1 + 40 × 0.101589 / 1.0181 = 4.9914; 48 cups of 40 guests:
    // (11.1111 + 48/4.9914) / (12.3457 + 40/4.9914) = 20.7277 / 20.3595 = 1.0181
    GuestFit fit = fit(service("Dinner", 40, 60, 12));
    assertEquals(0.9, fit.cupsPerGuest().before(), 1e-12);
    double now = fit.cupsPerGuest().value();
    double alike = 1 + 40 * 0.101589 / now;
    assertEquals((11.11111 + 48 / alike) / (12.34568 + 40 / alike), now, 1e-5);
    assertEquals(1.02, now, 0.005);
    assertTrue(fit.odd().isEmpty());
  }

  @Test
  void andTheShare() {
    // p₀ = 0.6: prior size 0.24 / 0.1² − 1 = 23, 13.8 yes and 9.2 no
    // v = (0.25 × 0.6)² × (2.776445 / 1.959964)² = 0.0451506
    // 48 cups / 1.5 = 32 drinkers of 40, over φ = 1 + 40 v / (p (1 − p)) at the p that comes of it
    Learned<Share> share = fit(service("Dinner", 40, 60, 12)).drinkers();
    double now = share.value().fraction();
    double alike = 1 + 40 * 0.0451506 / (now * (1 - now));
    assertEquals((13.8 + 32 / alike) / (23 + 40 / alike), now, 1e-6);
    assertEquals(0.63, now, 0.005);
    assertTrue(share.low().compareTo(share.value()) < 0);
    assertTrue(share.high().compareTo(share.value()) > 0);
  }

  @Test
  void groupsOfOneEventCountAsOne() {
    GuestFit apart = fit(service("Dinner", 40, 60, 12), service("Supper", 40, 60, 12));
    GuestFit together =
        fit(service("Dinner", 40, 60, 12), service("Dinner", "Others", "Coffee", 40, 60, 12));
    assertEquals(2, apart.cupsPerGuest().entries());
    assertEquals(1, together.cupsPerGuest().entries());
    assertTrue(width(together.cupsPerGuest()) > width(apart.cupsPerGuest()));
  }

  @Test
  void aGroupsGuestsCountOnceForAllItsCoffees() {
    // 60 − 12 cups of 40 guests, whether of one coffee or of two
    assertEquals(
        fit(service("Dinner", 40, 60, 12)).cupsPerGuest(),
        fit(
                service("Dinner", "Group", "Coffee", 40, 45, 7),
                service("Dinner", "Group", "Decaf", 40, 15, 5))
            .cupsPerGuest());
  }

  @Test
  void whatWasEnteredAgainTakesThePlaceOfTheFirst() {
    assertEquals(
        fit(service("Dinner", 40, 60, 12)).cupsPerGuest(),
        fit(service("Dinner", 40, 60, 50), service("Dinner", 40, 60, 12)).cupsPerGuest());
  }

  @Test
  void manyEventsLeaveNothingOfTheFile() {
    List<ServiceEntry> entries = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      entries.add(service("Event " + i, 100, 150, 30));
    }
    GuestFit fit = GuestFitter.fit(BEFORE, entries).orElseThrow();
    assertEquals(1.2, fit.cupsPerGuest().value(), 0.005); // 120 cups of 100 guests
    assertEquals(0.8, fit.drinkers().value().fraction(), 0.005); // 1.2 / 1.5
  }

  @Test
  void whatRanOutAndWhatIsUnlikeTheRestIsNamed() {
    List<ServiceEntry> entries = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      entries.add(service("Event " + i, 100, 120, 10 + i));
    }
    entries.add(service("Dry day", 100, 120, 0));
    entries.add(service("Ghost day", 100, 120, 115));
    List<Oddity> odd = GuestFitter.fit(BEFORE, entries).orElseThrow().odd();
    assertEquals(
        List.of("Dry day, Group", "Ghost day, Group"), odd.stream().map(Oddity::name).toList());
    assertTrue(odd.get(0).reason().startsWith("nothing came back"));
    assertTrue(odd.get(1).reason().contains("far less"));
    assertTrue(odd.stream().allMatch(Oddity::counted));
  }

  @Test
  void nothingIsLearnedFromNothing() {
    assertTrue(GuestFitter.fit(BEFORE, List.of()).isEmpty());
  }

  @Test
  void everybodyAndNobodyArePossible() {
    GuestFit all =
        GuestFitter.fit(new Guests(1, ALL, 1), List.of(service("Dinner", 40, 90, 10)))
            .orElseThrow();
    assertTrue(all.drinkers().value().fraction() > 0.95);
    GuestFit none =
        GuestFitter.fit(new Guests(1, Share.ofFraction(0), 1), List.of(service("D", 40, 9, 9)))
            .orElseThrow();
    assertTrue(none.cupsPerGuest().value() < 0.001);
  }

  /** Known truths, as likely as believed, lie in the interval at least as often as stated. */
  @ParameterizedTest
  @ValueSource(ints = {1, 3, 10, 40})
  void coversTheTruth(int events) {
    int journals = 2000;
    SplittableRandom random = new SplittableRandom(77L + events);
    Well19937c poisson = new Well19937c(77 + events);
    int inside = 0;
    for (int i = 0; i < journals; i++) {
      double truth = Math.max(0.1, 0.9 * (1 + 0.3 * random.nextGaussian()));
      List<ServiceEntry> entries = new ArrayList<>();
      for (int e = 0; e < events; e++) {
        double day = Math.max(0.02, truth + 0.25 * 0.9 * random.nextGaussian());
        int guests = 20 + random.nextInt(400);
        int cups = new PoissonDistribution(poisson, guests * day, 1e-12, 100_000).sample();
        entries.add(service("Event " + e, guests, cups + 5, 5));
      }
      Learned<Double> learned = GuestFitter.fit(BEFORE, entries).orElseThrow().cupsPerGuest();
      if (learned.low() <= truth && truth <= learned.high()) {
        inside++;
      }
    }
    // √(0.95 × 0.05 / 2000) = 0.5 points, three of them
    double rate = (double) inside / journals;
    assertTrue(rate > 0.95 - 0.015 && rate < 0.99, "rate " + rate);
  }

  private static double width(Learned<Double> learned) {
    return learned.high() - learned.low();
  }

  private static GuestFit fit(ServiceEntry... entries) {
    return GuestFitter.fit(BEFORE, List.of(entries)).orElseThrow();
  }

  /** In cups of 200 g. */
  private static ServiceEntry service(String event, int guests, int putOut, int cameBack) {
    return service(event, "Group", "Coffee", guests, putOut, cameBack);
  }

  private static ServiceEntry service(
      String event, String group, String coffee, int guests, int putOut, int cameBack) {
    return new ServiceEntry(
        UUID.randomUUID(),
        Instant.parse("2027-06-05T12:00:00Z"),
        new Occasion(event, Optional.empty()),
        Optional.empty(),
        group,
        coffee,
        new Asked(guests, Share.ofPercent(60), 1.5, putOut, Mass.ofGrams(200)),
        Mass.ofGrams(200.0 * putOut),
        Mass.ofGrams(200.0 * cameBack));
  }
}
