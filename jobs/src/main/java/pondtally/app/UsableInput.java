package pondtally.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pondtally.check.Finding;
import pondtally.check.Severity;
import pondtally.check.SheetReport;
import pondtally.check.UserError;
import pondtally.intake.InputFile;

/** Whether there is anything to report on: at least one install record that could be read. */
final class UsableInput {

  private static final int NAMED = 3;

  private UsableInput() {}

  /**
   * @throws UserError where no file holds an install record that could be read; it names what was
   *     wrong with files that were not read
   */
  static void require(Path folder, List<InputFile> files, List<SheetReport> reports) {
    boolean any =
        reports.stream()
            .filter(UsableInput::isInstalls)
            .anyMatch(report -> report.counts().used() + report.counts().changed() > 0);
    if (any) {
      return;
    }
    List<String> reasons = new ArrayList<>();
    reports.stream().filter(UsableInput::isInstalls).forEach(r -> add(reasons, files, r));
    reports.stream().filter(r -> r.table() == null).forEach(r -> add(reasons, files, r));
    String named = String.join(" ", reasons.subList(0, Math.min(NAMED, reasons.size())));
    int more = reasons.size() - NAMED;
    throw UserError.input(
        "No install record could be read in %s (files looked at: %s). Expected a file or sheet named installs with device_id, site_id and installed_on. %s%s"
            .formatted(
                folder, files.size(), named, more > 0 ? " %s more like this.".formatted(more) : "")
            .strip());
  }

  private static boolean isInstalls(SheetReport report) {
    return "installs".equals(report.table());
  }

  /** Why nothing of a sheet counts: what is said of the whole, or of its rows. */
  private static void add(List<String> reasons, List<InputFile> files, SheetReport report) {
    String file = files.get(report.file()).path();
    String sheet = report.sheetName().isEmpty() ? "" : ", sheet " + report.sheetName();
    for (Finding finding : report.findings()) {
      int row = finding.origin().row();
      boolean isWhy = report.table() == null || finding.severity() == Severity.SET_ASIDE;
      if (isWhy) {
        reasons.add(file + sheet + (row == 0 ? "" : ", row " + row) + ": " + finding.message());
      }
    }
  }
}
