package pondtally.stage;

import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pondtally.analysis.Contribution;
import pondtally.analysis.ContributionGroups;
import pondtally.analysis.ContributionYears;
import pondtally.check.SheetReport;
import pondtally.table.CsvText;

/** Contributions as rows of their table, with the names of partner, file and sheet. */
final class ContributionLines implements Serializable {

  private static final long serialVersionUID = 1;

  private record Place(int file, int sheet) implements Serializable {}

  private final ContributionYears years;

  /** Partner, file and sheet as cells. */
  private final Map<Place, String> places = new HashMap<>();

  private transient ContributionGroups lastGroups;
  private transient String lastCells;

  private ContributionLines(ContributionYears years) {
    this.years = years;
  }

  static ContributionLines of(Inputs inputs, ContributionYears years) {
    ContributionLines lines = new ContributionLines(years);
    for (SheetReport report : inputs.reports()) {
      var file = inputs.files().get(report.file());
      lines.places.put(
          new Place(report.file(), report.sheet()),
          CsvText.cell(file.partner())
              + ','
              + CsvText.cell(file.path())
              + ','
              + CsvText.cell(report.sheetName()));
    }
    return lines;
  }

  /** Rows in the order given. */
  byte[] of(List<Contribution> rows) {
    StringBuilder text = new StringBuilder(rows.size() * 160);
    rows.forEach(row -> add(row, text));
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void add(Contribution row, StringBuilder text) {
    text.append(row.subject().code()).append(',');
    text.append(CsvText.cell(row.siteId())).append(',');
    text.append(CsvText.cell(row.deviceId())).append(',');
    text.append(CsvText.cell(row.amount())).append(',');
    text.append(row.subject().unit()).append(',');
    text.append(places.get(new Place(row.origin().file(), row.origin().sheet()))).append(',');
    text.append(row.origin().row()).append(',');
    text.append(CsvText.cell(years.of(row))).append(',');
    text.append(CsvText.cell(row.part())).append(',');
    text.append(cells(row.groups())).append("\r\n");
  }

  /** A device's contributions come one after another, and have the same groups. */
  private String cells(ContributionGroups groups) {
    if (!groups.equals(lastGroups)) {
      lastGroups = groups;
      lastCells =
          groups.cells().stream()
              .map(cell -> cell.isEmpty() ? "" : CsvText.cell(cell))
              .collect(Collectors.joining(","));
    }
    return lastCells;
  }
}
