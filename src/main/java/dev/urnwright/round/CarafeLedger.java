package dev.urnwright.round;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where the carafes are before a day's delivery: what each row was delivered less what came back,
 * counted from the first day on which the row is entered among the returns. After the last day that
 * is entered at all every delivery is taken to bring back what stood there.
 *
 * @param rows that have carafes out, in the order of the table
 * @param overdue days with a delivery of which nothing is entered; its carafes count as out
 * @param surplus carafes that came back beyond what is known to have gone out
 */
public record CarafeLedger(List<Out> rows, int overdue, int surplus) {
  /** Copies the list. */
  public CarafeLedger {
    rows = List.copyOf(rows);
  }

  /**
   * Carafes that are at a site.
   *
   * @param drop the row
   * @param carafes 1 or more
   * @param since the last day on which some of them were delivered
   */
  public record Out(Drop drop, int carafes, LocalDate since) {}

  /** The ledger before the delivery of that day. */
  public static CarafeLedger before(LocalDate date, Round round, List<Return> returns) {
    Map<Drop, Account> accounts = new IdentityHashMap<>();
    Map<LocalDate, List<Return>> byDay = new HashMap<>();
    Optional<LocalDate> first = Optional.empty();
    LocalDate last = LocalDate.MIN;
    for (Return entry : returns) {
      if (entry.date().isBefore(date)) {
        byDay.computeIfAbsent(entry.date(), day -> new ArrayList<>()).add(entry);
        accounts.computeIfAbsent(entry.drop(), drop -> new Account()).entered(entry);
        if (first.isEmpty() || entry.date().isBefore(first.get())) {
          first = Optional.of(entry.date());
        }
        last = entry.date().isAfter(last) ? entry.date() : last;
      }
    }
    for (LocalDate day = first.orElse(date); day.isBefore(date); day = day.plusDays(1)) {
      for (DayOfRound.Delivery delivery : DayOfRound.of(round, day).deliveries()) {
        Account account = accounts.get(delivery.drop());
        if (account != null && day.isAfter(last)) {
          account.swapped(day, delivery.carafes());
        } else if (account != null && !day.isBefore(account.first)) {
          account.delivered(day, delivery.carafes());
        }
      }
      for (Return entry : byDay.getOrDefault(day, List.of())) {
        Account account = accounts.get(entry.drop());
        if (account != null) {
          account.corrected(entry);
        }
      }
    }
    List<Out> rows = new ArrayList<>();
    int overdue = 0;
    int surplus = 0;
    for (Drop drop : round.drops()) {
      Account account = accounts.get(drop);
      if (account != null) {
        overdue += account.missing();
        surplus += Math.max(0, -account.out);
        if (account.out > 0) {
          rows.add(new Out(drop, account.out, account.last));
        }
      }
    }
    return new CarafeLedger(rows, overdue, surplus);
  }

  /** How many carafes of a kind are out. */
  public int out(String carafe) {
    return rows.stream()
        .filter(row -> row.drop().content().carafe().equals(carafe))
        .mapToInt(Out::carafes)
        .sum();
  }

  /** How many carafes a site has, of all kinds. */
  public Map<String, Integer> bySite() {
    Map<String, Integer> sites = new LinkedHashMap<>();
    rows.forEach(row -> sites.merge(row.drop().place().site(), row.carafes(), Integer::sum));
    return sites;
  }

  /** One row's coming and going. */
  private static final class Account {
    private LocalDate first = LocalDate.MAX;
    private LocalDate last = LocalDate.MIN;
    private int out;
    private final Map<LocalDate, Integer> planned = new HashMap<>();
    private int entriesOfDeliveries;

    void entered(Return entry) {
      first = entry.date().isBefore(first) ? entry.date() : first;
    }

    void delivered(LocalDate day, int carafes) {
      planned.put(day, carafes);
      out += carafes;
      last = day;
    }

    /** As long as nobody has entered a day, it is taken to have gone as it should. */
    void swapped(LocalDate day, int carafes) {
      out = carafes;
      last = day;
    }

    void corrected(Return entry) {
      int asked = planned.getOrDefault(entry.date(), 0);
      entriesOfDeliveries += asked > 0 ? 1 : 0;
      OptionalInt really = entry.delivered();
      if (really.isPresent()) {
        out += really.getAsInt() - asked;
        last = really.getAsInt() > 0 ? entry.date() : last;
      }
      out -= entry.back();
      if (last.equals(LocalDate.MIN)) {
        last = entry.date();
      }
    }

    int missing() {
      return planned.size() - entriesOfDeliveries;
    }
  }
}
