package pondtally.sample;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;

/** One record by field name, in our own units, and what became of it when faults were planted. */
final class Row {
  private final Map<String, Cell> values = new LinkedHashMap<>();
  private final Map<String, Cell> asWritten = new LinkedHashMap<>();
  private Outcome outcome = Outcome.USED;
  private boolean touched;

  Row with(String field, Cell cell) {
    if (!cell.isBlank()) {
      values.put(field, cell);
    }
    return this;
  }

  Row with(String field, String text) {
    return with(field, Cell.of(text));
  }

  Row with(String field, LocalDate day) {
    return with(field, Cell.of(day));
  }

  Row with(String field, long number) {
    return with(field, Cell.of(number));
  }

  Row with(String field, double number, int decimals) {
    return with(field, Cell.of(number, decimals));
  }

  Row without(String field) {
    values.remove(field);
    return this;
  }

  Cell get(String field) {
    return values.getOrDefault(field, Cell.blank());
  }

  String text(String field) {
    return get(field).text();
  }

  boolean has(String field) {
    return values.containsKey(field);
  }

  LocalDate day(String field) {
    return LocalDate.parse(text(field));
  }

  Map<String, Cell> values() {
    return values;
  }

  /** A copy of the values, without any planted fault. */
  Row copy() {
    Row copy = new Row();
    copy.values.putAll(values);
    return copy;
  }

  /** Writes this cell exactly so, whatever the column's unit. */
  void write(String field, Cell cell) {
    asWritten.put(field, cell);
  }

  boolean isWritten(String field) {
    return asWritten.containsKey(field);
  }

  Cell written(String field) {
    return asWritten.get(field);
  }

  void mark(Outcome result) {
    touched = true;
    if (result.compareTo(outcome) > 0) {
      outcome = result;
    }
  }

  boolean isTouched() {
    return touched;
  }

  Outcome outcome() {
    return outcome;
  }

  /** Whether the row counts in the end. */
  boolean counts() {
    return outcome != Outcome.SET_ASIDE && outcome != Outcome.DUPLICATE;
  }
}
