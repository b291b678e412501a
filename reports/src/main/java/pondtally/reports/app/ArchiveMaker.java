package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

/**
 * A process of its own that makes a class-data archive from the names of classes. It writes beside
 * and renames, lets another one at work be, and removes archives of earlier versions.
 */
final class ArchiveMaker {

  private static final Duration LONGEST = Duration.ofMinutes(10);

  private ArchiveMaker() {}

  /** Arguments: java, jar, list of classes, archive to write. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path list = Path.of(arguments[2]);
    try {
      make(arguments[0], arguments[1], list, Path.of(arguments[3]));
    } finally {
      Files.deleteIfExists(list);
    }
  }

  /** Makes the archive unless somebody is making it, or a larger one is there. */
  static void make(String java, String jar, Path list, Path archive)
      throws IOException, InterruptedException {
    Path mark = archive.resolveSibling(archive.getFileName() + ".making");
    if (Files.exists(ClassArchive.whole(archive)) || !take(mark)) {
      return;
    }
    Path beside = archive.resolveSibling(archive.getFileName() + ".writing");
    try {
      if (dump(java, jar, list, beside) == 0 && Files.isRegularFile(beside)) {
        Files.move(beside, archive, StandardCopyOption.REPLACE_EXISTING);
        removeOthers(archive);
      }
    } finally {
      Files.deleteIfExists(beside);
      Files.deleteIfExists(mark);
    }
  }

  /** A mark that was left behind holds nobody up for long. */
  private static boolean take(Path mark) throws IOException {
    try {
      FileTime oldest = FileTime.from(Instant.now().minus(LONGEST));
      if (Files.exists(mark) && Files.getLastModifiedTime(mark).compareTo(oldest) < 0) {
        Files.deleteIfExists(mark);
      }
      Files.createFile(mark);
      return true;
    } catch (FileAlreadyExistsException e) {
      return false;
    }
  }

  private static int dump(String java, String jar, Path list, Path beside)
      throws IOException, InterruptedException {
    return new ProcessBuilder(
            java,
            "-Xshare:dump",
            "-Xmx512m",
            "-Xlog:disable",
            "-XX:SharedClassListFile=" + list,
            "-XX:SharedArchiveFile=" + beside,
            "-cp",
            jar)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start()
        .waitFor();
  }

  /** One that a run still uses stays until the next time where the system does not let it go. */
  private static void removeOthers(Path archive) throws IOException {
    List<Path> others;
    try (Stream<Path> files = Files.list(archive.getParent())) {
      others =
          files
              .filter(file -> file.toString().endsWith(ClassArchive.ENDING))
              .filter(file -> !file.equals(archive) && !file.equals(ClassArchive.whole(archive)))
              .toList();
    }
    for (Path other : others) {
      try {
        Files.deleteIfExists(other);
      } catch (IOException e) {
        continue;
      }
    }
  }
}
