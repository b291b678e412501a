package pondtally.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pondtally.schema.FieldSchema;
import pondtally.schema.TableSchema;

/** Which field each column of a sheet may be: the likeliest pairs first, no field twice. */
final class ColumnGuesses {

  private record Pair(int column, FieldSchema field, double likeness) {}

  private static final Comparator<Pair> LIKELIEST_FIRST =
      Comparator.comparingDouble((Pair pair) -> -pair.likeness())
          .thenComparingInt(Pair::column)
          .thenComparingInt(pair -> pair.field().position());

  private final TableSchema table;
  private final List<ColumnSample> columns;
  private final List<String> fields;
  private double score;
  private int likely;

  private ColumnGuesses(TableSchema table, List<ColumnSample> columns, List<String> known) {
    this.table = table;
    this.columns = columns;
    this.fields = new ArrayList<>(known);
  }

  /**
   * @param known field of each column that is known; empty for the others
   */
  static ColumnGuesses of(TableSchema table, List<ColumnSample> columns, List<String> known) {
    ColumnGuesses guesses = new ColumnGuesses(table, columns, known);
    List<Pair> pairs = guesses.pairs();
    guesses.take(pairs.stream().filter(p -> p.likeness() >= FieldLikeness.LIKELY).toList());
    guesses.likely = guesses.found();
    // A row needs these: any column that can be one of them is worth a look.
    guesses.take(pairs.stream().filter(p -> p.field().required()).toList());
    guesses.score -= 4 * guesses.missing().size();
    return guesses;
  }

  private List<Pair> pairs() {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      for (FieldSchema field : table.fields()) {
        double likeness =
            columns.get(i).heading().isEmpty() || !fields.get(i).isEmpty()
                ? 0
                : FieldLikeness.of(columns.get(i), field, table);
        if (likeness > 0) {
          pairs.add(new Pair(i, field, likeness));
        }
      }
    }
    pairs.sort(LIKELIEST_FIRST);
    return pairs;
  }

  private void take(List<Pair> pairs) {
    for (Pair pair : pairs) {
      boolean isFilled = !columns.get(pair.column()).cells().isEmpty();
      boolean isFree = fields.get(pair.column()).isEmpty() && !fields.contains(pair.field().name());
      if (isFree && (isFilled || pair.likeness() >= FieldLikeness.LIKELY)) {
        fields.set(pair.column(), pair.field().name());
        score += Math.min(pair.likeness(), 6);
      }
    }
  }

  /** Fields without which no row counts and that no column stands for. */
  List<String> missing() {
    Set<String> found = new HashSet<>(fields);
    List<String> missing = new ArrayList<>();
    for (FieldSchema field : table.fields()) {
      if (field.required() && !found.contains(field.name())) {
        missing.add(field.name());
      }
    }
    for (List<String> group : table.anyOf()) {
      if (group.stream().noneMatch(found::contains)) {
        missing.add(String.join(" or ", group));
      }
    }
    return missing;
  }

  TableSchema table() {
    return table;
  }

  /** The field of a column, known or guessed; {@code ignore} where none is likely. */
  String field(int column) {
    String field = fields.get(column);
    return field.isEmpty() ? "ignore" : field;
  }

  /** Whether a column is, or may be, a field. */
  boolean isField(int column) {
    return !fields.get(column).isEmpty() && !fields.get(column).equals("ignore");
  }

  private int found() {
    return (int) fields.stream().filter(field -> !field.isEmpty()).count();
  }

  /** How many columns are likely by their headings and cells, not only possible. */
  int likely() {
    return likely;
  }

  /** What the guesses are worth together, less what is missing. */
  double score() {
    return score;
  }
}
