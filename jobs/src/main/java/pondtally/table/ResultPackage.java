package pondtally.table;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pondtally.work.Together;

/**
 * Writes result tables as an open data package: one CSV file a table (RFC 4180, UTF-8) and {@code
 * datapackage.json} with their Table Schema descriptors, row counts and SHA-256 sums.
 */
public final class ResultPackage {

  private static final ObjectMapper JSON =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private ResultPackage() {}

  /**
   * Writes {@code tables} into the existing folder {@code folder}.
   *
   * @param facts what reports have to know besides the tables (region, data cut, base year,
   *     definitions), by name
   */
  public static void write(Path folder, List<ResultTable> tables, Map<String, String> facts)
      throws IOException {
    write(folder, tables, List.of(), facts);
  }

  /**
   * Writes {@code tables} into the existing folder {@code folder}, and describes {@code files},
   * which are there already, after them.
   *
   * @param facts what reports have to know besides the tables, by name
   */
  public static void write(
      Path folder, List<ResultTable> tables, List<TableFile> files, Map<String, String> facts)
      throws IOException {
    ObjectNode root = JSON.createObjectNode();
    root.put("profile", "tabular-data-package");
    root.put("name", "pondtally-tables");
    ObjectNode factsNode = root.putObject("pondtally");
    new TreeMap<>(facts).forEach(factsNode::put);
    ArrayNode resources = root.putArray("resources");
    resources.addAll(written(folder, tables));
    for (TableFile table : files) {
      ObjectNode resource = resources.addObject();
      describe(resource, table.spec(), table.rows(), table.sha256());
      resource.put("read_by_row", true);
    }
    Files.writeString(
        folder.resolve("datapackage.json"),
        JSON.writeValueAsString(root) + "\n",
        StandardCharsets.UTF_8);
  }

  /** Descriptors of the tables, in their order; several tables are written at the same time. */
  private static List<ObjectNode> written(Path folder, List<ResultTable> tables)
      throws IOException {
    List<Supplier<List<ObjectNode>>> work = new ArrayList<>();
    tables.forEach(table -> work.add(() -> List.of(written(folder, table))));
    try {
      return Together.run(Runtime.getRuntime().availableProcessors(), work);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static ObjectNode written(Path folder, ResultTable table) {
    try {
      Path file = folder.resolve(table.name() + ".csv");
      writeCsv(file, table);
      ObjectNode resource = JSON.createObjectNode();
      describe(resource, table.spec(), table.rows().size(), Sha256.of(file));
      describeKey(resource, table);
      return resource;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void writeCsv(Path file, ResultTable table) throws IOException {
    List<Column> columns = table.spec().columns();
    try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
        CSVPrinter csv = new CSVPrinter(out, CSVFormat.RFC4180)) {
      csv.printRecord(columns.stream().map(Column::name));
      Object[] cells = new Object[columns.size()];
      for (Object[] row : table.rows()) {
        for (int i = 0; i < cells.length; i++) {
          cells[i] = CellText.of(columns.get(i).type(), row[i]);
        }
        csv.printRecord(cells);
      }
    }
  }

  private static void describe(ObjectNode resource, TableSpec spec, long rows, String sha256) {
    resource.put("name", spec.name());
    resource.put("title", spec.title());
    resource.put("path", spec.name() + ".csv");
    resource.put("format", "csv");
    resource.put("encoding", "utf-8");
    resource.put("hash", "sha256:" + sha256);
    resource.put("rows", rows);
    ArrayNode fields = resource.putObject("schema").putArray("fields");
    for (Column column : spec.columns()) {
      ObjectNode field = fields.addObject();
      field.put("name", column.name());
      field.put("type", column.type().schemaName());
      if (!column.unit().isEmpty()) {
        field.put("unit", column.unit());
      }
      field.put("description", column.description());
      if (column.isPrivate()) {
        field.put("private", true);
      }
    }
  }

  private static void describeKey(ObjectNode resource, ResultTable table) {
    if (RowOrder.isEachKeyOnce(table)) {
      // Not Table Schema's primaryKey, which allows no empty cell.
      ArrayNode key = resource.putArray("rowKey");
      table.spec().columns().stream()
          .limit(table.spec().keyColumns())
          .forEach(column -> key.add(column.name()));
    }
  }
}
