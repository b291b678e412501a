package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/** A small disk in memory. It takes root; where it cannot be had, the test says so and ends. */
final class Mount implements AutoCloseable {

  private final Path place;

  private Mount(Path place) {
    this.place = place;
  }

  static Mount of(Path place, long bytes) throws IOException, InterruptedException {
    Files.createDirectories(place);
    if (!run("mount", "-t", "tmpfs", "-o", "size=" + bytes, "tmpfs", place.toString())) {
      String why =
          "no small disk can be mounted here (it takes root): not shown what a full one does";
      System.out.println("Skipped: " + why);
      if ("required".equals(System.getProperty("pondtally.disks"))) {
        Assertions.fail(why);
      }
      Assumptions.abort(why);
    }
    return new Mount(place);
  }

  void makeReadOnly() throws IOException, InterruptedException {
    Assertions.assertTrue(run("mount", "-o", "remount,ro", place.toString()));
  }

  void resize(long bytes) throws IOException, InterruptedException {
    Assertions.assertTrue(run("mount", "-o", "remount,size=" + bytes, place.toString()));
  }

  private static boolean run(String... command) throws IOException, InterruptedException {
    try {
      return new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor()
          == 0;
    } catch (IOException absent) {
      return false;
    }
  }

  @Override
  public void close() throws IOException, InterruptedException {
    run("umount", place.toString());
  }
}
