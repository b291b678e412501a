package pondtally.cluster;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A Spark distribution made of the jars of the class path, without this project's own classes. */
final class SparkHome {

  private static final List<String> NOT_SPARK =
      List.of(
          "/poi",
          "/xmlbeans",
          "/curvesapi",
          "/SparseBitSet",
          "/commons-csv",
          "/hipparchus",
          "/commons-statistics",
          "/commons-numbers",
          "/snakeyaml-engine",
          "/junit",
          "/archunit");

  private final Path folder;

  private SparkHome(Path folder) {
    this.folder = folder;
  }

  static SparkHome in(Path folder) throws IOException {
    Path jars = Files.createDirectories(folder.resolve("jars"));
    Files.createFile(folder.resolve("RELEASE"));
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      Path jar = Path.of(entry);
      boolean isSpark = NOT_SPARK.stream().noneMatch(name -> entry.contains(name));
      if (isSpark && entry.endsWith(".jar")) {
        Files.createSymbolicLink(jars.resolve(jar.getFileName()), jar);
      }
    }
    return new SparkHome(folder);
  }

  /** Starts one of Spark's own programs; what it says goes into {@code log}. */
  Process start(Path log, String main, List<String> arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Xmx700m");
    for (String each :
        List.of(
            "sun.util.calendar",
            "java.nio",
            "java.lang.invoke",
            "java.util",
            "java.lang",
            "sun.nio.ch")) {
      command.add("--add-opens");
      command.add("java.base/" + each + "=ALL-UNNAMED");
    }
    command.addAll(List.of("-cp", folder.resolve("jars") + File.separator + "*", main));
    command.addAll(arguments);
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.redirectOutput(log.toFile());
    builder.environment().put("SPARK_HOME", folder.toString());
    builder.environment().put("SPARK_LOCAL_IP", "127.0.0.1");
    builder.environment().put("SPARK_SCALA_VERSION", "2.13");
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().keySet().removeIf(name -> name.equals("SPARK_CONF_DIR"));
    return builder.start();
  }

  /** Whether an executor has begun to work below a worker's folder. */
  static boolean isAtWork(Path work) throws IOException {
    if (!Files.isDirectory(work)) {
      return false;
    }
    try (Stream<Path> files = Files.walk(work)) {
      return files.anyMatch(file -> file.endsWith("stderr"));
    }
  }
}
