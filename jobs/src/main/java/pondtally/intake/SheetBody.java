package pondtally.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pondtally.check.RowCounts;
import pondtally.check.Severity;
import pondtally.schema.FieldSchema;
import pondtally.schema.TableSchema;

/** Reads the rows below the headings: each is converted, judged, and handed on or set aside. */
final class SheetBody {

  private final TableSchema table;
  private final String partner;
  private final boolean isText;
  private final RowJudge judge;
  private final RowSink sink;
  private final BoundColumn[] columns;
  private final Binding binding;
  private final RowRules rules;
  private final NoRecord noRecord;
  private final Object[] values;
  private final int[] ignored;
  private final int[] ignoredCells;
  private final Map<Integer, Integer> withoutHeading = new TreeMap<>();
  private final int partnerAt;

  private long used;
  private long changed;
  private long setAside;

  SheetBody(
      TableSchema table,
      Binding binding,
      String partner,
      boolean isText,
      RowJudge judge,
      RowSink sink) {
    this.table = table;
    this.binding = binding;
    this.partner = partner;
    this.isText = isText;
    this.judge = judge;
    this.sink = sink;
    this.columns = binding.columns().toArray(BoundColumn[]::new);
    this.rules = new RowRules(table, binding.columns(), judge);
    this.noRecord = new NoRecord(binding, judge);
    this.values = new Object[table.fields().size()];
    this.ignored = binding.ignored().keySet().stream().mapToInt(Integer::intValue).toArray();
    this.ignoredCells = new int[ignored.length];
    this.partnerAt = table.field("partner").position();
  }

  /** Reads one row; a blank one is none. */
  void row(RawRow row) {
    if (row.isBlank()) {
      return;
    }
    judge.start(row.number);
    countIgnored(row);
    if (noRecord.test(row)) {
      setAside++;
      return;
    }
    if (row.width != binding.width() || row.hasStrayQuote) {
      shape(row);
    }
    if (!judge.isSetAside()) {
      convert(row);
      rules.apply(values);
    }
    finish();
  }

  private void convert(RawRow row) {
    Arrays.fill(values, null);
    for (BoundColumn bound : columns) {
      int at = bound.column();
      String text = Blank.clean(row.cell(at));
      FieldSchema field = bound.field();
      if (!text.isEmpty()) {
        values[field.position()] = bound.converter().convert(text, row.isNumeric(at));
      } else if (field.required()) {
        judge.fault(
            field, "", IntakeRule.MISSING_REQUIRED, "This cell is empty and is needed.", "");
      }
    }
  }

  private void finish() {
    if (judge.isSetAside()) {
      setAside++;
      return;
    }
    Object own = values[partnerAt];
    if (!sink.accept(judge.origin(), own == null ? partner : (String) own, values)) {
      setAside++;
    } else if (judge.isChanged()) {
      changed++;
    } else {
      used++;
    }
  }

  /** Judges a row that has not as many cells as there are headings. */
  private void shape(RawRow row) {
    int last = row.width;
    while (last > 0 && Blank.clean(row.cell(last - 1)).isEmpty()) {
      last--;
    }
    if (row.hasStrayQuote) {
      strayQuote(row);
    } else if (isText && last > binding.width()) {
      judge.setRowAside(
          IntakeRule.RAGGED_ROW,
          row.cell(last - 1),
          "The row has %d cells for %d headings, so values may stand in the wrong column. Expected quotation marks around a cell that holds the separator."
              .formatted(last, binding.width()));
    } else if (isText && row.width < binding.width()) {
      judge.noticeRow(
          IntakeRule.RAGGED_ROW,
          row.cell(row.width - 1),
          "The row has %d cells for %d headings; the last ones were read as empty."
              .formatted(row.width, binding.width()));
    } else {
      for (int i = binding.width(); i < last; i++) {
        if (!Blank.clean(row.cell(i)).isEmpty()) {
          withoutHeading.merge(i, 1, Integer::sum);
        }
      }
    }
  }

  private void strayQuote(RawRow row) {
    int at = firstQuoted(row);
    String problem =
        "A quotation mark opens a cell and is not closed as it must be. Expected the whole cell in"
            + " quotation marks, those inside it doubled.";
    if (row.width != binding.width() || isNeeded(at)) {
      judge.setRowAside(IntakeRule.STRAY_QUOTE, row.cell(at), problem);
    } else {
      judge.noticeRow(IntakeRule.STRAY_QUOTE, row.cell(at), problem + " Read as it stands.");
    }
  }

  private static int firstQuoted(RawRow row) {
    for (int i = 0; i < row.width; i++) {
      if (row.cell(i).indexOf('"') >= 0) {
        return i;
      }
    }
    return 0;
  }

  private boolean isNeeded(int at) {
    for (BoundColumn bound : columns) {
      if (bound.column() == at) {
        return bound.field().required();
      }
    }
    return false;
  }

  private void countIgnored(RawRow row) {
    for (int i = 0; i < ignored.length; i++) {
      if (!Blank.clean(row.cell(ignored[i])).isEmpty()) {
        ignoredCells[i]++;
      }
    }
  }

  /** Reports what concerns whole columns, and returns the account of the rows. */
  RowCounts finishSheet() {
    for (BoundColumn bound : columns) {
      bound.converter().finish();
    }
    for (int i = 0; i < ignored.length; i++) {
      notRead(ignored[i], binding.ignored().get(ignored[i]), ignoredCells[i]);
    }
    withoutHeading.forEach((column, cells) -> notRead(column, "", cells));
    return new RowCounts(used + changed + setAside, used, changed, setAside, 0);
  }

  private static String below(int cells) {
    return switch (cells) {
      case 0 -> ". Nothing stands below it.";
      case 1 -> ". 1 cell below it was not read.";
      default -> ". %d cells below it were not read.".formatted(cells);
    };
  }

  private void notRead(int column, String heading, int cells) {
    String what =
        heading.isEmpty()
            ? "Column %s has no heading".formatted(ColumnLetters.of(column))
            : "%s is no heading of the table %s".formatted(Shown.value(heading), table.name());
    List<String> names = table.fields().stream().map(FieldSchema::name).toList();
    judge.aboutSheet(
        null,
        heading,
        "",
        Severity.NOTICE,
        IntakeRule.UNKNOWN_COLUMN,
        what + below(cells),
        Likeness.nearest(heading, names.stream().map(name -> name.replace('_', '-')).toList())
            .replace('-', '_'));
  }
}
