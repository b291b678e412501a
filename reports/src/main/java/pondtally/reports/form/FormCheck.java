package pondtally.reports.form;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddressList;
import pondtally.reports.text.Messages;

/**
 * What a spreadsheet program checks when a cell is filled in: codes and yes or no from a list,
 * numbers and days within what is possible.
 */
public final class FormCheck {

  /** A list that is written into the check itself holds no more. */
  private static final int LONGEST_LIST = 255;

  private static final int LONGEST_TITLE = 32;
  private static final int LONGEST_TEXT = 255;

  private FormCheck() {}

  /**
   * Sets the check of a field on cells, with a line that says what belongs there.
   *
   * @param isStrict whether another value is refused; else it is only warned of
   */
  public static void set(
      Sheet sheet, FormField field, CellRangeAddressList cells, boolean isStrict) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    constraint(helper, field)
        .ifPresent(
            constraint -> {
              DataValidation check = helper.createValidation(constraint, cells);
              String expected = cut(expected(field), LONGEST_TEXT);
              String title = cut(field.heading(), LONGEST_TITLE);
              check.setErrorStyle(
                  isStrict ? DataValidation.ErrorStyle.STOP : DataValidation.ErrorStyle.WARNING);
              check.createErrorBox(title, expected);
              check.setShowErrorBox(true);
              check.createPromptBox(title, expected);
              check.setShowPromptBox(isStrict);
              check.setEmptyCellAllowed(true);
              check.setSuppressDropDownArrow(true);
              sheet.addValidationData(check);
            });
  }

  private static Optional<DataValidationConstraint> constraint(
      DataValidationHelper helper, FormField field) {
    return switch (field.kind()) {
      case TEXT -> Optional.empty();
      case CODE -> list(helper, field.codes().toArray(String[]::new));
      case YES_NO -> list(helper, "yes", "no");
      case DATE ->
          Optional.of(
              helper.createDateConstraint(
                  operator(field), serial(field.minimum()), serial(field.maximum()), null));
      case WHOLE, YEAR ->
          Optional.of(
              helper.createIntegerConstraint(
                  operator(field), plain(field.minimum()), plain(field.maximum())));
      case NUMBER ->
          Optional.of(
              helper.createDecimalConstraint(
                  operator(field), plain(field.minimum()), plain(field.maximum())));
    };
  }

  private static Optional<DataValidationConstraint> list(
      DataValidationHelper helper, String... values) {
    return String.join(",", values).length() > LONGEST_LIST
        ? Optional.empty()
        : Optional.of(helper.createExplicitListConstraint(values));
  }

  private static int operator(FormField field) {
    if (field.minimum() == null || field.maximum() == null) {
      throw new IllegalArgumentException(field.name() + " has no limits to check");
    }
    return OperatorType.BETWEEN;
  }

  private static String serial(double epochDay) {
    return plain(DateUtil.getExcelDate(LocalDate.ofEpochDay((long) epochDay)));
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** What a cell holds, in a line. */
  static String expected(FormField field) {
    return switch (field.kind()) {
      case TEXT -> Messages.of("form.FormCheck.text");
      case CODE ->
          Messages.of("form.FormCheck.one-of", Map.of("codes", String.join(", ", field.codes())));
      case YES_NO -> Messages.of("form.FormCheck.yes-or-no");
      case DATE -> Messages.of("form.FormCheck.a-date-year-month-day-such");
      case YEAR ->
          Messages.of(
              "form.FormCheck.a-year",
              Map.of("from", plain(field.minimum()), "to", plain(field.maximum())));
      case WHOLE -> number("form.FormCheck.a-whole-number", field);
      case NUMBER -> number("form.FormCheck.a-number", field);
    };
  }

  private static String number(String key, FormField field) {
    String unit =
        field.unit().isEmpty()
            ? ""
            : Messages.of("form.FormCheck.in", Map.of("unit", field.unit()));
    return Messages.of(
        key, Map.of("unit", unit, "from", shown(field.minimum()), "to", shown(field.maximum())));
  }

  private static String shown(double number) {
    return number == Math.rint(number)
        ? String.format(Locale.ROOT, "%,d", (long) number)
        : plain(number);
  }

  private static String cut(String text, int length) {
    return text.length() <= length ? text : text.substring(0, length - 1) + "…";
  }
}
