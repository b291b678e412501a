package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pondtally.check.UserError;
import pondtally.intake.FixMarks;
import pondtally.reports.form.BlankWorkbook;

/** {@code pondtally blank}: an empty workbook for a partner to fill in. */
@Command(
    name = "blank",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionText.class,
    sortOptions = false,
    header = {"Writes an empty workbook for partners to fill in.", ""},
    footer = {
      "",
      "Example:",
      "  pondtally blank --out new-partner.xlsx",
      "",
      "Put the filled workbook into the partner's folder: it is read as it is."
    })
final class BlankCommand implements Callable<Integer> {

  private static final String ENDING = ".xlsx";

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The workbook to write, a name ending in .xlsx.")
  private Path out;

  @Option(names = "--replace", description = "Overwrite FILE, whatever was filled in there.")
  private boolean replace;

  @Override
  public Integer call() {
    if (!String.valueOf(out.getFileName()).toLowerCase(Locale.ROOT).endsWith(ENDING)) {
      throw UserError.usage("--out %s: expected a name that ends in .xlsx.".formatted(out));
    }
    if (Files.isDirectory(out)) {
      throw UserError.output("--out %s is a folder; give the name of a file.".formatted(out));
    }
    if (Files.exists(out) && !replace) {
      throw UserError.output(
          "%s is there already. Add --replace to overwrite it, or give another name."
              .formatted(out));
    }
    try {
      write(out.toAbsolutePath().normalize());
    } catch (IOException e) {
      throw Unwritable.error(out, e);
    }
    spec.commandLine().getOut().printf("Empty workbook for a partner: %s%n", out);
    return Main.DONE;
  }

  /** Whole or not at all: written beside, then renamed. */
  private static void write(Path file) throws IOException {
    Path folder = file.getParent();
    Files.createDirectories(folder);
    OtherRuns.clear(file);
    Path beside = Beside.own(file);
    try {
      BlankWorkbook.write(InputForms.all(), FixMarks.NOT_READ, beside);
      Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }
}
