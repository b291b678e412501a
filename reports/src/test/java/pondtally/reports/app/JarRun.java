package pondtally.reports.app;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The command as users start it, {@code java -jar}: with its second machine and private folder. */
final class JarRun {

  private static final String OPENS =
      "java.base/sun.util.calendar java.base/java.nio java.base/java.lang.invoke java.base/java.util java.base/java.lang java.base/sun.nio.ch";

  private JarRun() {}

  /** Starts the command; temporary files go below {@code temporary}, no archive is made. */
  static Process start(Path jar, Path temporary, Path out, Path err, String... arguments)
      throws IOException {
    return start(Map.of(), jar, temporary, out, err, arguments);
  }

  /** Starts the command with variables of the environment. */
  static Process start(
      Map<String, String> variables,
      Path jar,
      Path temporary,
      Path out,
      Path err,
      String... arguments)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Djava.io.tmpdir=" + temporary);
    command.add("-jar");
    command.add(jar.toString());
    command.addAll(List.of(arguments));
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
    builder.environment().put("PONDTALLY_CACHE", "off");
    builder.environment().putAll(variables);
    return builder.start();
  }

  /** A jar of this module's classes whose manifest names everything else. */
  static Path make(Path jar) throws Exception {
    Path classes = Path.of(Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream zip = new JarOutputStream(out, manifest());
        Stream<Path> files = Files.walk(classes)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        zip.putNextEntry(new JarEntry(classes.relativize(file).toString().replace('\\', '/')));
        Files.copy(file, zip);
      }
    }
    return jar;
  }

  private static Manifest manifest() {
    Manifest manifest = new Manifest();
    Attributes main = manifest.getMainAttributes();
    main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
    main.put(Attributes.Name.MAIN_CLASS, Main.class.getName());
    main.put(new Attributes.Name("Add-Opens"), OPENS);
    String[] path = System.getProperty("java.class.path").split(File.pathSeparator);
    main.put(
        Attributes.Name.CLASS_PATH,
        Arrays.stream(path)
            .map(entry -> Path.of(entry).toUri().toString())
            .collect(Collectors.joining(" ")));
    return manifest;
  }
}
