package pondtally.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pondtally.check.DataIssue;
import pondtally.check.Finding;
import pondtally.check.SheetReport;
import pondtally.check.UserError;
import pondtally.intake.InputFile;
import pondtally.intake.IntakeRule;

/**
 * Files of which something could not be read at all: broken, cut off or protected workbooks, text
 * files that hold no text. A report is not made without them, since nobody knows what they hold;
 * {@code check} goes on and tells of them last.
 */
public final class UnreadableFiles {

  private static final int NAMED = 3;
  private static final String RULE = IntakeRule.FILE_UNREADABLE.code();

  private UnreadableFiles() {}

  /**
   * @throws UserError where a file could not be read
   */
  static void refuse(List<InputFile> files, List<SheetReport> reports) {
    List<String> reasons = new ArrayList<>();
    for (SheetReport report : reports) {
      for (Finding finding : report.findings()) {
        if (finding.rule().equals(RULE)) {
          reasons.add(
              reason(files.get(report.file()).path(), report.sheetName(), finding.message()));
        }
      }
    }
    error(reasons).ifPresent(UnreadableFiles::raise);
  }

  /** The error of a folder with such files; empty where there are none. */
  public static Optional<UserError> among(List<DataIssue> issues) {
    return error(
        issues.stream()
            .filter(issue -> issue.rule().equals(RULE))
            .map(issue -> reason(issue.file(), issue.sheet(), issue.message()))
            .toList());
  }

  private static void raise(UserError error) {
    throw error;
  }

  private static String reason(String file, String sheet, String message) {
    return file + (sheet.isEmpty() ? "" : ", sheet " + sheet) + ": " + message;
  }

  private static Optional<UserError> error(List<String> reasons) {
    if (reasons.isEmpty()) {
      return Optional.empty();
    }
    int more = reasons.size() - NAMED;
    String named = String.join(" ", reasons.subList(0, Math.min(NAMED, reasons.size())));
    return Optional.of(
        UserError.input(
            "%s%s A report without what is missing would be wrong, so none is made. Mend the file, or move it out of the program folder, and run again."
                .formatted(named, more > 0 ? " %s more like this.".formatted(more) : "")));
  }
}
