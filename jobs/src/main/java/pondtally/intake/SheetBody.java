package pondtally.intake;

import java.util.Arrays;
import pondtally.check.RowCounts;
import pondtally.schema.FieldSchema;
import pondtally.schema.TableSchema;

/** Reads the rows below the headings: each is converted, judged, and handed on or set aside. */
final class SheetBody {

  private static final int SHOWN = 60;
  private static final String LONG =
      "A cell holds more than 100,000 characters, so the row was not read. Expected 32,767 at most,"
          + " which is what a cell of a workbook can hold.";

  private final String partner;
  private final boolean isText;
  private final RowJudge judge;
  private final RowSink sink;
  private final BoundColumn[] columns;
  private final Binding binding;
  private final FixedValues fixed;
  private final RowRules rules;
  private final NoRecord noRecord;
  private final Object[] values;

  private final UnreadColumns unread;
  private final int partnerAt;
  private final SheetMap map;

  private int widest;

  private long used;
  private long changed;
  private long setAside;

  SheetBody(
      TableSchema table,
      Binding binding,
      SheetMap map,
      String partner,
      boolean isText,
      RowJudge judge,
      RowSink sink) {
    this.binding = binding;
    this.map = map;
    this.widest = binding.headed();
    this.partner = partner;
    this.isText = isText;
    this.judge = judge;
    this.sink = sink;
    this.columns = binding.columns().toArray(BoundColumn[]::new);
    this.fixed = new FixedValues(table, map, binding.headingByField(), judge);
    this.rules = new RowRules(table, binding.columns(), judge);
    this.noRecord = new NoRecord(binding, judge);
    this.values = new Object[table.fields().size()];
    this.unread = new UnreadColumns(table, binding);
    this.partnerAt = table.field("partner").position();
  }

  /** Reads one row; a blank one is none. */
  void row(RawRow row) {
    if (row.isBlank()) {
      return;
    }
    judge.start(row.number);
    widest = Math.max(widest, row.width);
    MendedCell.tell(row.mended, binding, judge);
    unread.count(row);
    if (noRecord.test(row)) {
      setAside++;
      return;
    }
    if (row.cutColumn >= 0) {
      judge.setRowAside(
          IntakeRule.LONG_CELL, row.cell(row.cutColumn).substring(0, SHOWN) + "…", LONG);
    } else if (row.width != binding.width() || row.hasStrayQuote) {
      shape(row);
    }
    if (!judge.isSetAside()) {
      convert(row);
      fixed.fill(values);
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
        judge.fault(field, "", IntakeRule.MISSING_REQUIRED, Needed.message(field), "");
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
          "The row has %s cells where the table has %s columns, so values may stand in the wrong column. Expected quotation marks around a cell that holds the separator."
              .formatted(last, binding.width()));
    } else if (isText && row.width < binding.headed()) {
      judge.noticeRow(
          IntakeRule.RAGGED_ROW,
          row.cell(row.width - 1),
          "The row has %s cells where the table has %s columns; the last ones were read as empty."
              .formatted(row.width, binding.headed()));
    } else {
      unread.countBeyondHeadings(row);
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

  /** Reports what concerns whole columns, and returns the account of the rows. */
  RowCounts finishSheet() {
    for (BoundColumn bound : columns) {
      bound.converter().finish();
    }
    fixed.finish();
    unread.report(judge);
    AbsentHeadings.reportPlaces(map, widest, judge);
    return new RowCounts(used + changed + setAside, used, changed, setAside, 0);
  }
}
