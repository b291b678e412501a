package pondtally.reports.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.SortedMap;
import pondtally.check.UserError;
import pondtally.intake.ColumnsSuggestion;
import pondtally.intake.IntakeSettings;

/** Shows or writes a first {@code columns.yaml} for each partner. */
final class SuggestedColumns {

  private SuggestedColumns() {}

  /** Suggestions for each partner's folder of a program. */
  static SortedMap<String, String> of(Path program) {
    return ColumnsSuggestion.of(program, IntakeSettings.on(LocalDate.now()));
  }

  /** Prints all of them, each below the name of its file. */
  static void print(SortedMap<String, String> texts, PrintWriter out) {
    texts.forEach((folder, text) -> out.printf("# ==> %s/columns.yaml%n%s%n", folder, text));
    out.flush();
  }

  /**
   * Writes each into a folder of the partner's name below {@code target}, which may be the program
   * folder itself.
   *
   * @throws UserError if one of the files is there already and is not to be replaced; then none is
   *     written
   */
  static void write(
      SortedMap<String, String> texts, Path target, boolean isReplaced, PrintWriter out) {
    for (String folder : texts.keySet()) {
      Path file = target.resolve(folder).resolve("columns.yaml");
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !isReplaced) {
        throw UserError.output(
            "%s is there already, and nothing was written. Choose another folder, or add --replace."
                .formatted(file));
      }
    }
    texts.forEach((folder, text) -> write(target.resolve(folder), text, out));
    out.flush();
  }

  private static void write(Path folder, String text, PrintWriter out) {
    Path file = folder.resolve("columns.yaml");
    try {
      Files.createDirectories(folder);
      if (Files.isSymbolicLink(file)) {
        throw UserError.output("%s is a link, which is not written through.".formatted(file));
      }
      Files.writeString(file, text);
    } catch (IOException e) {
      throw UserError.output("%s cannot be written: %s".formatted(file, e.getMessage()));
    }
    out.println("Written: " + file);
  }
}
