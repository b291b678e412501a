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
  private final TableName name;
  private final HeadingSearch search;
  private RowJudge judge;
  private Headings headings;
  private Binding binding;
  private RowSink sink;
  private SheetBody body;
  private int lastRow;
  private long unreadRows;

  SheetReader(InputFile file, SheetSource source, RowSink.Maker sinks) {
    this.file = file;
    this.source = source;
    this.sinks = sinks;
    this.name = TableName.of(file, source.name());
    this.search = new HeadingSearch(name.table());
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
    boolean isEmpty = search.rows().isEmpty() && !source.isText();
    if (broken == null && (isEmpty || isExplanation())) {
      return Optional.empty();
    }
    RowCounts counts = account();
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
      body.row(row);
    } else if (!row.isBlank()) {
      if (headings == null && !search.isFull()) {
        search.add(row).ifPresent(this::begin);
        if (search.isFull()) {
          search();
        }
      } else {
        unreadRows++;
      }
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
    binding = Binding.of(found, new SheetClues(source, headingRow), judge);
    sink = sinks.of(table, judge);
    if (found.isComplete()) {
      body = new SheetBody(table, binding, file.partner(), source.isText(), judge, sink);
    }
    for (RawRow row : search.rows()) {
      if (row.number > headingRow) {
        if (body == null) {
          unreadRows++;
        } else {
          body.row(row);
        }
      }
    }
  }

  private RowCounts account() {
    if (headings == null) {
      return Unread.unrecognised(
          search.rows().size() + unreadRows, search.hasSomeHeadings(), source, name, judge);
    }
    Unread.aboveHeadings(search.rows(), headings, judge);
    if (name.table().isPresent() && name.table().get() != headings.table()) {
      Unread.otherName(name.table().get(), headings.table(), judge);
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
        "Reading stopped after row %d: %s. Rows below it are not counted. Save the file anew and run again."
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
