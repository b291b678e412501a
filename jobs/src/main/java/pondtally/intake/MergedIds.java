package pondtally.intake;

import java.util.Map;
import java.util.TreeMap;
import pondtally.check.Severity;
import pondtally.schema.FieldSchema;

/** Ids of which {@code aliases.csv} says that they mean another. */
final class MergedIds implements CellConverter {

  private final FieldSchema field;
  private final Map<String, String> sameAs;
  private final CellConverter usual;
  private final RowJudge judge;
  private final Map<String, Integer> counts = new TreeMap<>();

  MergedIds(FieldSchema field, Map<String, String> sameAs, CellConverter usual, RowJudge judge) {
    this.field = field;
    this.sameAs = sameAs;
    this.usual = usual;
    this.judge = judge;
  }

  @Override
  public Object convert(String text, boolean isNumeric) {
    Object id = usual.convert(text, isNumeric);
    String other = id == null ? null : sameAs.get((String) id);
    if (other == null) {
      return id;
    }
    counts.merge((String) id, 1, Integer::sum);
    judge.changedWithColumn();
    return other;
  }

  @Override
  public void finish() {
    usual.finish();
    counts.forEach(
        (id, count) ->
            judge.aboutSheet(
                field.name(),
                null,
                id,
                Severity.CHANGED,
                IntakeRule.ID_MERGED,
                "aliases.csv says that %s is the same as %s: %s."
                    .formatted(
                        Shown.value(id),
                        Shown.value(sameAs.get(id)),
                        count == 1 ? "1 row" : count + " rows"),
                ""));
  }
}
