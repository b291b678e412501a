package pondtally.sample;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes the sample's page: what it is, who sends what, and every planted fault by kind. */
final class ReadmeFile {
  private static final String FAULT_HEADINGS =
      "| File | Sheet | Row | Column | Value | Outcome |\n|---|---|---|---|---|---|\n";

  private final SampleProgram program;
  private final List<Planted> faults;

  ReadmeFile(SampleProgram program) {
    this.program = program;
    this.faults = new FactFiles(program).faults();
  }

  String text() {
    return ReadmeText.INTRODUCTION
        + watersheds()
        + counts()
        + ReadmeText.NOT_FAULTS
        + account()
        + ReadmeText.FAULTS
        + summary()
        + faultSections();
  }

  private static String watersheds() {
    StringBuilder text = new StringBuilder("\n## Watersheds\n\n| Code | Name |\n|---|---|\n");
    for (SampleTruth.Watershed watershed : SampleTruth.WATERSHEDS) {
      text.append("| ")
          .append(watershed.code())
          .append(" | ")
          .append(watershed.name())
          .append(" |\n");
    }
    return text.append(ReadmeText.WATERSHED_NOTE).toString();
  }

  private String counts() {
    StringBuilder text =
        new StringBuilder("\n## Rows sent\n\n| Table | Rows | Partners |\n|---|---|---|\n");
    for (Table table : Table.values()) {
      List<Sheet> sheets =
          program.sheets().stream().filter(sheet -> sheet.table() == table).toList();
      if (table != Table.NONE) {
        long rows = sheets.stream().mapToLong(sheet -> RowAccount.of(sheet).rowsRead()).sum();
        long partners = sheets.stream().map(Sheet::partner).distinct().count();
        text.append("| " + table.code() + " | " + rows + " | " + partners + " |\n");
      }
    }
    return text.toString();
  }

  private String account() {
    Map<String, long[]> byPartner = new LinkedHashMap<>();
    for (Sheet sheet : program.sheets()) {
      if (sheet.table() != Table.NONE) {
        RowAccount account = RowAccount.of(sheet);
        long[] sums = byPartner.computeIfAbsent(account.partner(), partner -> new long[6]);
        long[] parts = {
          account.rowsRead(),
          account.used(),
          account.changed(),
          account.converted(),
          account.setAside(),
          account.duplicate()
        };
        for (int i = 0; i < sums.length; i++) {
          sums[i] += parts[i];
        }
      }
    }
    StringBuilder text = new StringBuilder(ReadmeText.ACCOUNT);
    byPartner.forEach((partner, sums) -> text.append(accountLine(partner, sums)));
    long[] total = new long[6];
    byPartner.values().forEach(sums -> addTo(total, sums));
    return text.append(accountLine("all", total)).toString();
  }

  private static void addTo(long[] total, long[] sums) {
    for (int i = 0; i < total.length; i++) {
      total[i] += sums[i];
    }
  }

  private static String accountLine(String partner, long[] sums) {
    StringBuilder text = new StringBuilder("| ").append(partner);
    for (long sum : sums) {
      text.append(" | ").append(sum);
    }
    return text.append(" |\n").toString();
  }

  private String summary() {
    StringBuilder text =
        new StringBuilder("\n| Kind | Planted | In CSV | In XLSX |\n|---|---|---|---|\n");
    for (FaultKind kind : FaultKind.values()) {
      List<Planted> own = of(kind);
      long workbook = own.stream().filter(fault -> fault.sheet().isWorkbook()).count();
      text.append("| `")
          .append(kind.code())
          .append("` ")
          .append(kind.title())
          .append(" | ")
          .append(own.size());
      text.append(" | ")
          .append(own.size() - workbook)
          .append(" | ")
          .append(workbook)
          .append(" |\n");
    }
    return text.toString();
  }

  private List<Planted> of(FaultKind kind) {
    return faults.stream().filter(fault -> fault.kind() == kind).toList();
  }

  private String faultSections() {
    StringBuilder text = new StringBuilder();
    for (FaultKind kind : FaultKind.values()) {
      text.append("\n### `").append(kind.code()).append("`: ").append(kind.title()).append("\n\n");
      text.append(kind.expected()).append("\n\n").append(FAULT_HEADINGS);
      lines(of(kind)).forEach(text::append);
    }
    return text.toString();
  }

  /** One line a fault; a long run in one column, and one heading in many sheets, are one line. */
  private static List<String> lines(List<Planted> faults) {
    List<String> lines = new ArrayList<>();
    for (List<Planted> alike : alike(faults).values()) {
      FaultKind kind = alike.get(0).kind();
      if (kind == FaultKind.UNIT_IN_HEADING) {
        lines.add(headingLine(alike));
      } else if (kind == FaultKind.DATE_FROM_TEXT) {
        lines.add(runLine(alike));
      } else {
        alike.forEach(fault -> lines.add(line(fault, fault.rowNumber(), value(fault))));
      }
    }
    return lines;
  }

  private static Map<String, List<Planted>> alike(List<Planted> faults) {
    return faults.stream()
        .collect(
            Collectors.groupingBy(
                fault ->
                    fault.sheet().partner() + "|" + fault.sheet().table() + "|" + fault.heading(),
                LinkedHashMap::new,
                Collectors.toList()));
  }

  private static String headingLine(List<Planted> sheets) {
    long cells = sheets.stream().mapToLong(fault -> Long.parseLong(fault.value())).sum();
    int last = sheets.size() - 1;
    String until = last == 0 ? "" : ", and so to " + sheets.get(last).sheet().file();
    return line(sheets.get(0), "", cells + " cells" + until);
  }

  private static String runLine(List<Planted> column) {
    Planted first = column.get(0);
    Planted last = column.get(column.size() - 1);
    String rows = first.rowNumber() + " to " + last.rowNumber();
    return line(first, rows, value(first) + " … " + value(last));
  }

  private static String value(Planted fault) {
    return fault.value().isEmpty() ? "" : "`" + fault.value() + "`";
  }

  private static String line(Planted fault, String rows, String value) {
    String twin = fault.twinPlace().isEmpty() ? "" : " (see " + fault.twinPlace() + ")";
    return "| "
        + String.join(
            " | ",
            fault.sheet().file(),
            fault.sheet().name(),
            rows,
            fault.heading(),
            value,
            fault.outcome().code() + twin)
        + " |\n";
  }
}
