package dev.urnwright.input;

import dev.urnwright.event.Supply.Per;
import dev.urnwright.event.Supply.Use;
import dev.urnwright.quantity.Amount;
import dev.urnwright.quantity.UnreadableException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How much goes of what is bought: {@code 20 ml per cup}, {@code all the water}. */
final class Uses {
  private static final String EXPECTED =
      "expected an amount per cup, guest, batch, fill or event, such as 1 per cup or 20 ml per"
          + " cup, or: all the water, all the ice";
  private static final int LONGEST = 60;
  private static final Pattern EACH =
      Pattern.compile("(.+?)\\s*(?:\\bper\\b|/)\\s*(cup|guest|batch|fill|event|carafe|day)");
  private static final Pattern ALL = Pattern.compile("all(?: the)? (water|ice)");

  private Uses() {}

  static Kind<Use> use() {
    return new Scalar<>(EXPECTED, Uses::parse);
  }

  private static Use parse(String text) {
    if (text.length() > LONGEST) {
      throw new UnreadableException(Words.quoted(text) + " is too long", EXPECTED);
    }
    String words = text.strip().replaceAll("[\\s\\p{Z}]+", " ").toLowerCase(Locale.ROOT);
    Matcher all = ALL.matcher(words);
    if (all.matches()) {
      return all.group(1).equals("ice") ? new Use.AllIce() : new Use.AllWater();
    }
    Matcher each = EACH.matcher(words);
    if (!each.matches()) {
      throw new UnreadableException(
          Words.quoted(text) + " doesn't say how much goes for each of what", EXPECTED);
    }
    Amount amount = Amount.parse(each.group(1));
    if (amount.isNothing()) {
      throw new UnreadableException(Words.quoted(text) + " is none of it", EXPECTED);
    }
    return new Use.Each(amount, per(each.group(2)));
  }

  /** A round fills carafes and has days, where an event has fills and is one. */
  private static Per per(String word) {
    return switch (word) {
      case "carafe" -> Per.FILL;
      case "day" -> Per.EVENT;
      default -> Per.valueOf(word.toUpperCase(Locale.ROOT));
    };
  }
}
