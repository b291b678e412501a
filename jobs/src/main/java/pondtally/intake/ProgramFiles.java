package pondtally.intake;

import java.nio.file.Path;
import java.util.List;

/**
 * What lies in a program folder.
 *
 * @param folder the program folder
 * @param files all that may hold records, in the order of their paths
 * @param statements paths below the folder of the files that say how records are read: {@code
 *     program.yaml}, {@code aliases.csv} and each {@code columns.yaml}, in order
 * @param aliases rows of {@code aliases.csv}
 */
public record ProgramFiles(
    Path folder, List<InputFile> files, List<String> statements, List<Alias> aliases) {

  /** The same with other files. */
  public ProgramFiles with(List<InputFile> others) {
    return new ProgramFiles(folder, others, statements, aliases);
  }
}
