package pondtally.stage;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileSystem;
import org.apache.spark.SparkEnv;
import pondtally.intake.InputFile;
import scala.Tuple2;

/**
 * A partner's file where a task can open it: one that lies on another file system is copied into a
 * private temporary file, which goes when the task is done with it.
 */
public final class LocalFile implements AutoCloseable {

  private static final String SETTINGS = "spark.hadoop.";

  private final InputFile file;
  private final Path copy;

  private LocalFile(InputFile file, Path copy) {
    this.file = file;
    this.copy = copy;
  }

  static LocalFile of(InputFile file) throws IOException {
    if (!file.isElsewhere()) {
      return new LocalFile(file, null);
    }
    Path copy = Files.createTempFile("pondtally-", ".copy");
    URI from = URI.create(file.location());
    try (InputStream in =
        FileSystem.get(from, settings()).open(new org.apache.hadoop.fs.Path(from))) {
      Files.copy(in, copy, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      Files.delete(copy);
      throw e;
    }
    return new LocalFile(file.at(copy.toString()), copy);
  }

  /** Length of a file, wherever it lies. */
  static long bytes(InputFile file) throws IOException {
    if (!file.isElsewhere()) {
      return new File(file.location()).length();
    }
    URI from = URI.create(file.location());
    return FileSystem.get(from, settings())
        .getFileStatus(new org.apache.hadoop.fs.Path(from))
        .getLen();
  }

  /** What the run says about file systems, the same on every machine of a cluster. */
  public static Configuration settings() {
    Configuration settings = new Configuration();
    for (Tuple2<String, String> each : SparkEnv.get().conf().getAllWithPrefix(SETTINGS)) {
      settings.set(each._1, each._2);
    }
    return settings;
  }

  InputFile file() {
    return file;
  }

  @Override
  public void close() throws IOException {
    if (copy != null) {
      Files.deleteIfExists(copy);
    }
  }
}
