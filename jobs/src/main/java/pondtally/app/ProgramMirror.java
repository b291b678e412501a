package pondtally.app;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.LocatedFileStatus;
import org.apache.hadoop.fs.RemoteIterator;
import pondtally.check.UserError;
import pondtally.intake.InputFile;

/**
 * A program folder on any Hadoop file system as a folder of this machine: settings and workbooks,
 * which the driver looks into, are copied; of lists of rows there is the name, and tasks read them
 * where they lie. A folder of this machine is taken as it is.
 */
final class ProgramMirror {

  private static final String LOCAL = "file";

  private final Path folder;
  private final Map<String, String> elsewhere;

  private final String name;

  private ProgramMirror(Path folder, Map<String, String> elsewhere, String name) {
    this.folder = folder;
    this.elsewhere = elsewhere;
    this.name = name;
  }

  /**
   * Opens a folder.
   *
   * @param scratch folder for the mirror
   * @throws UserError with exit code 3 if there is no such folder
   */
  static ProgramMirror open(String folder, Configuration settings, Path scratch) {
    org.apache.hadoop.fs.Path root = new org.apache.hadoop.fs.Path(folder);
    try {
      FileSystem files = root.getFileSystem(settings);
      URI uri = files.makeQualified(root).toUri();
      if (LOCAL.equals(uri.getScheme())) {
        return new ProgramMirror(Path.of(uri.getPath()), Map.of(), uri.getPath());
      }
      return mirrored(files, files.makeQualified(root), scratch);
    } catch (FileNotFoundException e) {
      throw UserError.input(
          "There is no folder %s. Expected the folder that holds the partners' files."
              .formatted(folder));
    } catch (IOException e) {
      throw UserError.input("%s cannot be read: %s".formatted(folder, e.getMessage()));
    }
  }

  private static ProgramMirror mirrored(
      FileSystem files, org.apache.hadoop.fs.Path root, Path scratch) throws IOException {
    Path folder = Files.createDirectory(scratch.resolve("program"));
    Map<String, String> elsewhere = new HashMap<>();
    RemoteIterator<LocatedFileStatus> all = files.listFiles(root, true);
    while (all.hasNext()) {
      org.apache.hadoop.fs.Path file = all.next().getPath();
      String below = root.toUri().relativize(file.toUri()).getPath();
      below = below.startsWith("/") ? below.substring(root.toUri().getPath().length() + 1) : below;
      Path here = folder.resolve(below);
      Files.createDirectories(here.getParent());
      if (isLookedInto(below)) {
        try (var in = files.open(file)) {
          Files.copy(in, here);
        }
      } else {
        Files.createFile(here);
      }
      elsewhere.put(below, file.toUri().toString());
    }
    return new ProgramMirror(folder, elsewhere, root.toString());
  }

  /** Whether the driver reads it: settings, names that mean the same, prices, corrected lists. */
  private static boolean isLookedInto(String path) {
    String lower = path.toLowerCase(Locale.ROOT);
    return lower.endsWith(".yaml")
        || lower.endsWith(".yml")
        || lower.endsWith(".xlsx")
        || lower.equals("aliases.csv")
        || lower.equals("prices.csv");
  }

  /** The folder on this machine. */
  Path folder() {
    return folder;
  }

  /** The same with files named as the coordinator knows them, not as they lie in the mirror. */
  UserError named(UserError error) {
    return new UserError(error.exitCode(), error.getMessage().replace(folder.toString(), name));
  }

  /** The same file as tasks find it. */
  InputFile forTasks(InputFile file) {
    String location = elsewhere.get(file.path());
    return location == null ? file : file.at(location);
  }
}
