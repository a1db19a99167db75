package dev.urnwright.dispatch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.input.RoundFile;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import dev.urnwright.round.CarafeLedger;
import dev.urnwright.round.DayOfRound;
import dev.urnwright.round.ParTuner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What came back, by hand. Carafes hold 2 l, the margin is 10 %, and the last four days of the same
 * weekday count, two at least.
 */
class ReturnsTest {
  private static final String SITES =
      """
      site,floor,leg,stop,carafes,strength
      Mill House,,North,1,4,medium
      Lock House,1st floor,North,2,2,medium
      Old Forge,,South,1,3,medium
      Tannery,,South,2,2,strong
      """;
  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 29);

  @TempDir private Path folder;

  /**
   * Mill House: 8 l less a mean of (5 + 4 + 3 + 4) / 4 = 4 l is 4 l; poured at most 8 − 3 = 5 l,
   * and 10 % are 5.5 l: 3 carafes. The day five weeks ago doesn't count, nor does a Tuesday.
   */
  @Test
  void lessIsDeliveredWhereMuchIsLeft() throws IOException {
    ParTuner.Move move =
        moves(
                """
                2027-02-22,Mill House,,4,0
                2027-03-01,Mill House,,4,5 l
                2027-03-08,Mill House,,4,4 l
                2027-03-15,Mill House,,4,3 l
                2027-03-22,Mill House,,4,4 l
                2027-03-23,Mill House,,4,0 l
                """)
            .get(0);

    assertEquals(3, move.carafes());
    assertEquals(-1, move.by());
    assertEquals(4, move.meanLeft().litres(), 1e-9);
    assertEquals(5, move.mostPoured().litres(), 1e-9);
    assertEquals(4, move.days().size());
  }

  /** Lock House: once it came back empty, so 4 l were poured; 10 % more are 4.4 l: 3 carafes. */
  @Test
  void moreIsDeliveredWhereItRanDry() throws IOException {
    ParTuner.Move move =
        moves(
                """
                2027-03-15,Lock House,1st floor,2,0
                2027-03-22,Lock House,1st floor,2,1 l
                """)
            .get(0);

    assertEquals(3, move.carafes());
  }

  /**
   * Old Forge: 6 l less a mean of 1.2 l is 4.8 l, poured at most 5.0 l and 10 % 5.5 l: 3 carafes,
   * as the table says. Tannery has one day only, which is too little to go by.
   */
  @Test
  void whatIsRightStays() throws IOException {
    assertEquals(
        List.of(),
        moves(
            """
            2027-03-15,Old Forge,,3,1 l
            2027-03-22,Old Forge,,3,1.4 l
            2027-03-22,Tannery,,2,3.9 l
            """));
  }

  @Test
  void deliveredIsWhatWasReallyDelivered() throws IOException {
    // 5 carafes were delivered, not 4: 10 − 1 = 9 l poured, and 10 % are 9.9 l: 5 carafes
    ParTuner.Move move =
        moves(
                "delivered",
                """
                2027-03-15,Mill House,,5,4,1 l
                2027-03-22,Mill House,,5,4,1 l
                """)
            .get(0);

    assertEquals(5, move.carafes());
  }

  /**
   * Mill House gets 4 on weekdays. Monday 22nd: 4 out, 0 back. Tuesday: 4 more, 3 back: 5 out.
   * Wednesday: 4 more, 5 back: 4 out. Nothing is entered of Thursday and Friday, which are after
   * the last entry: the van brings back what stood there, so 4 stay out.
   */
  @Test
  void carafesThatAreNotBackAreCounted() throws IOException {
    String entries =
        """
        2027-03-22,Mill House,,0,
        2027-03-23,Mill House,,3,
        2027-03-24,Mill House,,5,
        """;
    RoundFile file = file("", entries);

    assertEquals(4, out(file, LocalDate.of(2027, 3, 23)).get("Mill House"));
    assertEquals(5, out(file, LocalDate.of(2027, 3, 24)).get("Mill House"));
    assertEquals(4, out(file, LocalDate.of(2027, 3, 25)).get("Mill House"));
    assertEquals(4, out(file, MONDAY).get("Mill House"));
  }

  @Test
  void aDeliveryOfWhichNothingIsEnteredCountsAsOut() throws IOException {
    // Tuesday is left out between Monday and Wednesday: 4 + 4 + 4 − 4 = 8
    RoundFile file =
        file(
            "",
            """
            2027-03-22,Mill House,,0,
            2027-03-24,Mill House,,4,
            """);

    CarafeLedger ledger =
        CarafeLedger.before(LocalDate.of(2027, 3, 25), file.round(), file.returns());

    assertEquals(8, ledger.out("Carafe"));
    assertEquals(1, ledger.overdue());
  }

  @Test
  void missingCarafesAreMissingFromTheStock() throws IOException {
    // 11 carafes are needed of 40, and 30 are out at the Mill House
    RoundFile file = file("delivered", "2027-03-26,Mill House,,30,0,\n2027-03-28,Tannery,,0,0,\n");

    Checked<Dispatch> day = new Dispatcher(file.round(), file.returns(), true).dispatch(MONDAY);

    Problem problem = day.problems().get(0);
    assertEquals("11 of Carafe are needed on 2027-03-29, and 10 of 40 are in", problem.wrong());
    assertEquals("expected 1 more, or back from Mill House (30)", problem.expected());
  }

  @Test
  void siteThatIsGoneIsNamedAndLeftOut() throws IOException {
    RoundFile file = file("", "2027-03-22,Mil House,,3,\n2027-03-22,Mill House,,3,\n");

    assertEquals(1, file.returns().size());
    assertTrue(file.strangers().get(0).toString().contains("did you mean 'Mill House'?"));
  }

  @Test
  void whatIsNotEnteredYetSaysNothing() throws IOException {
    assertEquals(List.of(), file("", "2027-03-22,Mill House,,,\n").returns());
  }

  @Test
  void sameDayEnteredTwiceIsASlip() throws IOException {
    Checked<RoundFile> read = read("", "2027-03-22,Mill House,,3,\n2027-03-22,Mill House,,4,\n");

    assertTrue(read.problems().get(0).toString().contains("is entered twice"));
  }

  private List<ParTuner.Move> moves(String entries) throws IOException {
    return moves("", entries);
  }

  private List<ParTuner.Move> moves(String more, String entries) throws IOException {
    RoundFile file = file(more, entries);
    return new ParTuner(file.round(), file.returns()).moves(DayOfRound.of(file.round(), MONDAY));
  }

  private static Map<String, Integer> out(RoundFile file, LocalDate date) {
    return CarafeLedger.before(date, file.round(), file.returns()).rows().stream()
        .collect(Collectors.toMap(row -> row.drop().place().site(), CarafeLedger.Out::carafes));
  }

  private RoundFile file(String more, String entries) throws IOException {
    Checked<RoundFile> read = read(more, entries);
    assertEquals(List.of(), read.problems());
    return read.value().orElseThrow();
  }

  private Checked<RoundFile> read(String more, String entries) throws IOException {
    Files.writeString(
        folder.resolve("returns.csv"),
        "date,site,floor,"
            + (more.isEmpty() ? "" : more + ",")
            + "carafes back,leftover\n"
            + entries);
    return Rounds.read(folder, Rounds.SMALL + "returns: returns.csv\n", SITES);
  }
}
