package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import pondtally.table.CsvText;
import pondtally.table.ResultPackage;
import pondtally.table.TableFile;
import pondtally.table.TableFileWriter;

/** What {@code pondtally trace} prints, and what it says to a slip. */
class TraceCommandTest {

  @TempDir private Path folder;

  private final StringWriter printed = new StringWriter();

  @BeforeEach
  void tables() throws IOException {
    TableFile file;
    try (TableFileWriter out = TableFileWriter.open(folder, "contributions")) {
      row(out, "acres_before", "A", null, 2.5, "acres", 4, "2024", null, null, null);
      row(out, "acres_before", "A", null, 3.5, "acres", 5, "all", null, null, null);
      row(out, "build_usd", "A", "A-1", 1200.255, "usd", 7, "2023", null, "dual 12 in", "unknown");
      row(out, "build_usd", "B", "B-1", 99.75, "usd", 8, "2024", null, "unknown", "north");
      row(out, "funding_cash_usd", null, null, 10.0, "nominal usd", 9, null, "Alder", null, null);
      file = out.written();
    }
    ResultPackage.write(folder, List.of(), List.of(file), Map.of());
  }

  private static void row(
      TableFileWriter out,
      String subject,
      String site,
      String device,
      double amount,
      String unit,
      int row,
      String year,
      String part,
      String pipe,
      String crew)
      throws IOException {
    List<String> cells =
        Stream.of(
                subject,
                site,
                device,
                CsvText.cell(amount),
                unit,
                "orr",
                "orr/list.xlsx",
                "Sheet 1",
                "" + row,
                year,
                part,
                null,
                pipe,
                null,
                crew,
                null,
                null,
                null)
            .map(CsvText::cell)
            .toList();
    out.rows((String.join(",", cells) + "\r\n").getBytes(StandardCharsets.UTF_8), 1);
  }

  private int trace(String... options) {
    CommandLine line = new CommandLine(new Main());
    line.setOut(new PrintWriter(printed));
    StringWriter errors = new StringWriter();
    line.setErr(new PrintWriter(errors));
    line.setExecutionExceptionHandler(
        (error, command, parsed) -> {
          printed.append(error.getMessage());
          return 2;
        });
    String[] arguments = new String[options.length + 2];
    arguments[0] = "trace";
    arguments[1] = folder.toString();
    System.arraycopy(options, 0, arguments, 2, options.length);
    return line.execute(arguments);
  }

  private void says(String text) {
    assertTrue(printed.toString().contains(text), printed.toString());
  }

  @Test
  void printsRowsAndTheirSum() {
    assertEquals(0, trace("--subject", "build_usd"));
    says("1,200.26  2023       A            A-1          orr/list.xlsx, Sheet 1, row 7");
    // 1,200.255 + 99.75 = 1,300.005 and half a cent goes up.
    says("1,300.01  build_usd: total of 2 rows, usd");
  }

  @Test
  void oneGroupAlone() {
    assertEquals(0, trace("--subject", "build_usd", "--group", "dual 12 in"));
    says("build_usd of dual 12 in: total of 1 row, usd");
  }

  @Test
  void aValueOfTwoGroupingsIsAskedBack() {
    assertEquals(2, trace("--subject", "build_usd", "--group", "unknown"));
    says("crew=unknown, pipe=unknown");
    assertEquals(0, trace("--subject", "build_usd", "--group", "crew=unknown"));
    says("build_usd of unknown: total of 1 row, usd");
  }

  /** A stock is not added up over the years: what stands at the end counts. */
  @Test
  void aStockIsThatOfTheEnd() {
    assertEquals(0, trace("--subject", "acres_before"));
    says("3.5000  acres_before: total of 1 row, acres");
    assertEquals(0, trace("--subject", "acres_before", "--year", "2024"));
    says("2.5000  acres_before in 2024: total of 1 row, acres");
  }

  @Test
  void namesTheNearestSubject() {
    assertEquals(2, trace("--subject", "biuld_usd"));
    says("Did you mean build_usd?");
  }

  @Test
  void namesTheNearestGroup() {
    assertEquals(2, trace("--subject", "build_usd", "--group", "dual 12in"));
    says("Did you mean dual 12 in?");
  }

  @Test
  void whatIsNotDividedSaysSo() {
    assertEquals(2, trace("--subject", "acres_before", "--group", "dual 12 in"));
    says("acres_before is not divided by groups");
  }

  @Test
  void listsSubjects() {
    assertEquals(0, trace());
    says("funding_cash_usd");
    says("nominal usd");
  }

  @Test
  void withoutTheTableItSaysWhy() throws IOException {
    Files.delete(folder.resolve("contributions.csv"));
    ResultPackage.write(folder, List.of(), Map.of());
    assertEquals(2, trace("--subject", "build_usd"));
    says("--contributions");
  }
}
