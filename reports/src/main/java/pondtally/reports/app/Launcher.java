package pondtally.reports.app;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pondtally.check.UserError;
import pondtally.reports.text.Messages;

/**
 * Starts the work in a second Java machine with the compiler, collector and memory that suit the
 * size of the input, and with the archive of classes: a manifest cannot set these. {@code
 * PONDTALLY_JAVA_OPTS} is added last and wins.
 */
final class Launcher {

  private static final String CHILD = "pondtally.child";

  /** How Java ends when memory runs out; the child's own 3 goes by another number. */
  private static final int OUT_OF_MEMORY = 3;

  private static final int CHILD_INPUT_UNUSABLE = 103;
  private static final String CLASSES = "classes.list";

  /**
   * Where nothing is said of the language, as in jobs that run at night, Java knows no letters in
   * the names of files but those of English.
   */
  private static final String PLAIN_LETTERS = "ANSI_X3.4-1968";

  private final List<String> arguments;
  private final Machine machine;
  private final Path jar;
  private final Optional<ClassArchive> archive;
  private final long inputBytes;

  private Launcher(
      List<String> arguments, Path input, Machine machine, ClassArchive.Extent extent) {
    this.arguments = arguments;
    this.machine = machine;
    jar = jar();
    archive = archive(jar, extent);
    inputBytes = InputSize.bytesUnder(input);
  }

  /** Whether this is the second machine already, or there is no jar to start it from. */
  static boolean isHere() {
    return Boolean.getBoolean(CHILD) || jar() == null;
  }

  /** The exit code that the second machine hands to the first. */
  static int ofChild(int code) {
    return Boolean.getBoolean(CHILD) && code == Main.INPUT_UNUSABLE ? CHILD_INPUT_UNUSABLE : code;
  }

  /** Runs the same command again in a machine of its own; returns its exit code. */
  static int relaunch(
      List<String> arguments, Path input, Machine machine, ClassArchive.Extent extent) {
    machine.require();
    return new Launcher(arguments, input, machine, extent).start();
  }

  private int start() {
    long most = Heap.most(Heap.machineBytes());
    long heap = Heap.forInput(inputBytes, Heap.machineBytes());
    Long stated = machine.memoryBytes();
    try {
      int code = run(stated == null ? heap : stated);
      if (code == OUT_OF_MEMORY && stated == null && heap < most) {
        System.err.printf(
            "pondtally: %s of memory were too little; once more with %s.%n", mib(heap), mib(most));
        heap = most;
        code = run(most);
      }
      return told(code, stated == null ? heap : stated);
    } catch (IOException e) {
      System.err.println("pondtally: Java cannot be started again: " + e.getMessage());
      return Main.FAULT;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Main.FAULT;
    }
  }

  private static int told(int code, long heap) {
    if (code == OUT_OF_MEMORY) {
      throw new UserError(
          Main.OUT_OF_MEMORY,
          "%s of memory are too little for this input, and nothing was written. Give more with --memory, for example --memory %s, or use a machine that has more."
              .formatted(mib(heap), Math.max(2, heap / (1L << 29)) + "g"));
    }
    return code == CHILD_INPUT_UNUSABLE ? Main.INPUT_UNUSABLE : code;
  }

  private static String mib(long bytes) {
    return (bytes >> 20) + " MiB";
  }

  private int run(long heapBytes) throws IOException, InterruptedException {
    Path scratch = machine.scratch();
    boolean isArchiveWanted = archive.filter(ClassArchive::isWanted).isPresent();
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Djava.io.tmpdir=" + scratch);
    command.addAll(JavaFlags.of(inputBytes, heapBytes));
    archive.ifPresent(classes -> command.addAll(classes.useFlags()));
    if (isArchiveWanted) {
      command.add("-XX:DumpLoadedClassList=" + scratch.resolve(CLASSES));
    }
    command.addAll(JavaFlags.ofUser(System.getenv("PONDTALLY_JAVA_OPTS")));
    String language = System.getProperty(Messages.LANGUAGE);
    if (language != null) {
      command.add("-D" + Messages.LANGUAGE + "=" + language);
    }
    command.add("-D" + CHILD + "=true");
    command.addAll(FirstMachine.flags(scratch));
    command.add("-jar");
    command.add(jar.toString());
    command.addAll(arguments);
    return run(command, scratch, isArchiveWanted);
  }

  /**
   * Runs a command whose temporary files all lie in a private folder, which is removed however it
   * ends.
   */
  private int run(List<String> command, Path scratch, boolean isArchiveWanted)
      throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
    if (System.getProperty("sun.jnu.encoding", "").equals(PLAIN_LETTERS)) {
      builder.environment().put("LC_ALL", "C.UTF-8");
    }
    Process process = builder.start();
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
    if (isArchiveWanted && code <= Main.ROWS_SET_ASIDE) {
      makeArchive(scratch.resolve(CLASSES));
    }
    Folders.deleteQuietly(scratch);
    return code;
  }

  /** The next run is slower without it, and that is all. */
  private void makeArchive(Path classes) {
    try {
      archive.orElseThrow().makeInBackground(classes);
    } catch (IOException e) {
      return;
    }
  }

  private static Optional<ClassArchive> archive(Path jar, ClassArchive.Extent extent) {
    Optional<Path> folder = CacheFolder.open(System.getenv(), System.getProperty("user.home"));
    try {
      return folder.isEmpty()
          ? Optional.empty()
          : Optional.of(ClassArchive.of(folder.get(), jar, extent));
    } catch (IOException e) {
      return Optional.empty();
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
