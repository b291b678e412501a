package pondtally.reports.form;

import java.util.List;
import java.util.Optional;

/**
 * A table that partners fill in.
 *
 * @param name our name of it, for example {@code revisits}
 * @param sheetName the name of its sheet, by which it is read
 * @param description what one row is
 * @param fields in the order in which they are shown
 */
public record FormTable(String name, String sheetName, String description, List<FormField> fields) {

  /** The field called {@code field}. */
  public Optional<FormField> field(String field) {
    return fields.stream().filter(f -> f.name().equals(field)).findFirst();
  }
}
