package pondtally.cluster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.app.Job;
import pondtally.app.JobRequest;
import pondtally.app.JobResult;
import pondtally.app.LongTables;
import pondtally.sample.LargeProgram;
import pondtally.table.ResultPackage;

/**
 * The job on a real cluster of Spark's own master and two workers, one of which is killed in the
 * middle: the same bytes as on one machine. Needs the jar for clusters: run {@code mvn -DskipTests
 * package} first. Input and output lie on a file system that tasks reach through Hadoop alone
 * (viewfs).
 */
@Tag("benchmark")
class ClusterBenchmarkTest {

  private static final int DEVICES = 10_000;

  @TempDir private Path folder;
  private final List<Process> started = new ArrayList<>();
  private SparkHome spark;
  private String master;

  @BeforeEach
  void startMaster() throws IOException {
    spark = SparkHome.in(Files.createDirectory(folder.resolve("spark")));
    int port;
    try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = free.getLocalPort();
    }
    master = "spark://127.0.0.1:" + port;
    started.add(
        spark.start(
            folder.resolve("master.log"),
            "org.apache.spark.deploy.master.Master",
            List.of("--host", "127.0.0.1", "--port", "" + port, "--webui-port", "0")));
  }

  @AfterEach
  void stop() throws InterruptedException {
    for (Process process : started) {
      kill(process);
    }
  }

  @Test
  void oneWorkerIsLostAndTheTablesAreTheSame() throws Exception {
    Path program = folder.resolve("program");
    LargeProgram.write(program, DEVICES, 32, true);
    worker(1);
    Process lost = worker(2);
    Process submitted = submit(folder.resolve("out"));
    while (!SparkHome.isAtWork(folder.resolve("work-2"))) {
      assertTrue(submitted.isAlive(), () -> text("submit.log"));
      Thread.sleep(100);
    }
    waitForTasks();
    kill(lost);
    assertTrue(submitted.waitFor(10, TimeUnit.MINUTES));
    assertEquals(0, submitted.exitValue(), () -> text("submit.log"));
    assertTrue(text("submit.log").contains("Lost executor"), () -> text("submit.log"));
    assertTrue(Files.exists(folder.resolve("out").resolve("_complete")));
    assertSame(here(program), folder.resolve("out").resolve("tables"));
  }

  /** Until the executor that is to be lost has finished a few tasks. */
  private void waitForTasks() throws InterruptedException {
    while (!text("submit.log").contains("Finished task 5.0")) {
      Thread.sleep(50);
    }
  }

  private Process worker(int number) throws IOException {
    Process worker =
        spark.start(
            folder.resolve("worker-" + number + ".log"),
            "org.apache.spark.deploy.worker.Worker",
            List.of(
                "--host",
                "127.0.0.1",
                "--cores",
                "1",
                "--memory",
                "900m",
                "--webui-port",
                "0",
                "--work-dir",
                folder.resolve("work-" + number).toString(),
                master));
    started.add(worker);
    return worker;
  }

  private Process submit(Path out) throws IOException {
    Files.createDirectory(out);
    String mount = "spark.hadoop.fs.viewfs.mounttable.records.link./";
    Process process =
        spark.start(
            folder.resolve("submit.log"),
            "org.apache.spark.deploy.SparkSubmit",
            List.of(
                "--master",
                master,
                "--conf",
                "spark.executor.memory=800m",
                "--conf",
                "spark.ui.enabled=false",
                "--conf",
                "spark.driver.host=127.0.0.1",
                "--conf",
                mount + "program=" + folder.resolve("program").toUri(),
                "--conf",
                mount + "out=" + out.toUri(),
                jar(),
                "viewfs://records/program",
                "--out",
                "viewfs://records/out",
                "--shared",
                folder.toString()));
    started.add(process);
    return process;
  }

  private static String jar() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("target"))) {
      return files
          .filter(file -> file.toString().endsWith("-cluster.jar"))
          .findFirst()
          .orElseThrow(() -> new AssertionError("run mvn -DskipTests package first"))
          .toString();
    }
  }

  /** The tables as one machine makes them. */
  private Path here(Path program) throws IOException {
    Path tables = Files.createDirectory(folder.resolve("here"));
    JobResult result =
        Job.run(
            new JobRequest(
                    program,
                    (int) LocalDate.now().toEpochDay(),
                    OptionalInt.empty(),
                    OptionalInt.empty(),
                    2)
                .with(new LongTables(tables, false)));
    ResultPackage.write(tables, result.tables(), result.longTables(), result.facts());
    return tables;
  }

  /** All but the version, which classes outside a jar do not have. */
  private static void assertSame(Path expected, Path actual) throws IOException {
    assertEquals(names(expected), names(actual));
    assertTrue(names(expected).size() > 30);
    for (String name : names(expected)) {
      byte[] wanted = Files.readAllBytes(expected.resolve(name));
      byte[] found = Files.readAllBytes(actual.resolve(name));
      if (name.endsWith(".json")) {
        assertEquals(withoutVersion(wanted), withoutVersion(found));
      } else {
        assertArrayEquals(wanted, found, name);
      }
    }
  }

  private static String withoutVersion(byte[] json) {
    return new String(json, java.nio.charset.StandardCharsets.UTF_8)
        .replaceAll("\"version\" : \"[^\"]*\"", "");
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private String text(String log) {
    try {
      return Files.readString(folder.resolve(log));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static void kill(Process process) throws InterruptedException {
    List<ProcessHandle> below = process.descendants().toList();
    process.destroyForcibly().waitFor();
    below.forEach(ProcessHandle::destroyForcibly);
  }
}
