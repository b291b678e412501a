package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The job as spark-submit starts it, with a program folder that lies on another file system. */
class ClusterMainSparkTest {

  @TempDir Path folder;

  private final Map<String, String> submitted =
      Map.of(
          "spark.master", "local[1]",
          "spark.ui.enabled", "false",
          "spark.driver.host", "127.0.0.1",
          "spark.hadoop.fs.viewfs.impl.disable.cache", "true");
  private String mount;
  private String said;

  @BeforeEach
  void submit() throws IOException {
    Path program = Files.createDirectories(folder.resolve("program/crew")).getParent();
    Files.writeString(program.resolve("program.yaml"), "as_of: 2024-12-31\nbase_year: 2023\n");
    Files.writeString(
        program.resolve("crew/installs.csv"),
        "device_id,site_id,installed_on\nD1,S1,2024-03-01\nD2,S2,2024-04-01\n");
    Files.writeString(
        program.resolve("crew/sites.csv"), "site_id,watershed\nS1,99010101\nS2,99010101\n");
    Files.createDirectories(folder.resolve("shared"));
    submitted.forEach(System::setProperty);
    mount = "spark.hadoop.fs.viewfs.mounttable.elsewhere.link./program";
    System.setProperty(mount, program.toUri().toString());
  }

  @AfterEach
  void clear() {
    submitted.keySet().forEach(System::clearProperty);
    System.clearProperty(mount);
  }

  @Test
  void tablesAreWrittenAndTheSharedFolderIsEmptyAfterwards() throws IOException {
    assertEquals(0, run("--contributions"), said);
    assertTrue(Files.size(folder.resolve("out/tables/contributions.csv")) > 0);
    assertTrue(Files.exists(folder.resolve("out/_complete")));
    assertEquals(List.of(), names("shared"));
  }

  @Test
  void afterAFailureTheSharedFolderIsEmptyAndFilesAreNamedAsTheyAreKnown() throws IOException {
    for (String name : List.of("installs.csv", "sites.csv")) {
      Files.delete(folder.resolve("program/crew").resolve(name));
    }
    assertEquals(3, run("--contributions"), said);
    assertEquals(
        "pondtally: There is no .csv, .tsv or .xlsx file in viewfs://elsewhere/program or in a folder below it.",
        said.strip());
    assertEquals(List.of(), names("shared"));
    assertTrue(Files.notExists(folder.resolve("out")), "nothing half-made");
  }

  @Test
  void aSharedFolderThatIsNotThereIsTheUsersMistake() throws IOException {
    Files.delete(folder.resolve("shared"));
    assertEquals(4, run("--contributions"), said);
    assertTrue(said.contains("--shared " + folder.resolve("shared")), said);
  }

  private int run(String... more) {
    PrintStream err = System.err;
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    String[] arguments =
        Stream.concat(
                Stream.of(
                    "viewfs://elsewhere/program",
                    "--out",
                    folder.resolve("out").toUri().toString(),
                    "--shared",
                    folder.resolve("shared").toString()),
                Stream.of(more))
            .toArray(String[]::new);
    try (PrintStream into = new PrintStream(told, true, StandardCharsets.UTF_8)) {
      System.setErr(into);
      return ClusterMain.run(arguments);
    } finally {
      System.setErr(err);
      said = told.toString(StandardCharsets.UTF_8);
    }
  }

  private List<String> names(String name) throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve(name))) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
