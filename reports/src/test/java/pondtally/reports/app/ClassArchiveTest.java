package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The archive of classes speeds a run up or does nothing. */
class ClassArchiveTest {

  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();

  @TempDir private Path folder;
  private Path jar;

  /** A jar with one class that says hello. */
  @BeforeEach
  void makeJar() throws IOException {
    jar = folder.resolve("small.jar");
    String name = Hello.class.getName().replace('.', '/') + ".class";
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar));
        var in = Hello.class.getClassLoader().getResourceAsStream(name)) {
      out.putNextEntry(new JarEntry(name));
      in.transferTo(out);
      out.closeEntry();
    }
  }

  @Test
  void keyFollowsTheJarAndTheJarsBesideIt() throws IOException {
    String key = ClassArchive.key(jar);
    assertEquals(key, ClassArchive.key(jar));
    Files.setLastModifiedTime(jar, FileTime.fromMillis(1_000_000));
    String later = ClassArchive.key(jar);
    assertNotEquals(key, later);
    Path lib = Files.createDirectory(folder.resolve("lib"));
    Files.writeString(lib.resolve("a.jar"), "a");
    String withLib = ClassArchive.key(jar);
    assertNotEquals(later, withLib);
    Files.writeString(lib.resolve("a.jar"), "ab");
    assertNotEquals(withLib, ClassArchive.key(jar));
  }

  @Test
  void wholeServesEveryCommandAndIsNotMadeTwice() throws IOException {
    ClassArchive part = ClassArchive.of(folder, jar, ClassArchive.Extent.PART);
    ClassArchive whole = ClassArchive.of(folder, jar, ClassArchive.Extent.WHOLE);
    assertEquals(List.of(), part.useFlags());
    assertTrue(part.isWanted());
    Path file = folder.resolve("classes-" + ClassArchive.key(jar) + "-part.jsa");
    Files.createFile(file);
    assertEquals(Optional.of(file), whole.usable());
    assertFalse(part.isWanted());
    assertTrue(whole.isWanted());
    Files.createFile(ClassArchive.whole(file));
    assertFalse(whole.isWanted());
    assertEquals(Optional.of(ClassArchive.whole(file)), part.usable());
  }

  @Test
  void isMadeUsedAndReplacesEarlierOnes() throws Exception {
    Path old = Files.createFile(folder.resolve("classes-0-whole.jsa"));
    Path archive = made();
    assertTrue(Files.size(archive) > 1_000_000);
    assertFalse(Files.exists(old));
    assertEquals(List.of("hello shared"), run(archive));
  }

  @Test
  void brokenOneIsPassedOverSilently() throws Exception {
    Path archive = made();
    byte[] bytes = Files.readAllBytes(archive);
    Files.delete(archive);
    Files.write(archive, java.util.Arrays.copyOf(bytes, bytes.length / 2));
    assertEquals(List.of("hello alone"), run(archive));
    java.util.Arrays.fill(bytes, bytes.length / 2, bytes.length / 2 + 4096, (byte) 7);
    Files.write(archive, bytes);
    assertEquals(List.of("hello alone"), run(archive));
    Files.writeString(archive, "not an archive");
    assertEquals(List.of("hello alone"), run(archive));
  }

  @Test
  void onlyOneIsMadeAtATime() throws Exception {
    Path archive = folder.resolve("classes-1-whole.jsa");
    Path mark = Files.createFile(folder.resolve("classes-1-whole.jsa.making"));
    ArchiveMaker.make(JAVA, jar.toString(), list(), archive);
    assertFalse(Files.exists(archive));
    assertTrue(Files.exists(mark));
  }

  @Test
  void cacheFolderIsTheUsersOrNone() throws IOException {
    Path home = folder.resolve("home");
    assertEquals(
        Optional.of(home.resolve(".cache").resolve("pondtally")),
        CacheFolder.open(Map.of(), home.toString()));
    String other = folder.resolve("xdg").toString();
    assertEquals(
        Optional.of(Path.of(other, "pondtally")),
        CacheFolder.open(Map.of("XDG_CACHE_HOME", other), home.toString()));
    assertEquals(
        Optional.empty(), CacheFolder.open(Map.of("PONDTALLY_CACHE", "off"), home.toString()));
    Path file = Files.createFile(folder.resolve("file"));
    assertEquals(
        Optional.empty(),
        CacheFolder.open(Map.of("PONDTALLY_CACHE", file + "/below"), home.toString()));
  }

  private Path made() throws Exception {
    Path archive = folder.resolve("classes-1-whole.jsa");
    ArchiveMaker.make(JAVA, jar.toString(), list(), archive);
    try (Stream<Path> files = Files.list(folder)) {
      assertTrue(files.noneMatch(file -> file.toString().matches(".*(making|writing)")));
    }
    return archive;
  }

  private Path list() throws IOException {
    return Files.writeString(
        folder.resolve("names.list"),
        "java/lang/Object\n" + Hello.class.getName().replace('.', '/') + "\n");
  }

  private List<String> run(Path archive) throws Exception {
    List<String> command = new ArrayList<>(List.of(JAVA, "-Xlog:disable"));
    command.addAll(ClassArchive.flags(archive));
    command.addAll(List.of("-Xlog:class+load:file=" + folder.resolve("loaded"), "-cp"));
    command.addAll(List.of(jar.toString(), Hello.class.getName()));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes());
    assertEquals(0, process.waitFor());
    boolean isShared =
        Files.readAllLines(folder.resolve("loaded")).stream()
            .anyMatch(line -> line.contains("Hello") && line.contains("shared objects file"));
    return said.lines().map(line -> line + (isShared ? " shared" : " alone")).toList();
  }

  /** What the small jar runs. */
  static final class Hello {
    private Hello() {}

    public static void main(String[] arguments) {
      System.out.println("hello");
    }
  }
}
