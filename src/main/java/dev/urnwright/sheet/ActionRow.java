package dev.urnwright.sheet;

import dev.urnwright.event.Coffee;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.wording.Saying;
import dev.urnwright.wording.Words;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One thing to do.
 *
 * @param at when
 * @param follows how it follows the row before: a class of the style sheet
 * @param task what to do
 * @param where at which brewer, dispenser or station
 * @param detail amounts, for people
 * @param coffee which, when it is about any
 */
record ActionRow(
    ClockTime at, String follows, Task task, Name where, Detail detail, Optional<Tag> coffee) {
  private static final int QUARTER = 15;

  static ActionRow of(Plan plan, Action action, Optional<Action> before, Words words) {
    Optional<Coffee> coffee = coffee(plan, action.what());
    String detail = words.text(action.how());
    return new ActionRow(
        ClockTime.of(plan.event(), action.at(), words),
        before.map(other -> follows(other.at(), action.at())).orElse("first"),
        Task.of(action, words),
        new Name(where(plan, action, words)),
        Detail.of(detail, coffee, words),
        coffee.map(which -> Tag.of(which, detail)));
  }

  /** A dispenser that nobody lists is called by its group. */
  private static String where(Plan plan, Action action, Words words) {
    return plan.run().stream()
        .flatMap(run -> run.fills().stream())
        .filter(time -> time.unit().equals(action.where()))
        .findFirst()
        .map(time -> words.text(time.called()))
        .orElse(action.where());
  }

  /** {@code same} minute, a new {@code minute}, or a new {@code quarter} of an hour. */
  private static String follows(LocalDateTime before, LocalDateTime now) {
    if (before.equals(now)) {
      return "same";
    }
    return quarter(before).equals(quarter(now)) ? "minute" : "quarter";
  }

  private static LocalDateTime quarter(LocalDateTime at) {
    return at.withMinute(at.getMinute() / QUARTER * QUARTER).withSecond(0).withNano(0);
  }

  private static Optional<Coffee> coffee(Plan plan, String what) {
    return plan.coffees().stream()
        .filter(
            coffee ->
                coffee.batches().stream().anyMatch(batch -> batch.id().equals(what))
                    || coffee.fills().stream().anyMatch(fill -> fill.id().equals(what)))
        .findFirst()
        .map(CoffeePlan::coffee);
  }

  /**
   * What to do.
   *
   * @param doing in plain words
   * @param subject on what: a batch, a fill; nothing when it is where it is done
   */
  record Task(String doing, Optional<Name> subject) {
    static Task of(Action action, Words words) {
      return new Task(
          words.text("do." + action.kind().name().toLowerCase(Locale.ROOT).replace('_', '-')),
          Optional.of(action.what()).filter(what -> !what.equals(action.where())).map(Name::new));
    }
  }

  /**
   * How it is done.
   *
   * @param text for people
   */
  record Detail(Name text) {
    private static final String TIME = "\\d\\d:\\d\\d";

    /** The word that sets decaf apart stands before the detail already. */
    static Detail of(String detail, Optional<Coffee> coffee, Words words) {
      return new Detail(
          new Name(
              coffee
                  .filter(Coffee::decaf)
                  .map(
                      which ->
                          detail.replace(
                              words.text(Saying.of("coffee.decaf").with("name", which.name())),
                              which.name()))
                  .orElse(detail)));
    }

    /** The text in pieces, each time one of its own, so that none is broken over two lines. */
    List<Piece> pieces() {
      return Stream.of(text.text().split("(?<= )(?=" + TIME + ")|(?<=" + TIME + ")"))
          .map(piece -> new Piece(piece, piece.matches(TIME)))
          .toList();
    }
  }

  /**
   * A part of a detail.
   *
   * @param text that it reads
   * @param time whether it is a time
   */
  record Piece(String text, boolean time) {}

  /**
   * The coffee that a row is about.
   *
   * @param name of the coffee, where the detail doesn't say it
   * @param decaf whether it is decaffeinated
   */
  record Tag(Optional<Name> name, boolean decaf) {
    static Tag of(Coffee coffee, String detail) {
      return new Tag(
          Optional.of(new Name(coffee.name())).filter(name -> !detail.contains(name.text())),
          coffee.decaf());
    }
  }
}
