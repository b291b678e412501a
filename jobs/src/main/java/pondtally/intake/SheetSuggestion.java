package pondtally.intake;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.check.Finding;
import pondtally.check.SheetReport;
import pondtally.schema.FieldSchema;
import pondtally.schema.FieldType;
import pondtally.schema.TableSchema;
import pondtally.schema.Unit;

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
    if (report.findings().stream().noneMatch(this::isOpen)) {
      return;
    }
    Optional<TableSchema> named =
        TableName.of(file, report.sheetName(), file.sheet(report.sheetName())).table();
    Optional<TableGuess> guess =
        TableGuess.of(file.path() + " " + report.sheetName(), named, sample);
    place(MARK);
    if (guess.isEmpty() || guess.get().columns() == null) {
      lines.add(MARK + "    table: skip  # or the table that it holds");
      guess.ifPresent(this::headings);
    } else {
      guessed(guess.get());
    }
  }

  /** What somebody needs in order to name the table and its columns. */
  private void headings(TableGuess guess) {
    lines.add(
        MARK
            + "    columns:  # headings of row %s: write our field for each"
                .formatted(guess.row()));
    List<ColumnSample> columns = ColumnSample.of(guess.headings(), guess.rows());
    for (ColumnSample column : columns) {
      if (!column.heading().isEmpty()) {
        lines.add(column(column, "ignore"));
      }
    }
  }

  private void guessed(TableGuess guess) {
    ColumnGuesses guesses = guess.columns();
    String missing = String.join(", ", guesses.missing());
    lines.add(
        MARK
            + "    table: "
            + guesses.table().name()
            + (missing.isEmpty() ? "" : "  # needs a column for " + missing + " as well"));
    lines.add(MARK + "    columns:");
    List<ColumnSample> columns = ColumnSample.of(guess.headings(), guess.rows());
    for (int i = 0; i < columns.size(); i++) {
      if (!columns.get(i).heading().isEmpty()) {
        lines.add(column(columns.get(i), guesses.field(i)));
      }
    }
    lines.addAll(units(guesses, columns));
  }

  private static List<String> units(ColumnGuesses guesses, List<ColumnSample> columns) {
    List<String> units = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      if (guesses.isField(i) && !columns.get(i).cells().isEmpty()) {
        FieldSchema field = guesses.table().field(guesses.field(i));
        UnitGuess.of(columns.get(i), field, guesses.table())
            .ifPresent(unit -> units.add(unit(field, unit)));
      }
    }
    if (!units.isEmpty()) {
      units.add(0, MARK + "    units:");
    }
    return units;
  }

  private static String unit(FieldSchema field, Unit unit) {
    return MARK
        + "      %s: %s  # as %s the numbers are above %s, the most possible"
            .formatted(
                field.name(), unit.symbol(), field.unit().plural(), PlainText.of(field.maximum()));
  }

  private static String column(ColumnSample column, String field) {
    return MARK
        + "      %s: %s  # %s"
            .formatted(quoted(column.heading()), field, column.shown(SHOWN_CELLS));
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
    entry(table, headings, fields, sample);
  }

  private void entry(
      TableSchema table, List<String> headings, List<String> fields, List<SourceRow> sample) {
    List<ColumnSample> columns = ColumnSample.of(headings, sample);
    ColumnGuesses guesses = ColumnGuesses.of(table, columns, fields);
    SheetMap map = file.sheet(report.sheetName());
    List<String> unknown = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      String heading = columns.get(i).heading();
      if (fields.get(i).isEmpty() && !heading.isEmpty() && !map.names(i, heading)) {
        unknown.add(column(columns.get(i), guesses.field(i)));
      }
    }
    List<String> units = map.units().isEmpty() ? units(guesses, columns) : List.of();
    List<String> codes = codes();
    if (unknown.isEmpty() && units.isEmpty() && codes.isEmpty()) {
      return;
    }
    isActive = true;
    place("");
    lines.add("    table: " + table.name());
    lines.add("    columns:");
    for (int i = 0; i < fields.size(); i++) {
      if (!fields.get(i).isEmpty() && !Blank.clean(headings.get(i)).isEmpty()) {
        lines.add("      %s: %s".formatted(quoted(Blank.clean(headings.get(i))), fields.get(i)));
      }
    }
    lines.addAll(unknown);
    lines.addAll(units);
    lines.addAll(codes);
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
