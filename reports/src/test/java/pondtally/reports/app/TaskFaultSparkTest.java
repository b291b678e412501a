package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Faults inside a task of Spark: one message that names the file, and the exit code of him whose
 * fault it is. A class that reads dates is replaced by one that breaks, or takes the file away, at
 * a date of its own.
 */
@Tag("reliability")
class TaskFaultSparkTest {

  private static final String PLANTED =
      """
      package pondtally.intake;

      final class IsoDay {
        static final int NONE = Integer.MIN_VALUE;

        static int parse(String text) {
          if (text.equals("2023-05-07")) {
            %s
          }
          try {
            return (int) java.time.LocalDate.parse(text).toEpochDay();
          } catch (java.time.DateTimeException e) {
            return NONE;
          }
        }

        static int of(int year, int month, int day) {
          return (int) java.time.LocalDate.of(year, month, day).toEpochDay();
        }
      }
      """;

  @TempDir Path folder;

  private Path visits() {
    return folder.resolve("program/north/visits.csv");
  }

  private String run(int code, String planted) throws Exception {
    Path north = Files.createDirectories(visits().getParent());
    Files.writeString(north.resolve("sites.csv"), "site_id,watershed\nS1,99010101\n");
    Files.writeString(
        north.resolve("installs.csv"), "device_id,site_id,installed_on\nD1,S1,2022-05-01\n");
    Files.writeString(
        visits(), "device_id,visited_on,condition\nD1,2023-05-07,working\nD1,2023-06-07,broke\n");
    Path log = folder.resolve("log");
    String[] report = {
      "report", folder.resolve("program").toString(), "--out", folder.resolve("out").toString()
    };
    Process process = ChildRun.start(folder.resolve("tmp"), log, classPath(planted), report);
    assertEquals(code, process.waitFor(), () -> read(log));
    assertFalse(Files.exists(folder.resolve("out")), "no half output");
    assertEquals(List.of("log", "planted", "program", "tmp"), names());
    return read(log);
  }

  private List<String> names() {
    return List.of(folder.toFile().list()).stream().sorted().toList();
  }

  private static String read(Path log) {
    try {
      return Files.readString(log)
          .lines()
          .filter(line -> !line.startsWith("WARNING"))
          .reduce("", (text, line) -> text + line + "\n");
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private String classPath(String planted) throws IOException {
    Path source = Files.createDirectories(folder.resolve("planted")).resolve("IsoDay.java");
    Files.writeString(source, PLANTED.formatted(planted));
    int compiled =
        ToolProvider.getSystemJavaCompiler()
            .run(
                null,
                null,
                null,
                "-proc:none",
                "-d",
                source.getParent().toString(),
                source.toString());
    assertEquals(0, compiled);
    return source.getParent() + File.pathSeparator + System.getProperty("java.class.path");
  }

  @Test
  void aFaultOfOursNamesTheFileAndSaysWhatToReport() throws Exception {
    String said = run(70, "throw new IllegalStateException(\"planted\");");
    List<String> lines = said.lines().toList();
    assertTrue(
        lines
            .get(0)
            .startsWith(
                "pondtally: this is a fault of the program, not of your files (it came up at north/visits.csv)."),
        said);
    assertTrue(lines.get(1).contains("version"), said);
    assertTrue(said.contains("IllegalStateException: planted [intake.IsoDay.parse:"), said);
    assertFalse(said.contains("\tat "), said);
    assertFalse(said.contains("org.apache.spark"), said);
    assertEquals(4, lines.size(), said);
  }

  @Test
  void aFileThatIsTakenAwayMeanwhileIsNoFaultOfOurs() throws Exception {
    String said = run(3, "new java.io.File(\"" + visits() + "\").delete();");
    assertEquals(
        "pondtally: north/visits.csv could not be read to its end: it is gone. Leave the files as they are while a run is at work, then run again.\n",
        said);
  }
}
