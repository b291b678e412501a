package pondtally.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.util.Utils$;
import pondtally.check.UserError;

/**
 * A Spark context on this machine: quiet, without its web page, bound to loopback, with a private
 * folder for what it spills. Closing it removes the folder.
 */
final class Session implements AutoCloseable {

  private final JavaSparkContext spark;
  private final Path scratch;

  private Session(JavaSparkContext spark, Path scratch) {
    this.spark = spark;
    this.scratch = scratch;
  }

  static Session local(int cores) {
    StoppedThreads.endQuietly();
    try {
      Path scratch = Scratch.make();
      SparkConf conf =
          new SparkConf(false)
              .setAppName("pondtally")
              .setMaster("local[" + cores + "]")
              .set("spark.ui.enabled", "false")
              .set("spark.driver.host", "127.0.0.1")
              .set("spark.driver.bindAddress", "127.0.0.1")
              .set("spark.local.dir", scratch.toString())
              .set("spark.ui.showConsoleProgress", "false")
              .set("spark.eventLog.enabled", "false")
              .set("spark.shuffle.compress", "true");
      return new Session(new JavaSparkContext(conf), scratch);
    } catch (IOException e) {
      throw new UncheckedIOException("no temporary folder can be made", e);
    }
  }

  /** The session that {@code spark-submit} describes. */
  static Session submitted() {
    SparkConf conf = new SparkConf(true).setAppName("pondtally");
    if (!conf.contains("spark.master")) {
      throw UserError.usage("Start this with spark-submit. " + ClusterArguments.USAGE);
    }
    try {
      Path scratch = Scratch.make();
      return new Session(new JavaSparkContext(conf), scratch);
    } catch (IOException e) {
      throw new UncheckedIOException("no temporary folder can be made", e);
    }
  }

  /** A private folder of the driver, removed at the end. */
  Path scratch() {
    return scratch;
  }

  JavaSparkContext spark() {
    return spark;
  }

  /**
   * Ends Spark. Tasks that are still at work when another one has failed find its services gone,
   * and what ends their threads then says nothing to a user.
   */
  private void stop() {
    try (StoppedThreads.Quiet quiet = StoppedThreads.quiet()) {
      spark.cancelAllJobs();
      spark.close();
      // Spark keeps the place of its temporary files for the next session of this Java machine.
      Utils$.MODULE$.clearLocalRootDirs();
    }
  }

  @Override
  public void close() {
    stop();
    try {
      Scratch.delete(scratch);
    } catch (IOException e) {
      throw new UncheckedIOException("the temporary folder " + scratch + " cannot be removed", e);
    }
  }
}
