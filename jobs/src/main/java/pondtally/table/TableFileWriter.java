package pondtally.table;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Writes the file of a result table row by row, in the order given. */
public final class TableFileWriter implements AutoCloseable {

  private final TableSpec spec;
  private final CSVPrinter csv;
  private final Object[] texts;
  private long rows;

  private TableFileWriter(TableSpec spec, CSVPrinter csv) {
    this.spec = spec;
    this.csv = csv;
    this.texts = new Object[spec.columns().size()];
  }

  /** Starts the file of the table declared as {@code name} in an existing folder. */
  public static TableFileWriter open(Path folder, String name) throws IOException {
    TableSpec spec = TableSpec.named(name);
    BufferedWriter out =
        Files.newBufferedWriter(folder.resolve(name + ".csv"), StandardCharsets.UTF_8);
    CSVPrinter csv = new CSVPrinter(out, CSVFormat.RFC4180);
    csv.printRecord(spec.columns().stream().map(Column::name));
    return new TableFileWriter(spec, csv);
  }

  /** Writes a row: one cell for each declared column, null for "not known". */
  public void row(Object... cells) throws IOException {
    List<Column> columns = spec.columns();
    if (cells.length != columns.size()) {
      throw new IllegalArgumentException(
          spec.name() + ": " + cells.length + " cells for " + columns.size() + " columns");
    }
    for (int i = 0; i < cells.length; i++) {
      CellText.check(spec.name(), columns.get(i), cells[i]);
      texts[i] = CellText.of(columns.get(i).type(), cells[i]);
    }
    csv.printRecord(texts);
    rows++;
  }

  /** The table as it stands. */
  public TableFile written() {
    return new TableFile(spec, rows);
  }

  @Override
  public void close() throws IOException {
    csv.close();
  }
}
