package pondtally.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.FileUtil;
import org.apache.hadoop.fs.Path;
import org.apache.hadoop.fs.RawLocalFileSystem;
import pondtally.check.UserError;

/**
 * Tables on any Hadoop file system, where a folder cannot always be renamed at one stroke: the
 * marker {@code _complete} is written last, and what has none is no result.
 */
final class ClusterOutput {

  static final String MARKER = "_complete";
  private static final String TABLES = "tables";

  private final FileSystem files;
  private final Path folder;

  private ClusterOutput(FileSystem files, Path folder) {
    this.files = files;
    this.folder = folder;
  }

  /**
   * Prepares to write {@code folder}.
   *
   * @throws UserError with exit code 4 when it may not be replaced or cannot be written
   */
  static ClusterOutput prepare(String folder, boolean replace, Configuration settings) {
    Path path = new Path(folder);
    try {
      FileSystem files = FileSystem.newInstance(path.toUri(), withoutSums(settings));
      if (files.exists(path)) {
        refuse(files, path, replace);
      }
      return new ClusterOutput(files, path);
    } catch (IOException e) {
      throw notWritable(path, e);
    }
  }

  /** Where the files end up on a local disk, without Hadoop's hidden files of sums beside them. */
  private static Configuration withoutSums(Configuration settings) {
    Configuration own = new Configuration(settings);
    own.setClass("fs.file.impl", RawLocalFileSystem.class, FileSystem.class);
    return own;
  }

  private static void refuse(FileSystem files, Path path, boolean replace) throws IOException {
    boolean isComplete = files.exists(new Path(path, MARKER));
    if (isComplete && !replace) {
      throw UserError.output(
          "The folder %s holds an earlier result. Add --replace to overwrite it, or give a new name."
              .formatted(path));
    }
    for (FileStatus each : files.listStatus(path)) {
      if (!Set.of(MARKER, TABLES).contains(each.getPath().getName())) {
        throw UserError.output(
            "The folder %s holds %s, which was not written by pondtally. Give the name of a new folder."
                .formatted(path, each.getPath().getName()));
      }
    }
  }

  /** Puts the tables in their place, then the marker. */
  void write(java.nio.file.Path tables, String version) {
    Path target = new Path(folder, TABLES);
    try {
      files.delete(new Path(folder, MARKER), false);
      files.delete(target, true);
      files.mkdirs(folder);
      FileUtil.copy(tables.toFile(), files, target, false, files.getConf());
      try (OutputStream out = files.create(new Path(folder, MARKER), true)) {
        out.write(("pondtally " + version + "\n").getBytes(StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw notWritable(folder, e);
    }
  }

  private static UserError notWritable(Path path, IOException e) {
    return UserError.output("Cannot write %s: %s".formatted(path, e.getMessage()));
  }
}
