package pondtally.reports.app;

import java.util.ArrayList;
import java.util.List;

/** Flags of Java by the size of the input: a small one should not pay for a big machine. */
final class JavaFlags {

  private static final long SMALL_INPUT_BYTES = 8L << 20;

  private JavaFlags() {}

  static List<String> of(long inputBytes, long heapBytes) {
    List<String> flags = new ArrayList<>();
    flags.add("-Djava.awt.headless=true");
    flags.add("-Xshare:auto");
    flags.add("-Xmx" + (heapBytes >> 20) + "m");
    flags.add("-XX:+ExitOnOutOfMemoryError");
    flags.add("-XX:+UnlockDiagnosticVMOptions");
    flags.add("-XX:-DisplayVMOutput");
    if (inputBytes < SMALL_INPUT_BYTES) {
      flags.add("-XX:TieredStopAtLevel=1");
      flags.add("-XX:+UseSerialGC");
    } else {
      flags.add("-XX:+UseParallelGC");
      // Every row goes through very many small steps. Copying the larger of them into each other
      // takes the compiler longer than it saves, and the compiler has no core of its own.
      flags.add("-XX:FreqInlineSize=100");
      flags.add("-XX:InlineSmallCode=1000");
    }
    return flags;
  }

  /** Flags from a variable of the environment, apart by spaces; none where it is not set. */
  static List<String> ofUser(String text) {
    return text == null || text.isBlank() ? List.of() : List.of(text.trim().split("\\s+"));
  }
}
