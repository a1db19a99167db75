package dev.urnwright.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A day as it is given on the command line: {@code 2027-03-02}, {@code today}, {@code tomorrow}.
 *
 * @param date the day
 */
record DeliveryDay(LocalDate date) {
  private static final String EXPECTED =
      "; expected year-month-day such as 2027-03-02, or today, or tomorrow";

  static LocalDate parse(String text) {
    switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "today":
        return LocalDate.now();
      case "tomorrow":
        return LocalDate.now().plusDays(1);
      default:
        try {
          return LocalDate.parse(text.strip());
        } catch (DateTimeParseException unreadable) {
          throw new TypeConversionException("'" + text + "' is not a day" + EXPECTED);
        }
    }
  }

  /** Reads it for the command line. */
  static final class Converter implements ITypeConverter<DeliveryDay> {
    @Override
    public DeliveryDay convert(String text) {
      return new DeliveryDay(parse(text));
    }
  }
}
