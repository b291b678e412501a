package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Coverage-guided fuzzing with Jazzer, each target in a Java machine of its own. What it finds and
 * the inputs it grew lie in {@code target/fuzz}, and the next run goes on from there.
 */
@Tag("fuzz")
class FuzzRunTest {

  @ParameterizedTest
  @ValueSource(
      classes = {
        FuzzDates.class,
        FuzzNumbers.class,
        FuzzUnits.class,
        FuzzCsv.class,
        FuzzXlsx.class
      })
  void nothingIsFound(Class<?> target) throws IOException, InterruptedException {
    Path folder = Path.of("target", "fuzz", target.getSimpleName());
    Path corpus = Files.createDirectories(folder.resolve("corpus"));
    if (target == FuzzXlsx.class) {
      Files.writeString(corpus.resolve("sheet"), "\0" + FuzzXlsx.sheet());
    } else if (target == FuzzCsv.class) {
      Files.writeString(
          corpus.resolve("table"),
          "\1device_id,site_id,installed_on\nD1,S1,2024-05-01\n\"D2\",\"S,1\",13/04/2024\n",
          StandardCharsets.UTF_8);
    }
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx1g",
                "-cp",
                System.getProperty("java.class.path"),
                "com.code_intelligence.jazzer.Jazzer",
                "--target_class=" + target.getName(),
                "--instrumentation_includes=pondtally.**",
                "--reproducer_path=" + folder,
                "-artifact_prefix=" + folder + "/",
                "-max_total_time=" + Integer.getInteger("fuzz.seconds", 60),
                "-timeout=5",
                "-rss_limit_mb=0",
                "-print_final_stats=1",
                corpus.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log.txt").toFile())
            .start();
    assertEquals(0, process.waitFor(), "see " + folder.resolve("log.txt"));
  }
}
