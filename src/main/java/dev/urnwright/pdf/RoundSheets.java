package dev.urnwright.pdf;

import dev.urnwright.dispatch.Dispatch;
import dev.urnwright.dispatch.LegDay;
import dev.urnwright.dispatch.WeekShopping;
import dev.urnwright.round.Round;
import dev.urnwright.sheet.RoundBrewView;
import dev.urnwright.sheet.RoundLegView;
import dev.urnwright.sheet.WeekView;
import dev.urnwright.wording.Words;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Prints a day of a round: one file for the brew room, and for each leg one of each kind, so that
 * no more than one leg is ever laid out in memory.
 */
public final class RoundSheets {
  static final String BREW_ROOM = "round-brew-room.xhtml";
  static final String PICK_LIST = "round-pick-list.xhtml";
  static final String LABELS = "round-labels.xhtml";
  static final String SLIPS = "round-slips.xhtml";
  static final String WEEK = "round-week.xhtml";

  private final Typesetter typesetter;
  private final Words words;

  /**
   * A printer; its typefaces are loaded once.
   *
   * @param templates what the sheets are made from
   * @param round whose language they are in
   */
  public RoundSheets(TemplateFolder templates, Round round) throws IOException {
    words = templates.words(round.room().print().language());
    typesetter = new Typesetter(templates, words);
  }

  /**
   * Writes the brew room's sheets. The stream stays open, as in all of these.
   *
   * @throws BrokenTemplateException if a template of the firm's own is wrong
   */
  public void brewRoom(Dispatch day, OutputStream out) throws IOException {
    typesetter.write(BREW_ROOM, RoundBrewView.of(day, words), Drawings.NONE, out);
  }

  /** Writes what a driver takes along, and where to. */
  public void pickList(Dispatch day, LegDay leg, OutputStream out) throws IOException {
    typesetter.write(PICK_LIST, RoundLegView.of(day, leg, words), Drawings.NONE, out);
  }

  /** Writes a label for each carafe of a leg. */
  public void labels(Dispatch day, LegDay leg, OutputStream out) throws IOException {
    typesetter.write(LABELS, RoundLegView.of(day, leg, words), Drawings.NONE, out);
  }

  /** Writes a slip for each site of a leg. */
  public void slips(Dispatch day, LegDay leg, OutputStream out) throws IOException {
    typesetter.write(SLIPS, RoundLegView.of(day, leg, words), Drawings.NONE, out);
  }

  /** Writes what several days take to buy. */
  public void week(Round round, WeekShopping week, OutputStream out) throws IOException {
    typesetter.write(WEEK, WeekView.of(round, week, words), Drawings.NONE, out);
  }
}
