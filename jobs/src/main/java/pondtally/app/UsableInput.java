package pondtally.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pondtally.check.Finding;
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
            .filter(report -> "installs".equals(report.table()))
            .anyMatch(report -> report.counts().used() + report.counts().changed() > 0);
    if (any) {
      return;
    }
    List<String> reasons = new ArrayList<>();
    for (SheetReport report : reports) {
      if (report.table() == null) {
        for (Finding finding : report.findings()) {
          reasons.add(files.get(report.file()).path() + ": " + finding.message());
        }
      }
    }
    String named = String.join(" ", reasons.subList(0, Math.min(NAMED, reasons.size())));
    throw UserError.input(
        "No install record could be read in %s (files looked at: %s). Expected a file or sheet named installs with device_id, site_id and installed_on. %s"
            .formatted(folder, files.size(), named)
            .strip());
  }
}
