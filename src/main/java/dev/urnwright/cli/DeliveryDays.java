package dev.urnwright.cli;

import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Several days as they are given on the command line: {@code 2027-03-01}, which begins seven, or
 * {@code 2027-03-01..2027-03-12}.
 *
 * @param first of them
 * @param last of them
 */
record DeliveryDays(LocalDate first, LocalDate last) {
  private static final int WEEK = 7;
  private static final int MOST = 62;

  /** All of them. */
  List<LocalDate> dates() {
    return first.datesUntil(last.plusDays(1)).toList();
  }

  /** Reads them for the command line. */
  static final class Converter implements ITypeConverter<DeliveryDays> {
    @Override
    public DeliveryDays convert(String text) {
      String[] parts = text.split("\\.\\.", 2);
      LocalDate first = DeliveryDay.parse(parts[0]);
      LocalDate last = parts.length == 1 ? first.plusDays(WEEK - 1) : DeliveryDay.parse(parts[1]);
      if (last.isBefore(first) || last.isAfter(first.plusDays(MOST - 1))) {
        throw new TypeConversionException(
            "'"
                + text
                + "' is not a time of up to "
                + MOST
                + " days; expected the first day, or"
                + " the first and last as 2027-03-01..2027-03-12");
      }
      return new DeliveryDays(first, last);
    }
  }
}
