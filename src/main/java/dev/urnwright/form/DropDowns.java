package dev.urnwright.form;

import dev.urnwright.input.Shape;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** What a cell says when it is chosen, and what there is to choose from. */
final class DropDowns {
  /** As far down as lists are offered. */
  static final int LAST_ROW = 1003;

  private static final int FIRST_ROW = 5;
  private static final int LONGEST = 250;

  private DropDowns() {}

  static void on(
      XSSFSheet page, Slot slot, List<FormSheet> sheets, int first, int last, int column) {
    DataValidationHelper helper = page.getDataValidationHelper();
    List<String> words =
        slot.value().words().stream().filter(word -> !word.matches("true|false")).toList();
    Optional<String> names = slot.value().namesOf().flatMap(key -> names(key, sheets));
    DataValidationConstraint constraint =
        !words.isEmpty()
            ? helper.createExplicitListConstraint(words.toArray(String[]::new))
            : names
                .map(helper::createFormulaListConstraint)
                .orElseGet(
                    () ->
                        helper.createTextLengthConstraint(
                            DataValidationConstraint.OperatorType.GREATER_OR_EQUAL, "0", null));
    DataValidation validation =
        helper.createValidation(constraint, new CellRangeAddressList(first, last, column, column));
    boolean strict = !words.isEmpty() && slot.shape() instanceof Shape.Value;
    validation.setEmptyCellAllowed(true);
    validation.setShowErrorBox(strict);
    if (strict) {
      validation.createErrorBox(
          shortened(slot.heading(), 30), "One of: " + String.join(", ", words));
    }
    validation.setSuppressDropDownArrow(!words.isEmpty() || names.isPresent());
    validation.createPromptBox(
        shortened(slot.heading(), 30),
        shortened(
            slot.help() + (slot.example().isEmpty() ? "" : "\nFor example: " + slot.example()),
            LONGEST));
    validation.setShowPromptBox(true);
    page.addValidationData(validation);
  }

  /** The column in which the names under a key stand. */
  private static Optional<String> names(String key, List<FormSheet> sheets) {
    for (FormSheet sheet : sheets) {
      if (sheet.path().equals(List.of(key)) && sheet.hasRows()) {
        for (int i = 0; i < sheet.slots().size(); i++) {
          Slot slot = sheet.slots().get(i);
          if (slot.isName() || slot.path().equals(List.of("name"))) {
            String letter = CellReference.convertNumToColString(i);
            return Optional.of(
                "'"
                    + sheet.name()
                    + "'!$"
                    + letter
                    + "$"
                    + FIRST_ROW
                    + ":$"
                    + letter
                    + "$"
                    + (LAST_ROW + 1));
          }
        }
      }
    }
    return Optional.empty();
  }

  private static String shortened(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most - 1) + "…";
  }
}
