package pondtally.intake;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import pondtally.check.RowCounts;
import pondtally.check.Severity;
import pondtally.check.SheetReport;
import pondtally.schema.TableSchema;

/** Reads one sheet, from the search for its headings to the account of its rows. */
final class SheetReader {

  private final InputFile file;
  private final SheetSource source;
  private final RowSink.Maker sinks;
  private final SheetMap map;
  private final TableEnd end;
  private final TableName name;
  private final HeadingSearch search;
  private RowJudge judge;
  private Headings headings;
  private Binding binding;
  private RowSink sink;
  private SheetBody body;
  private int lastRow;
  private long unreadRows;
  private int endRow;
  private String endText;
  private long rowsBelow;

  SheetReader(InputFile file, SheetSource source, RowSink.Maker sinks) {
    this.file = file;
    this.source = source;
    this.sinks = sinks;
    this.map = file.sheet(source.name());
    this.end = new TableEnd(map.stopAt());
    this.name = TableName.of(file, source.name(), map);
    this.search = new HeadingSearch(name.table(), map);
    this.judge = new RowJudge(file.index(), source.index(), null);
  }

  /** Reads the sheet; empty for a sheet of a workbook that holds nothing or only explains. */
  Optional<SheetReport> read() {
    SheetNotes notes = null;
    IOException broken = null;
    try {
      notes = source.read(this::row);
      search();
    } catch (IOException e) {
      broken = e;
    } catch (SheetClues.Unreadable e) {
      broken = e.fault();
    }
    boolean isEmpty = search.rows().isEmpty() && unreadRows == 0 && !source.isText();
    if (broken == null && (isEmpty || isExplanation())) {
      return Optional.empty();
    }
    RowCounts counts = broken != null && lastRow == 0 ? Unread.nothing() : account();
    if (notes != null) {
      new SheetNoteReport(judge, headings, binding).report(notes);
    }
    if (broken != null) {
      reportBroken(broken);
    }
    return Optional.of(report(counts));
  }

  private boolean isExplanation() {
    return headings == null && FixMarks.onlyExplains(search.rows());
  }

  private void row(RawRow row) {
    lastRow = row.number;
    if (body != null) {
      bodyRow(row);
    } else if (!row.isBlank()) {
      if (headings == null && !search.isFull() && !map.isSkipped()) {
        search.add(row).ifPresent(this::begin);
        if (search.isFull()) {
          search();
        }
      } else {
        unreadRows++;
      }
    }
  }

  private void bodyRow(RawRow row) {
    if (endRow == 0 && end.isAt(row)) {
      endRow = row.number;
      endText = TableEnd.firstInk(row);
    }
    if (endRow == 0) {
      body.row(row);
    } else if (!row.isBlank()) {
      rowsBelow++;
    }
  }

  /** Takes the best headings where none were certain. */
  private void search() {
    if (headings == null) {
      search.best().ifPresent(this::begin);
    }
  }

  private void begin(Headings found) {
    headings = found;
    TableSchema table = found.table();
    judge = new RowJudge(file.index(), source.index(), table.name());
    int headingRow = found.row().number;
    binding = Binding.of(found, new SheetClues(source, headingRow, end), judge);
    sink = sinks.of(table, judge);
    if (found.isComplete()) {
      body = new SheetBody(table, binding, map, file.partner(), source.isText(), judge, sink);
    }
    for (RawRow row : search.rows()) {
      if (row.number > headingRow) {
        if (body == null) {
          unreadRows++;
        } else {
          bodyRow(row);
        }
      }
    }
  }

  private RowCounts account() {
    if (map.isSkipped()) {
      return Unread.skipped(unreadRows, judge);
    }
    if (headings == null && map.statesHeaderRow()) {
      return Unread.emptyHeadingRow(search.rows().size() + unreadRows, map.headerRow(), judge);
    }
    if (headings == null) {
      return Unread.unrecognised(
          search.rows().size() + unreadRows, search.hasSomeHeadings(), source, name, judge);
    }
    Unread.aboveHeadings(search.rows(), headings, judge);
    if (name.table().isPresent() && name.table().get() != headings.table()) {
      Unread.otherName(name.table().get(), headings.table(), judge);
    }
    if (endRow > 0) {
      Unread.belowTable(endRow, endText, rowsBelow, judge);
    }
    return body == null
        ? Unread.incomplete(unreadRows, headings, binding, judge)
        : body.finishSheet();
  }

  private void reportBroken(IOException broken) {
    judge.aboutSheet(
        null,
        null,
        null,
        Severity.SET_ASIDE,
        IntakeRule.FILE_UNREADABLE,
        lastRow == 0
            ? "This %s cannot be read: %s. Nothing of it is counted."
                .formatted(source.isText() ? "file" : "sheet", broken.getMessage())
            : "Reading stopped after row %s: %s. Rows below it are not counted. Save the file anew and run again."
                .formatted(lastRow, broken.getMessage()),
        "");
  }

  private SheetReport report(RowCounts counts) {
    return new SheetReport(
        file.index(),
        source.index(),
        source.name(),
        headings == null ? null : headings.table().name(),
        binding == null ? Map.of() : binding.headingByField(),
        counts,
        sink == null ? null : sink.newestDay(),
        judge.findings());
  }
}
