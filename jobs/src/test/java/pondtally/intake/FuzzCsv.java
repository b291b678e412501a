package pondtally.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Fuzz target: text files; all that {@link HostileCheck} asks must hold. The first byte names. */
public final class FuzzCsv {

  private static final String[] NAMES = {"x.csv", "installs.csv", "revisits.csv", "sites.tsv"};
  private static final Path FOLDER = folder();

  private FuzzCsv() {}

  static Path folder() {
    try {
      Path folder = Files.createTempDirectory("fuzz");
      folder.toFile().deleteOnExit();
      return folder;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    if (data.length > 0) {
      String name = NAMES[Math.floorMod(data[0], NAMES.length)];
      byte[] text = Arrays.copyOfRange(data, 1, data.length);
      HostileCheck.of(FOLDER, new HostileFile(name, text), "fuzz");
    }
  }
}
