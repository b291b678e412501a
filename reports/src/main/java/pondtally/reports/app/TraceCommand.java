package pondtally.reports.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pondtally.app.LongTables;
import pondtally.check.NearestIds;
import pondtally.check.UserError;
import pondtally.reports.table.LongTable;

/** {@code pondtally trace}: the rows of the partners' files that one figure was added up from. */
@Command(
    name = "trace",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionText.class,
    sortOptions = false,
    header = {"Prints the rows behind one total, with their sum.", ""},
    footer = {
      "",
      "Examples:",
      "  pondtally trace report-2025/tables --subject upkeep_usd --year 2025",
      "  pondtally trace report-2025/tables --subject failures --group \"dual 12 in\"",
      "  pondtally trace report-2025/tables --subject build_usd --group crew=unknown",
      "",
      "Without --year: all years, or what stands at the end of the period.",
      "Leave out --subject for a list of subjects."
    })
final class TraceCommand implements Callable<Integer> {

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Parameters(paramLabel = "TABLES", description = "The tables/ folder of a run.")
  private Path tables;

  @Option(names = "--subject", paramLabel = "S", description = "The figure, such as build_usd.")
  private String subject;

  @Option(
      names = "--group",
      paramLabel = "G",
      description =
          "Only what counts in this group: its value, or grouping=value where a value is in several groupings.")
  private String group;

  @Option(names = "--year", paramLabel = "YEAR", description = "Only what counts in this year.")
  private String year;

  @Override
  public Integer call() {
    LongTable rows =
        LongTable.open(tables, "contributions")
            .orElseThrow(
                () ->
                    UserError.input(
                        "%s holds no contributions.csv. A run writes it for up to %,d devices; for more, run `pondtally report` with --contributions."
                            .formatted(tables, LongTables.MOST_DEVICES)));
    TraceSubjects known = TraceSubjects.of(rows);
    PrintWriter out = spec.commandLine().getOut();
    if (subject == null) {
      out.println("Subjects:");
      known.units().forEach((name, unit) -> out.printf("  %-28s %s%n", name, unit));
    } else {
      require("--subject", subject, known.units().keySet().stream().toList(), "subject");
      trace(rows, known, out);
    }
    out.flush();
    return Main.DONE;
  }

  private void trace(LongTable rows, TraceSubjects known, PrintWriter out) {
    TraceFilter filter = TraceFilter.of(rows, subject, group, year);
    TraceLines lines = new TraceLines(out, known.units().get(subject));
    rows.forEach(
        row -> {
          if (filter.takes(row)) {
            lines.print(row);
          }
        });
    lines.total(subject + filter.words());
  }

  /** Names the nearest right value for a mistyped one. */
  static void require(String option, String value, List<String> known, String what) {
    if (known.contains(value)) {
      return;
    }
    String near = NearestIds.of(known).suggestions(List.of(value)).get(value);
    throw UserError.usage(
        "%s %s: no such %s. %s"
            .formatted(
                option,
                value,
                what,
                near != null
                    ? "Did you mean " + near + "?"
                    : "There are: " + String.join(", ", known) + "."));
  }

  /** Units by subject, as far as the table has any. */
  record TraceSubjects(Map<String, String> units) {
    static TraceSubjects of(LongTable rows) {
      Map<String, String> units = new java.util.TreeMap<>();
      rows.forEach(row -> units.putIfAbsent(row.text("subject"), row.text("unit")));
      return new TraceSubjects(units);
    }
  }
}
