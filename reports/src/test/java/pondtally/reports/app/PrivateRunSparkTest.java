package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.Shown;

/** While it runs, a report is reached by nobody and readable by nobody else, and says no name. */
@EnabledOnOs(OS.LINUX)
@Tag("reliability")
class PrivateRunSparkTest {

  private static final long LOOK_AGAIN_MS = 25;

  @TempDir Path folder;

  private final Set<String> beyond = new TreeSet<>();
  private final Set<String> permissions = new TreeSet<>();
  private int looks;
  private int sockets;

  @Test
  void aRunIsPrivate() throws Exception {
    Shown shown = Shown.risk("network and temporary files");
    Set<String> secrets = SecretProgram.write(folder.resolve("program"));
    Path temporary = Files.createDirectory(folder.resolve("tmp"));
    Path err = folder.resolve("err");
    Process run =
        JarRun.start(
            JarRun.make(folder.resolve("pondtally.jar")),
            temporary,
            folder.resolve("screen"),
            err,
            "report",
            folder.resolve("program").toString(),
            "--out",
            folder.resolve("out").toString());
    while (!run.waitFor(LOOK_AGAIN_MS, TimeUnit.MILLISECONDS)) {
      look(run, temporary);
    }
    String said = Files.readString(err);
    assertEquals(0, run.exitValue(), said);
    assertTrue(looks >= 40, "too few looks to mean anything: " + looks);
    assertTrue(beyond.isEmpty(), () -> "reachable from elsewhere: " + beyond);
    assertEquals(Set.of("rwx------"), permissions);
    assertEquals(List.of(), names(temporary), "left behind");
    assertEquals(List.of(), secrets.stream().filter(said::contains).toList());
    shown.that(
        "%s looks, %s sockets seen, none reachable from elsewhere; temporary folder %s, gone at the end; none of %s secrets in the messages",
        looks, sockets, permissions, secrets.size());
  }

  private void look(Process run, Path temporary) throws IOException {
    looks++;
    for (ProcessHandle process :
        Stream.concat(Stream.of(run.toHandle()), run.descendants()).toList()) {
      for (OpenPorts.Socket socket : OpenPorts.of(process)) {
        sockets++;
        if (socket.isBeyondLoopback()) {
          beyond.add(socket.toString());
        }
      }
    }
    for (String name : names(temporary)) {
      Path made = temporary.resolve(name);
      if (Files.exists(made)) {
        permissions.add(PosixFilePermissions.toString(Files.getPosixFilePermissions(made)));
      }
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  /** A port for everybody is seen; one for this machine alone is no fault. */
  @Test
  void theLookCanFail() throws IOException {
    Set<String> before = reachable();
    try (ServerSocket everybody = new ServerSocket(0)) {
      assertTrue(everybody.isBound());
      assertFalse(before.containsAll(reachable()));
    }
    try (ServerSocket own = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      assertTrue(own.isBound());
      assertFalse(OpenPorts.of(ProcessHandle.current()).isEmpty());
      assertTrue(before.containsAll(reachable()));
    }
  }

  private static Set<String> reachable() {
    return OpenPorts.of(ProcessHandle.current()).stream()
        .filter(OpenPorts.Socket::isBeyondLoopback)
        .map(OpenPorts.Socket::inode)
        .collect(Collectors.toSet());
  }
}
