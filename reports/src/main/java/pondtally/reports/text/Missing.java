package pondtally.reports.text;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/** What stands where a figure does not: always a word, never a blank, a zero or a dash. */
public final class Missing {

  /** Nobody recorded it, or it cannot be estimated. */
  public static final String NOT_KNOWN = Messages.of("missing.not-known");

  /** Known, but left out so that small groups stay unrecognized. */
  public static final String WITHHELD = Messages.of("missing.withheld");

  private Missing() {}

  /** The figure in the given form, or {@link #NOT_KNOWN}. */
  public static String orNotKnown(OptionalDouble figure, DoubleFunction<String> form) {
    return figure.isPresent() ? form.apply(figure.getAsDouble()) : NOT_KNOWN;
  }
}
