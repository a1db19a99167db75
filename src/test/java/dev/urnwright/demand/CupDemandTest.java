package dev.urnwright.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.event.GuestGroup.Guests;
import dev.urnwright.event.Provision;
import dev.urnwright.quantity.Share;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many cups are planned. */
class CupDemandTest {
  private static final Share ALL = Share.ofPercent(100);

  /**
   * What attendees drink in the morning, in the middle column as a share of them all. The tables
   * count 20 cups of 6 fl oz a gallon.
   */
  @ParameterizedTest(name = "{0} attendees, {1} %: {2} cups, {3} gal ({4})")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          500 | 60 | 300 | 15   | University of Florida Health, events page: men, regular coffee
          500 | 20 | 100 | 5    | University of Florida Health, events page: men, decaf
          500 | 10 | 50  | 2.5  | University of Florida Health, events page: men, tea
          100 | 55 | 55  | 2.75 | Marquette University, event services: mixed, regular coffee
          100 | 25 | 25  | 1.25 | Marquette University, event services: mixed, decaf
          """)
  void theMeanIsHeadcountTimesShare(
      int attendees, double percent, int cups, double gallons, String source) {
    Guests guests = new Guests(attendees, Share.ofPercent(percent), 1);
    CupDemand demand = CupDemand.of(guests, ALL, new Provision.Mean());
    assertEquals(cups, demand.cups(), source);
    assertEquals(gallons, demand.cups() / 20.0, 1e-12, source);
  }

  @Test
  void sharesOfACoffeeMultiply() {
    // 200 guests × 50 % × 15 % × 2 cups = 30 cups
    Guests guests = new Guests(200, Share.ofPercent(50), 2);
    CupDemand decaf = CupDemand.of(guests, Share.ofPercent(15), new Provision.Mean());
    assertEquals(30, decaf.cups());
    assertEquals(30, decaf.mean(), 1e-9);
  }

  @ParameterizedTest(name = "{0} guests, {1} %, {2} cups each, {3} % more: {4} cups")
  @CsvSource({
    "40, 85, 1.5, 0, 51", // 40 × 0.85 × 1.5 = 51
    "40, 85, 1.5, 10, 57", // 56.1
    "10, 30, 1, 0, 3", // 10 × 0.3 is three cups in any arithmetic
    "100, 55, 1, 10, 61", // 60.5
    "1, 1, 1, 0, 1", // a hundredth of a cup is a cup
    "100, 100, 1, 10, 110", // 110 although 100 × 1.1 is a little more in binary
    "30, 70, 1, 20, 26", // 25.2
    "1000000, 100, 0.1, 0, 100000",
  })
  void aPartOfACupIsACup(int guests, double percent, double each, double extra, int cups) {
    CupDemand demand =
        CupDemand.of(
            new Guests(guests, Share.ofPercent(percent), each),
            ALL,
            new Provision.Overage(extra / 100));
    assertEquals(cups, demand.cups());
  }

  @Test
  void whereNobodyDrinksThereIsNoCup() {
    Guests tea = new Guests(40, Share.ofPercent(0), 1.5);
    assertEquals(0, CupDemand.of(tea, ALL, new Provision.Overage(0.1)).cups());
    assertEquals(0, CupDemand.of(tea, ALL, new Provision.Mean()).mean());
  }

  @Test
  void theChanceThatItIsEnoughIsTold() {
    // one guest of two, each with even chances: P(at most one) = 3/4
    Guests two = new Guests(2, Share.ofPercent(50), 1);
    assertEquals(0.75, CupDemand.of(two, ALL, new Provision.Mean()).chanceEnough(), 1e-12);
  }

  @Test
  void aServiceLevelIsTheSmallestNumberThatReachesIt() {
    // Binomial(10, 0.5): P(≤ 7) = 968/1024 = 0.9453, P(≤ 8) = 1013/1024 = 0.9893
    Guests ten = new Guests(10, Share.ofPercent(50), 1);
    Provision level = new Provision.ServiceLevel(Share.ofPercent(95));
    CupDemand demand = CupDemand.of(ten, ALL, level);
    assertEquals(8, demand.cups());
    assertEquals(1013.0 / 1024, demand.chanceEnough(), 1e-12);
  }
}
