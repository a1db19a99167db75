package dev.urnwright.input;

import dev.urnwright.quantity.UnreadableException;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A decimal point that slipped: 14 % for 1.4 %, 1:1.3 for 1:13. */
final class Slip {
  private static final Pattern ONE_NUMBER =
      Pattern.compile("(\\s*(?:1\\s*:\\s*)?)(\\d{1,9}(?:\\.\\d{1,9})?)(\\D*)");
  private static final int[] SHIFTS = {-1, 1, -2, 2, -3, 3};

  private Slip() {}

  /**
   * The same kind, which asks about a slip where it refuses a number.
   *
   * @param usual what people mean, of what the kind takes
   */
  static <T> Scalar<T> asked(Scalar<T> kind, Predicate<T> usual) {
    return new Scalar<>(
        kind.shape(),
        text -> {
          try {
            return kind.parse().apply(text);
          } catch (UnreadableException refused) {
            throw likely(text, kind.parse(), usual)
                .map(
                    meant ->
                        new UnreadableException(
                            refused.wrong(), refused.expected() + "; did you mean " + meant + "?"))
                .orElse(refused);
          }
        });
  }

  /** The text with its point moved as little as makes it right. */
  private static <T> Optional<String> likely(
      String text, Function<String, T> parse, Predicate<T> usual) {
    Matcher number = ONE_NUMBER.matcher(text);
    if (!number.matches() || new BigDecimal(number.group(2)).signum() == 0) {
      return Optional.empty();
    }
    for (int shift : SHIFTS) {
      BigDecimal moved = new BigDecimal(number.group(2)).scaleByPowerOfTen(shift);
      String meant =
          number.group(1).strip()
              + moved.stripTrailingZeros().toPlainString()
              + number.group(3).stripTrailing();
      if (isRight(meant, parse, usual)) {
        return Optional.of(meant);
      }
    }
    return Optional.empty();
  }

  private static <T> boolean isRight(String text, Function<String, T> parse, Predicate<T> usual) {
    try {
      return usual.test(parse.apply(text));
    } catch (UnreadableException stillWrong) {
      return false;
    }
  }
}
