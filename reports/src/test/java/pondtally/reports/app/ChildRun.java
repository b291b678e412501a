package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The command in a Java machine of its own, which can be killed. */
final class ChildRun {

  private ChildRun() {}

  /** Starts the command; what it prints goes to {@code log}. */
  static Process start(Path temporary, Path log, String... arguments) throws IOException {
    return start(temporary, log, System.getProperty("java.class.path"), arguments);
  }

  /** Starts the command with classes of the test's choice. */
  static Process start(Path temporary, Path log, String classPath, String[] arguments)
      throws IOException {
    return start(temporary, log, classPath, List.of(), Main.class, arguments);
  }

  /** Starts a class of the test's choice. */
  static Process start(
      Path temporary,
      Path log,
      String classPath,
      List<String> flags,
      Class<?> main,
      String[] arguments)
      throws IOException {
    Files.createDirectories(temporary);
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    for (String opened :
        List.of(
            "sun.util.calendar",
            "java.nio",
            "java.lang.invoke",
            "java.util",
            "java.lang",
            "sun.nio.ch")) {
      command.add("--add-opens=java.base/" + opened + "=ALL-UNNAMED");
    }
    command.add("-XX:TieredStopAtLevel=1");
    command.add("-Djava.io.tmpdir=" + temporary);
    command.addAll(flags);
    command.add("-cp");
    command.add(classPath);
    command.add(main.getName());
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()))
        .start();
  }
}
