package pondtally.reports.fixlist;

import java.util.List;
import java.util.Optional;
import pondtally.reports.form.FormField;
import pondtally.reports.form.FormKind;
import pondtally.reports.form.FormTable;

/**
 * What a list needs for being corrected and read again.
 *
 * @param mark the text by which reading knows the column of row keys
 * @param forms the input tables, for the codes to choose from
 */
public record ReturnMarks(String mark, List<FormTable> forms) {

  /** The field if its cells are chosen from a list. */
  Optional<FormField> listed(String table, String field) {
    return forms.stream()
        .filter(form -> form.name().equals(table))
        .flatMap(form -> form.field(field).stream())
        .filter(f -> f.kind() == FormKind.CODE || f.kind() == FormKind.YES_NO)
        .findFirst();
  }
}
