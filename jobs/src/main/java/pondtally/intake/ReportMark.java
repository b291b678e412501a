package pondtally.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import pondtally.check.UserError;

/** Folders that a report of ours wrote: read as records, their sheets would count a second time. */
final class ReportMark {

  private static final int BEGINNING = 200;

  private ReportMark() {}

  /**
   * @param name what the message calls the folder
   * @throws UserError where the folder is a report
   */
  static void refuse(Path folder, String name) {
    Path mark = folder.resolve("run.json");
    if (Files.isRegularFile(mark) && isOurs(mark)) {
      throw UserError.input(
          "%s holds a report that pondtally wrote (run.json), which would be read as records. Move it out of the program folder, and run again."
              .formatted(name));
    }
  }

  private static boolean isOurs(Path mark) {
    try (InputStream bytes = Files.newInputStream(mark)) {
      String beginning = new String(bytes.readNBytes(BEGINNING), StandardCharsets.UTF_8);
      return beginning.replaceAll("\\s", "").startsWith("{\"program\":\"pondtally\"");
    } catch (IOException e) {
      return false;
    }
  }
}
