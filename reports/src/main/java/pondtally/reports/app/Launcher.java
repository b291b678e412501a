package pondtally.reports.app;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Starts the work in a second Java machine with the compiler, collector and memory that suit the
 * size of the input: a manifest cannot set these. {@code PONDTALLY_JAVA_OPTS} is added last and
 * wins.
 */
final class Launcher {

  private static final String CHILD = "pondtally.child";
  private static final long SMALL_INPUT_BYTES = 8L << 20;

  private Launcher() {}

  /** Whether this is the second machine already, or there is no jar to start it from. */
  static boolean isHere() {
    return Boolean.getBoolean(CHILD) || jar() == null;
  }

  /** Runs the same command again in a machine of its own; returns its exit code. */
  static int relaunch(List<String> arguments, Path input) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(flags(bytesUnder(input)));
    String more = System.getenv("PONDTALLY_JAVA_OPTS");
    if (more != null && !more.isBlank()) {
      command.addAll(List.of(more.trim().split("\\s+")));
    }
    command.add("-D" + CHILD + "=true");
    command.add("-jar");
    command.add(jar().toString());
    command.addAll(arguments);
    try {
      Path scratch = Files.createTempDirectory("pondtally-");
      command.add(1, "-Djava.io.tmpdir=" + scratch);
      return run(command, scratch);
    } catch (IOException e) {
      System.err.println("pondtally: Java cannot be started again: " + e.getMessage());
      return Main.FAULT;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Main.FAULT;
    }
  }

  /**
   * Runs a command whose temporary files all lie in a private folder, which is removed however it
   * ends.
   */
  private static int run(List<String> command, Path scratch)
      throws IOException, InterruptedException {
    Process process = new ProcessBuilder(command).inheritIO().start();
    Thread stop =
        new Thread(
            () -> {
              process.destroy();
              process.onExit().join();
              Folders.deleteQuietly(scratch);
            });
    Runtime.getRuntime().addShutdownHook(stop);
    int code = process.waitFor();
    Runtime.getRuntime().removeShutdownHook(stop);
    Folders.deleteQuietly(scratch);
    return code;
  }

  private static List<String> flags(long inputBytes) {
    List<String> flags = new ArrayList<>();
    flags.add("-Djava.awt.headless=true");
    flags.add("-Xshare:auto");
    if (inputBytes < SMALL_INPUT_BYTES) {
      flags.add("-XX:TieredStopAtLevel=1");
      flags.add("-XX:+UseSerialGC");
      flags.add("-Xmx2g");
    } else {
      flags.add("-XX:+UseParallelGC");
    }
    return flags;
  }

  private static long bytesUnder(Path input) {
    try (Stream<Path> files = Files.walk(input)) {
      return files.mapToLong(file -> file.toFile().isFile() ? file.toFile().length() : 0).sum();
    } catch (IOException e) {
      return 0;
    }
  }

  /** The jar this class was loaded from; null when it runs from a folder of classes. */
  private static Path jar() {
    try {
      Path code =
          Path.of(Launcher.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return Files.isRegularFile(code) ? code : null;
    } catch (URISyntaxException e) {
      return null;
    }
  }
}
