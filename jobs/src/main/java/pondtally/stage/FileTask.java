package pondtally.stage;

import java.io.IOException;
import pondtally.check.FileFault;
import pondtally.check.UserError;
import pondtally.intake.InputFile;
import pondtally.intake.PartnerFileReader;

/**
 * Work of a task on one partner's file: whatever goes wrong names the file and whose fault it is.
 */
final class FileTask {

  /** What is done with the file. */
  interface Work<T> {
    T run(InputFile file) throws IOException;
  }

  private FileTask() {}

  /**
   * Does the work.
   *
   * @throws UserError with exit code 3 where the file cannot be read
   * @throws FileFault for everything else
   */
  static <T> T run(InputFile file, Work<T> work) {
    try (LocalFile local = LocalFile.of(file)) {
      return work.run(local.file());
    } catch (UserError e) {
      throw e;
    } catch (IOException e) {
      throw UserError.input(
          "%s could not be read to its end: %s. Leave the files as they are while a run is at work, then run again."
              .formatted(file.path(), PartnerFileReader.reason(e)));
    } catch (RuntimeException | StackOverflowError e) {
      throw new FileFault(file.path(), e);
    }
  }
}
