package pondtally.intake;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import pondtally.schema.FieldSchema;
import pondtally.schema.HeadingMatch;
import pondtally.schema.TableSchema;

/**
 * How well a row serves as the headings of a table.
 *
 * @param table the table
 * @param row the row
 * @param map what {@code columns.yaml} states about its columns
 * @param matched number of the table's fields that it names
 * @param ownNames how many of those by the field's own name
 * @param isComplete whether it names all fields that a row needs
 */
record Headings(
    TableSchema table, RawRow row, SheetMap map, int matched, int ownNames, boolean isComplete) {

  static Headings of(TableSchema table, RawRow row, SheetMap map) {
    Set<String> fields = new HashSet<>();
    int ownNames = 0;
    for (int i = 0; i < map.widthOf(row); i++) {
      String heading = Blank.clean(row.cell(i));
      boolean isNone = row.isNumeric(i) && !map.names(i, heading);
      Optional<HeadingMatch> match = isNone ? Optional.empty() : map.match(table, i, heading);
      if (match.isPresent() && fields.add(match.get().field().name())) {
        ownNames += match.get().isOwnName() ? 1 : 0;
      }
    }
    int matched = fields.size();
    fields.addAll(map.values().keySet());
    return new Headings(table, row, map, matched, ownNames, isComplete(table, fields));
  }

  /** Whether a row of so many cells can tell the table at all; it is quick. */
  static boolean canTell(TableSchema table, RawRow row) {
    return cells(row) <= 2 * table.fields().size();
  }

  private static boolean isComplete(TableSchema table, Set<String> fields) {
    for (FieldSchema field : table.fields()) {
      if (field.required() && !fields.contains(field.name())) {
        return false;
      }
    }
    return table.anyOf().stream().allMatch(group -> group.stream().anyMatch(fields::contains));
  }

  /** Fields named count twice, so that a field's own name only decides between equals. */
  int score() {
    return 2 * matched + ownNames;
  }

  /** Whether enough of the row's cells are headings for the row to tell its table by itself. */
  boolean isTelling() {
    return matched >= 2 && matched * 2 >= cells(row);
  }

  private static int cells(RawRow row) {
    int cells = 0;
    for (int i = 0; i < row.width; i++) {
      cells += Blank.clean(row.cell(i)).isEmpty() ? 0 : 1;
    }
    return cells;
  }
}
