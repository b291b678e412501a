package pondtally.reports.app;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import pondtally.reports.fault.WriteFaults;

/**
 * The command again and again in one machine over the failing file system, each time with another
 * write call failing; run in a machine of its own. Every run must end with exit code 4 and the old
 * report as it was, or with 0 and a new one that is whole.
 */
final class WriteFaultLoop {

  private final Path outputs;
  private final Path out;
  private final boolean replaces;
  private final String[] command;
  private int tried;
  private int wrong;
  private int stillDone;

  private WriteFaultLoop(Path program, Path outputs, boolean replaces) {
    this.outputs = outputs;
    this.out = outputs.resolve("out");
    this.replaces = replaces;
    this.command =
        new String[] {"report", program.toString(), "--out", out.toString(), "--replace"};
  }

  /**
   * Arguments: program folder, folder for outputs, the first call to fail, the step to the next,
   * kind of failure, whether there is an earlier report.
   */
  public static void main(String[] arguments) throws IOException {
    System.setProperty("java.awt.headless", "true");
    Path outputs = Files.createDirectories(Path.of(arguments[1]).toAbsolutePath());
    WriteFaultLoop loop =
        new WriteFaultLoop(
            SmallProgram.write(Path.of(arguments[0])), outputs, Boolean.parseBoolean(arguments[5]));
    int code =
        loop.all(
            Integer.parseInt(arguments[2]),
            Integer.parseInt(arguments[3]),
            WriteFaults.Kind.valueOf(arguments[4]));
    // Spark leaves threads that would keep the machine.
    System.exit(code);
  }

  private int all(int first, int step, WriteFaults.Kind kind) throws IOException {
    WriteFaults.arm(outputs, kind, 0);
    String said = run();
    if (!said.startsWith("0 ")) {
      System.out.println("without a fault: " + said);
      return 1;
    }
    if (replaces) {
      WriteFaults.arm(outputs, kind, 0);
      run();
    }
    long calls = WriteFaults.calls();
    for (long call = first; call <= calls; call += step) {
      one(kind, call);
    }
    WriteFaults.disarm();
    requireClean();
    System.out.printf(
        "%s, %s: %s of %s write calls failed in turn, %s runs ended well all the same, %s wrong%n",
        kind, replaces ? "over an earlier report" : "first report", tried, calls, stillDone, wrong);
    return wrong == 0 ? 0 : 1;
  }

  private void one(WriteFaults.Kind kind, long call) throws IOException {
    if (!replaces) {
      Folders.delete(out);
    }
    SortedMap<String, String> before = replaces ? WholeReport.sums(out) : null;
    WriteFaults.arm(outputs, kind, call);
    String said = run();
    String failed = WriteFaults.failed();
    WriteFaults.disarm();
    if (failed == null) {
      return;
    }
    tried++;
    String problem = said.startsWith("0 ") ? newIsWrong() : oldIsWrong(said, before);
    stillDone += said.startsWith("0 ") ? 1 : 0;
    if (problem != null) {
      wrong++;
      System.out.printf("call %s (%s): %s%n    said: %s%n", call, failed, problem, said);
    }
    if (replaces && Files.notExists(out)) {
      // As the next run does.
      Files.move(outputs.resolve("out.previous"), out);
    }
  }

  private String newIsWrong() {
    try {
      WholeReport.require(out);
      return null;
    } catch (IOException | RuntimeException e) {
      return "exit code 0, and the new report is not whole: " + e;
    }
  }

  private String oldIsWrong(String said, SortedMap<String, String> before) throws IOException {
    if (!said.startsWith("4 ") || said.lines().count() != 1 || !said.contains(out.toString())) {
      return "not one sentence with exit code 4 that names the output";
    }
    if (before == null) {
      return Files.exists(out) ? "something is there" : null;
    }
    Path old = Files.exists(out) ? out : outputs.resolve("out.previous");
    return before.equals(WholeReport.sums(old)) ? null : "the old report is not as it was";
  }

  /** The next run clears what the failed ones left. */
  private void requireClean() {
    String said = run();
    List<String> names = WholeReport.names(outputs);
    if (!said.startsWith("0 ") || !names.equals(List.of("out"))) {
      wrong++;
      System.out.printf("after all: %s %s%n", said, names);
    }
  }

  /** The exit code, and what was said on standard error. */
  private String run() {
    PrintStream err = System.err;
    PrintStream print = System.out;
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    try (PrintStream into = new PrintStream(said, true, StandardCharsets.UTF_8);
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream())) {
      System.setErr(into);
      System.setOut(nowhere);
      int code = Main.run(command);
      return code + " " + said.toString(StandardCharsets.UTF_8).strip();
    } finally {
      System.setErr(err);
      System.setOut(print);
    }
  }
}
