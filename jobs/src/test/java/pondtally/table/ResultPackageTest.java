package pondtally.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of a result package against RFC 4180, FIPS 180-4 and the Table Schema descriptors. */
class ResultPackageTest {

  @TempDir private Path folder;

  private String csv(ResultTable table) throws IOException {
    ResultPackage.write(folder, List.of(table), Map.of("region", "Upper Tamble"));
    return Files.readString(folder.resolve(table.name() + ".csv"), StandardCharsets.UTF_8);
  }

  private JsonNode resource() throws IOException {
    return new ObjectMapper()
        .readTree(folder.resolve("datapackage.json").toFile())
        .get("resources")
        .get(0);
  }

  private static ResultTable sourceRow(String... texts) {
    TableSpec spec = TableSpec.named("source_rows");
    ResultTable.Builder table = ResultTable.named("source_rows");
    for (String text : texts) {
      table.row(
          spec.columns().stream()
              .map(column -> column.type() == ColumnType.STRING ? text : (Object) 7)
              .toArray());
    }
    return table.inGivenOrder().build();
  }

  /** RFC 4180, 2.1, 2.5 to 2.7: CRLF; quotes around breaks, quotes and commas; quotes doubled. */
  @Test
  void quotingOfRfc4180() throws IOException {
    String text = csv(sourceRow("say \"no\"", "a,b", "two\nlines", "plain"));
    assertTrue(text.contains(",\"say \"\"no\"\"\""), text);
    assertTrue(text.contains(",\"a,b\""), text);
    assertTrue(text.contains(",\"two\nlines\""), text);
    assertTrue(text.contains(",plain"), text);
    assertTrue(text.endsWith("\r\n"));
    assertEquals(5, text.split("\r\n", -1).length - 1);
  }

  @Test
  void anyTextComesBack() throws IOException {
    List<String> texts = new ArrayList<>();
    Random random = new Random(4180);
    String letters = "\",;\r\n\t ' =+-@é水x0";
    for (int i = 0; i < 300; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(9); n >= 0; n--) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      texts.add(text.toString());
    }
    ResultTable table = sourceRow(texts.toArray(new String[0]));
    csv(table);
    List<String> back = new ArrayList<>();
    int column = 0;
    while (table.spec().columns().get(column).type() != ColumnType.STRING) {
      column++;
    }
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser rows =
        CSVParser.parse(folder.resolve("source_rows.csv"), StandardCharsets.UTF_8, format)) {
      for (CSVRecord row : rows) {
        back.add(row.get(column));
      }
    }
    assertEquals(texts, back);
  }

  @Test
  void descriptorsFitTheFiles() throws IOException {
    for (TableSpec spec : TableSpec.all()) {
      ResultTable table = ResultTable.named(spec.name()).row(someCells(spec)).build();
      String text = csv(table);
      JsonNode resource = resource();
      List<String> names = new ArrayList<>();
      for (JsonNode field : resource.get("schema").get("fields")) {
        names.add(field.get("name").asText());
        assertFalse(field.get("description").asText().isBlank(), spec.name() + " " + field);
        assertTrue(
            List.of("string", "integer", "number", "date", "boolean")
                .contains(field.get("type").asText()),
            field.toString());
      }
      assertEquals(text.substring(0, text.indexOf('\r')), String.join(",", names));
      assertEquals(spec.name() + ".csv", resource.get("path").asText());
      assertEquals(1, resource.get("rows").asInt());
      assertEquals(
          "sha256:" + Sha256.of(folder.resolve(spec.name() + ".csv")),
          resource.get("hash").asText());
    }
  }

  private static Object[] someCells(TableSpec spec) {
    return spec.columns().stream()
        .map(
            column ->
                switch (column.type()) {
                  case STRING -> "x";
                  case INTEGER -> 3;
                  case NUMBER -> 0.1;
                  case DATE -> 19000;
                  case BOOLEAN -> true;
                })
        .toArray();
  }

  /** FIPS 180-4 (2015), examples: the message "abc", and the empty one. */
  @Test
  void sha256OfTheStandardsExamples() throws IOException {
    Path file = folder.resolve("abc");
    Files.writeString(file, "abc");
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Sha256.of(file));
    Files.writeString(file, "");
    assertEquals(
        "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855", Sha256.of(file));
  }

  @Test
  void numbersComeBackToTheLastBit() {
    Random random = new Random(754);
    for (int i = 0; i < 20_000; i++) {
      double value = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(value)) {
        String text = CellText.number(value);
        assertEquals(value == 0 ? 0 : value, Double.parseDouble(text), 0);
        assertTrue(text.matches("-?[0-9]+(\\.[0-9]+)?"), text);
      }
    }
    assertEquals("0.1", CellText.number(0.1));
    assertEquals("1200", CellText.number(1200));
    assertEquals("0", CellText.number(-0.0));
    assertEquals("0.0000001", CellText.number(1e-7));
    assertEquals("123456789012", CellText.number(123456789012.0));
  }

  @Test
  void datesAndUnknownCells() {
    int day = (int) LocalDate.of(2024, 2, 29).toEpochDay();
    assertEquals("2024-02-29", CellText.of(ColumnType.DATE, day));
    assertEquals("", CellText.of(ColumnType.NUMBER, null));
    assertEquals("", CellText.of(ColumnType.STRING, null));
  }

  @Test
  void cellsThatDoNotFitTheirColumnAreRefused() {
    TableSpec spec = TableSpec.named("costs");
    Object[] cells = someCells(spec);
    int number = spec.columns().stream().map(Column::name).toList().indexOf("build_usd");
    for (Object wrong : List.of(Double.NaN, Double.POSITIVE_INFINITY, "12", 12)) {
      Object[] row = cells.clone();
      row[number] = wrong;
      ResultTable.Builder table = ResultTable.named("costs");
      assertTrue(
          assertThrows(IllegalArgumentException.class, () -> table.row(row))
              .getMessage()
              .contains("costs.build_usd"));
    }
    ResultTable.Builder table = ResultTable.named("costs");
    assertThrows(IllegalArgumentException.class, () -> table.row("too", "few"));
    assertThrows(IllegalArgumentException.class, () -> ResultTable.named("no_such_table"));
  }

  private record Cause(
      String grouping,
      String group,
      String cause,
      Long failures,
      Double share,
      Double lower,
      Double upper) {}

  private record Renamed(
      String grouping,
      String group,
      String reason,
      Long failures,
      Double share,
      Double lower,
      Double upper) {}

  private record Swapped(
      String group,
      String grouping,
      String cause,
      Long failures,
      Double share,
      Double lower,
      Double upper) {}

  private record Short(String grouping, String group) {}

  @Test
  void recordsMustHaveTheDeclaredColumns() {
    ResultTable table =
        RecordRows.table(
            "failure_causes",
            List.of(
                new Cause("all", "all", "ice", 1L, 0.25, null, null),
                new Cause("all", "all", "chewed", 3L, 0.75, null, null)));
    assertEquals("chewed", table.rows().get(0)[2]);
    assertEquals("ice", table.rows().get(1)[2]);
    for (Record wrong :
        List.of(
            new Renamed("all", "all", "ice", 1L, 1.0, null, null),
            new Swapped("all", "all", "ice", 1L, 1.0, null, null),
            new Short("all", "all"))) {
      assertTrue(
          assertThrows(
                  IllegalArgumentException.class,
                  () -> RecordRows.table("failure_causes", List.of(wrong)))
              .getMessage()
              .contains("failure_causes"));
    }
  }
}
