package pondtally.intake;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths in two units, as {@code 20' 6"}. */
final class FeetAndInches {

  private static final Pattern FORM =
      Pattern.compile(
          "(\\d{1,5})\\s*(?:'|′|’|ft\\.?|feet|foot)\\s*-?\\s*(\\d{1,3}(?:\\.\\d{1,6})?)\\s*(?:\"|″|”|''|in\\.?|inch|inches)",
          Pattern.CASE_INSENSITIVE);

  private FeetAndInches() {}

  /** Feet and inches; null where the text is of another form. */
  static double[] of(String text) {
    Matcher form = FORM.matcher(text);
    return form.matches()
        ? new double[] {Double.parseDouble(form.group(1)), Double.parseDouble(form.group(2))}
        : null;
  }
}
