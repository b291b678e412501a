package pondtally.intake;

import java.util.Map;
import java.util.TreeMap;
import pondtally.check.Severity;
import pondtally.schema.FieldSchema;

/** Cells for which {@code columns.yaml} states what they stand for; the others as usual. */
final class MappedCodes implements CellConverter {

  private final FieldSchema field;
  private final Map<String, String> meanings;
  private final CellConverter usual;
  private final RowJudge judge;
  private final Map<String, Integer> counts = new TreeMap<>();

  MappedCodes(
      FieldSchema field, Map<String, String> meanings, CellConverter usual, RowJudge judge) {
    this.field = field;
    this.meanings = meanings;
    this.usual = usual;
    this.judge = judge;
  }

  @Override
  public Object convert(String text, boolean isNumeric) {
    String meaning = meanings.get(NamedColumn.key(text));
    if (meaning == null) {
      return usual.convert(text, isNumeric);
    }
    if (!meaning.equals(text)) {
      counts.merge(text, 1, Integer::sum);
      judge.changedWithColumn();
    }
    return meaning.isEmpty() ? null : usual.convert(meaning, false);
  }

  @Override
  public void finish() {
    counts.forEach(this::tell);
    usual.finish();
  }

  private void tell(String cell, int count) {
    String meaning = meanings.get(NamedColumn.key(cell));
    judge.aboutSheet(
        field.name(),
        null,
        cell,
        Severity.CHANGED,
        IntakeRule.CODE_MAPPED,
        "columns.yaml reads %s as %s: %s."
            .formatted(
                Shown.value(cell),
                meaning.isEmpty() ? "not known" : meaning,
                count == 1 ? "1 row" : count + " rows"),
        "");
  }
}
