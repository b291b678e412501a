package pondtally.intake;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.check.Finding;
import pondtally.check.SheetReport;
import pondtally.schema.FieldSchema;
import pondtally.schema.FieldType;
import pondtally.schema.TableSchema;

/** The entry of a suggested {@code columns.yaml} that is about one sheet. */
final class SheetSuggestion {

  /** Begins a line that is to be decided; without it the line is valid as it stands. */
  static final String MARK = "#? ";

  private static final int SAMPLE_ROWS = 40;
  private static final int SHOWN_CELLS = 3;
  private static final int MOST_CODES = 30;
  private static final ObjectMapper JSON = new ObjectMapper();

  private final InputFile file;
  private final SheetReport report;
  private final List<String> lines = new ArrayList<>();
  private boolean isActive;

  private SheetSuggestion(InputFile file, SheetReport report) {
    this.file = file;
    this.report = report;
  }

  /** The entry of a sheet. */
  static SheetSuggestion of(InputFile file, SheetReport report) throws IOException {
    SheetSuggestion suggestion = new SheetSuggestion(file, report);
    if (report.table() == null) {
      suggestion.unrecognised(suggestion.sample());
    } else {
      suggestion.recognised(suggestion.sample());
    }
    return suggestion;
  }

  /** Lines with their indentation; empty where there is nothing to decide. */
  List<String> lines() {
    return lines;
  }

  /** Whether some of the lines are sure, so that the entry counts as it stands. */
  boolean isActive() {
    return isActive;
  }

  private List<SourceRow> sample() throws IOException {
    TreeSet<Integer> rows = new TreeSet<>();
    for (int i = 1; i <= SAMPLE_ROWS; i++) {
      rows.add(i);
    }
    return PartnerFileReader.cells(file, Map.of(report.sheet(), rows));
  }

  private void unrecognised(List<SourceRow> sample) {
    boolean holdsRows = report.findings().stream().anyMatch(this::isOpen);
    Optional<TableSchema> named =
        TableName.of(file, report.sheetName(), file.sheet(report.sheetName())).table();
    Optional<Headings> best = named.flatMap(table -> likeliest(table, sample));
    if (holdsRows && best.isPresent()) {
      asHeadings(best.get(), sample);
    } else if (holdsRows) {
      place(MARK);
      lines.add(MARK + "    table: skip  # or the table that it holds");
    }
  }

  /** The row that holds most headings of the table that the name says, one at least. */
  private static Optional<Headings> likeliest(TableSchema table, List<SourceRow> sample) {
    Headings best = null;
    for (SourceRow source : sample) {
      RawRow row = new RawRow();
      row.start(source.row());
      source.cells().forEach(row::add);
      Headings headings = Headings.of(table, row, SheetMap.NONE);
      if (headings.matched() > (best == null ? 0 : best.matched())) {
        best = headings;
      }
    }
    return Optional.ofNullable(best);
  }

  private void asHeadings(Headings found, List<SourceRow> sample) {
    List<String> headings = new ArrayList<>();
    List<String> fields = new ArrayList<>();
    for (int i = 0; i < found.row().width; i++) {
      String heading = Blank.clean(found.row().cell(i));
      headings.add(heading);
      fields.add(found.table().match(heading).map(match -> match.field().name()).orElse(""));
    }
    List<SourceRow> rows = new ArrayList<>();
    for (SourceRow row : sample) {
      if (row.row() > found.row().number) {
        rows.add(new SourceRow(row.file(), row.sheet(), row.row(), headings, fields, row.cells()));
      }
    }
    entry(found.table(), headings, fields, rows, MARK);
  }

  private boolean isOpen(Finding finding) {
    return finding.rule().equals(IntakeRule.UNRECOGNISED_TABLE.code());
  }

  private void place(String mark) {
    String path = file.path().substring(file.path().indexOf('/') + 1);
    lines.add(mark + "  - files: " + quoted(path));
    if (!report.sheetName().isEmpty()) {
      lines.add(mark + "    sheets: " + quoted(report.sheetName()));
    }
  }

  private void recognised(List<SourceRow> sample) {
    TableSchema table = TableSchema.named(report.table());
    List<String> headings = sample.isEmpty() ? List.of() : sample.get(0).headings();
    List<String> fields = sample.isEmpty() ? List.of() : sample.get(0).fields();
    entry(table, headings, fields, sample, "");
  }

  private void entry(
      TableSchema table,
      List<String> headings,
      List<String> fields,
      List<SourceRow> sample,
      String mark) {
    List<String> unknown = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      String heading = Blank.clean(headings.get(i));
      if (fields.get(i).isEmpty() && !heading.isEmpty()) {
        unknown.add(
            MARK
                + "      %s: %s"
                    .formatted(quoted(heading), guess(table, i, heading, fields, sample)));
      }
    }
    List<String> codes = codes();
    if (unknown.isEmpty() && codes.isEmpty()) {
      return;
    }
    isActive = mark.isEmpty();
    place(mark);
    lines.add(mark + "    table: " + table.name());
    lines.add(mark + "    columns:");
    for (int i = 0; i < fields.size(); i++) {
      if (!fields.get(i).isEmpty() && !Blank.clean(headings.get(i)).isEmpty()) {
        lines.add(
            mark + "      %s: %s".formatted(quoted(Blank.clean(headings.get(i))), fields.get(i)));
      }
    }
    lines.addAll(unknown);
    lines.addAll(codes);
  }

  /** The field that a column may be, with some of its cells to decide by. */
  private static String guess(
      TableSchema table, int column, String heading, List<String> taken, List<SourceRow> sample) {
    Set<String> cells = new LinkedHashSet<>();
    for (SourceRow row : sample) {
      String cell = column < row.cells().size() ? Blank.clean(row.cells().get(column)) : "";
      if (!cell.isEmpty() && !cell.equals(heading)) {
        cells.add(cell);
      }
    }
    String field = likely(table, heading, cells, taken);
    String shown = String.join(", ", cells.stream().limit(SHOWN_CELLS).map(Shown::value).toList());
    return "%s  # %s".formatted(field, cells.isEmpty() ? "empty" : "holds " + shown);
  }

  private static String likely(
      TableSchema table, String heading, Set<String> cells, List<String> taken) {
    List<FieldSchema> free =
        table.fields().stream().filter(field -> !taken.contains(field.name())).toList();
    List<String> names = free.stream().map(field -> field.name().replace('_', '-')).toList();
    int near = names.indexOf(Likeness.nearest(heading, names));
    if (near >= 0) {
      return free.get(near).name();
    }
    return free.stream()
        .filter(field -> fits(field, cells))
        .findFirst()
        .map(FieldSchema::name)
        .orElse("ignore");
  }

  /** Whether the cells by themselves tell a needed date, or a field of codes. */
  private static boolean fits(FieldSchema field, Set<String> cells) {
    if (cells.isEmpty()) {
      return false;
    }
    if (field.type() == FieldType.DATE && field.required()) {
      return cells.stream()
          .allMatch(
              cell ->
                  IsoDay.parse(cell) != IsoDay.NONE
                      || DateText.of(cell).form() == DateText.Form.YEAR_LAST);
    }
    return !field.codes().isEmpty()
        && cells.stream().filter(field.codes()::contains).count() * 2 >= cells.size();
  }

  private List<String> codes() {
    Map<String, Map<String, String>> byField = new TreeMap<>();
    for (Finding finding : report.findings()) {
      if (finding.rule().equals(IntakeRule.UNKNOWN_CODE.code())) {
        Map<String, String> meanings =
            byField.computeIfAbsent(finding.field(), field -> new TreeMap<>());
        if (meanings.size() < MOST_CODES) {
          meanings.put(NamedColumn.key(finding.value()), finding.suggestion());
        }
      }
    }
    List<String> codes = new ArrayList<>();
    byField.forEach((field, meanings) -> add(codes, field, meanings));
    return codes;
  }

  private void add(List<String> codes, String field, Map<String, String> meanings) {
    FieldSchema schema = TableSchema.named(report.table()).field(field);
    List<String> known = schema.type() == FieldType.BOOLEAN ? List.of("yes", "no") : schema.codes();
    if (codes.isEmpty()) {
      codes.add(MARK + "    codes:");
    }
    codes.add(MARK + "      %s:  # one of %s".formatted(field, String.join(", ", known)));
    meanings.forEach(
        (cell, near) ->
            codes.add(
                MARK + "        %s: %s".formatted(quoted(cell), near.isEmpty() ? "~" : near)));
  }

  private static String quoted(String text) {
    try {
      return JSON.writeValueAsString(text);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
