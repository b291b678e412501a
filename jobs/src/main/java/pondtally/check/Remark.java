package pondtally.check;

/**
 * What a rule has to say about a row.
 *
 * @param field our name of the field; null where the row as a whole is meant
 * @param value the value in our text form; null where the row as a whole is meant
 * @param message what is wrong, what was expected, what became of the row, what to do; may name
 *     rows by {@link Words#row}
 * @param suggestion what to write instead; empty where that is not known
 */
record Remark(CheckRule rule, String field, String value, String message, String suggestion) {

  static Remark row(CheckRule rule, String message) {
    return new Remark(rule, null, null, message, "");
  }

  static Remark cell(CheckRule rule, String field, String value, String message) {
    return new Remark(rule, field, value, message, "");
  }

  Remark suggest(String text) {
    return new Remark(rule, field, value, message, text);
  }
}
