package pondtally.intake;

import pondtally.schema.FieldSchema;

/** What an empty cell lacks, in words. */
final class Needed {

  private Needed() {}

  static String message(FieldSchema field) {
    return "This cell is empty, and the row cannot be used without it. Expected %s. Fill it in."
        .formatted(expected(field));
  }

  private static String expected(FieldSchema field) {
    if (!field.codes().isEmpty()) {
      return "one of: " + String.join(", ", field.codes());
    }
    return switch (field.type()) {
      case DATE -> "a day, as YYYY-MM-DD";
      case YEAR -> "a year";
      case INTEGER -> "a whole number";
      case NUMBER -> field.unit() == null ? "a number" : "a number of " + field.unit().plural();
      case BOOLEAN -> "yes or no";
      case STRING -> "the " + field.name().replace('_', ' ');
    };
  }
}
