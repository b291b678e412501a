package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import pondtally.app.Scratch;
import pondtally.check.UserError;

/** What of the machine a run may use; options of every command that starts a job. */
final class Machine {

  /** Spark does not start with less. */
  static final long LEAST_BYTES = 600L << 20;

  @Option(
      names = "--cores",
      paramLabel = "N",
      description = "Processor cores to use; otherwise all of them.")
  private Integer cores;

  @Option(
      names = "--memory",
      paramLabel = "SIZE",
      converter = Size.class,
      description = "Memory for the records, such as 4g or 1500m; otherwise by size of the input.")
  private Long memoryBytes;

  @Option(
      names = "--spill",
      paramLabel = "DIR",
      description = "An existing folder on a disk with room for what does not fit into memory.")
  private Path spill;

  /** Nothing stated. */
  static Machine any() {
    return new Machine();
  }

  /** Processor cores to use. */
  int cores() {
    int all = Runtime.getRuntime().availableProcessors();
    return cores == null ? all : cores;
  }

  /** Bytes of memory stated by the user; null where it goes by the size of the input. */
  Long memoryBytes() {
    return memoryBytes;
  }

  /**
   * A new private folder for temporary files.
   *
   * @throws UserError with exit code 4 if it cannot be made
   */
  Path scratch() {
    try {
      return spill == null ? Scratch.make() : Scratch.in(spill);
    } catch (IOException e) {
      throw UserError.output(
          "No temporary folder can be made in %s: %s. Name an existing folder with --spill."
              .formatted(spill == null ? System.getProperty("java.io.tmpdir") : spill, reason(e)));
    }
  }

  private static String reason(IOException e) {
    return e.getClass().getSimpleName().replace("Exception", "") + " " + e.getMessage();
  }

  /**
   * @throws UserError with exit code 2 if a value is out of range
   */
  void require() {
    if (cores != null && cores < 1) {
      throw UserError.usage("--cores %s: expected 1 or more.".formatted(cores));
    }
    if (memoryBytes != null && memoryBytes < LEAST_BYTES) {
      throw UserError.usage("--memory: expected 600m or more, for example 2g.");
    }
  }

  /** {@code 4g} or {@code 1500m} as bytes. */
  static final class Size implements ITypeConverter<Long> {

    private static final Pattern FORM = Pattern.compile("(\\d{1,6})\\s?([mg])b?");

    @Override
    public Long convert(String text) {
      Matcher form = FORM.matcher(text.toLowerCase(Locale.ROOT));
      if (!form.matches()) {
        throw new TypeConversionException(
            "'%s' is not a size; expected for example 4g or 1500m".formatted(text));
      }
      return Long.parseLong(form.group(1)) << (form.group(2).equals("g") ? 30 : 20);
    }
  }
}
