package pondtally.reports.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The class-data archive with which a later run starts faster: classes read and verified, mapped
 * from one file. The first run notes the classes it loads; a process of its own makes the archive
 * from them when that run has ended ({@link ArchiveMaker}). Whatever fails here costs speed only.
 */
final class ClassArchive {

  /** How the file of every archive ends. */
  static final String ENDING = ".jsa";

  private static final String PREFIX = "classes-";
  private static final String PART = "-part" + ENDING;
  private static final String WHOLE = "-whole" + ENDING;

  /** What a run loads: a whole report much more than a check. */
  enum Extent {
    PART,
    WHOLE
  }

  private final Path folder;
  private final String key;
  private final Extent extent;
  private final Path jar;

  private ClassArchive(Path folder, String key, Extent extent, Path jar) {
    this.folder = folder;
    this.key = key;
    this.extent = extent;
    this.jar = jar;
  }

  /** The archive of a jar with the jars beside it, under this Java. */
  static ClassArchive of(Path folder, Path jar, Extent extent) throws IOException {
    return new ClassArchive(folder, key(jar), extent, jar);
  }

  /** Another version, place, jar, date or Java: another key. */
  static String key(Path jar) throws IOException {
    StringBuilder text = new StringBuilder();
    for (String name : List.of("java.home", "java.vm.name", "java.vm.version", "os.arch")) {
      text.append(System.getProperty(name)).append('\n');
    }
    append(text, jar.toAbsolutePath().normalize());
    Path lib = jar.resolveSibling("lib");
    if (Files.isDirectory(lib)) {
      try (Stream<Path> jars = Files.list(lib)) {
        for (Path each : jars.sorted().toList()) {
          append(text, each);
        }
      }
    }
    return digest(text.toString());
  }

  private static void append(StringBuilder text, Path file) throws IOException {
    text.append(file).append(' ').append(Files.size(file)).append(' ');
    text.append(Files.getLastModifiedTime(file).toMillis()).append('\n');
  }

  private static String digest(String text) {
    try {
      byte[] sum =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(sum, 0, 8);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private Path file(Extent of) {
    return folder.resolve(PREFIX + key + (of == Extent.WHOLE ? WHOLE : PART));
  }

  /** The archive for whole reports beside one for a part; a whole one is its own. */
  static Path whole(Path archive) {
    return archive.resolveSibling(archive.getFileName().toString().replace(PART, WHOLE));
  }

  /** The archive to start with; a whole one serves every command. */
  Optional<Path> usable() {
    return Stream.of(file(Extent.WHOLE), file(Extent.PART))
        .filter(Files::isRegularFile)
        .findFirst();
  }

  /** Whether an archive is still to be made for what this run loads. */
  boolean isWanted() {
    return Files.notExists(file(Extent.WHOLE)) && Files.notExists(file(extent));
  }

  /** Flags of Java that use the archive, without a word if it cannot be used. */
  List<String> useFlags() {
    return usable().map(ClassArchive::flags).orElse(List.of());
  }

  /** Flags of Java that use an archive, and pass over one that is broken. */
  static List<String> flags(Path archive) {
    return List.of(
        "-XX:SharedArchiveFile=" + archive,
        "-Xshare:auto",
        "-XX:+VerifySharedSpaces",
        "-Xlog:disable");
  }

  /**
   * Makes the archive in a process that goes on when this one has ended.
   *
   * @param classes names of the classes that a run loaded; kept until the archive is made
   */
  void makeInBackground(Path classes) throws IOException {
    if (!Files.isRegularFile(classes)) {
      return;
    }
    Path list = Files.createTempFile(folder, PREFIX, ".list");
    Files.move(classes, list, StandardCopyOption.REPLACE_EXISTING);
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    new ProcessBuilder(
            java,
            "-Xmx32m",
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            jar.toString(),
            ArchiveMaker.class.getName(),
            java,
            jar.toString(),
            list.toString(),
            file(extent).toString())
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }
}
