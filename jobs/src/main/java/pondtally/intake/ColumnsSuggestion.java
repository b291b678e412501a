package pondtally.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.check.Finding;
import pondtally.check.SheetReport;
import pondtally.check.UserError;

/**
 * A first {@code columns.yaml} for each partner's folder, from the headings and values of its
 * files. What is sure stands there as it counts; what is to be decided stands behind a mark that
 * makes it a comment, so that the file as suggested changes nothing.
 */
public final class ColumnsSuggestion {

  private static final int HEAD_LINES = 2;

  private ColumnsSuggestion() {}

  /**
   * The text for each partner's folder of a program, by its name. A {@code columns.yaml} that is
   * there already stands in it word for word, with what is still open as a comment below it.
   *
   * @throws UserError where the folder or a statement in it is wrong
   */
  public static SortedMap<String, String> of(Path program, IntakeSettings settings) {
    ProgramFiles files = ProgramFolder.open(program);
    SortedMap<String, String> texts = byFolder(files.files(), settings);
    for (String path : files.statements()) {
      String name = path.substring(path.lastIndexOf('/') + 1);
      if (ColumnsFiles.isOne(name)) {
        String stated = SettingsText.of(program.resolve(path), path);
        texts.computeIfPresent(
            ColumnsFiles.folderOf(path), (folder, text) -> StatedColumns.with(stated, text));
      }
    }
    return texts;
  }

  /**
   * The text for each partner's folder, by its name; folders of no files that are read are not
   * there.
   */
  static SortedMap<String, String> byFolder(List<InputFile> files, IntakeSettings settings) {
    SortedMap<String, List<InputFile>> byFolder = new TreeMap<>();
    for (InputFile file : files) {
      String folder = ColumnsFiles.folderOf(file.path());
      if (!folder.isEmpty() && ProgramFolder.isRead(file)) {
        byFolder.computeIfAbsent(folder, name -> new ArrayList<>()).add(file);
      }
    }
    SortedMap<String, String> texts = new TreeMap<>();
    byFolder.forEach((folder, own) -> texts.put(folder, text(folder, own, settings)));
    return texts;
  }

  private static String text(String folder, List<InputFile> files, IntakeSettings settings) {
    List<String> sure = new ArrayList<>();
    List<String> open = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (InputFile file : files) {
      for (SheetReport report : PartnerFileReader.read(file, settings, record -> {})) {
        findings.addAll(report.findings());
        SheetSuggestion sheet = suggestion(file, report);
        (sheet.isActive() ? sure : open).addAll(sheet.lines());
      }
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        "# Suggested for %s from its files. Lines that begin with #? are guesses to decide:"
            .formatted(folder));
    lines.add(
        "# correct them and take the three signs \"#? \" away. The others are read so already.");
    if (!open.isEmpty()) {
      lines.add("# Then ask again: codes and units are seen once the columns are known.");
    }
    lines.addAll(marks(findings));
    if (!sure.isEmpty() || !open.isEmpty()) {
      lines.add((sure.isEmpty() ? SheetSuggestion.MARK : "") + "tables:");
    } else if (lines.size() == HEAD_LINES) {
      lines.add("# There is nothing to decide: every table, column and code is known.");
    }
    lines.addAll(sure);
    lines.addAll(open);
    return String.join("\n", lines) + "\n";
  }

  private static SheetSuggestion suggestion(InputFile file, SheetReport report) {
    try {
      return SheetSuggestion.of(file, report);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Orders of dates and decimal marks that nothing in the files decides. */
  private static List<String> marks(List<Finding> findings) {
    List<String> lines = new ArrayList<>();
    add(lines, findings, IntakeRule.AMBIGUOUS_DATE, "dates: day/month/year  # or month/day/year");
    add(lines, findings, IntakeRule.AMBIGUOUS_NUMBER, "decimal: point  # or comma");
    long guessed = findings.stream().filter(f -> is(f, IntakeRule.ENCODING_GUESSED)).count();
    if (guessed > 0) {
      lines.add(SheetSuggestion.MARK + "encoding: windows-1252  # as guessed");
    }
    return lines;
  }

  private static void add(
      List<String> lines, List<Finding> findings, IntakeRule rule, String line) {
    List<Finding> found = findings.stream().filter(f -> is(f, rule)).toList();
    if (!found.isEmpty()) {
      String cells = found.size() == 1 ? "1 cell" : found.size() + " cells";
      lines.add(
          "%s%s: %s, as %s"
              .formatted(SheetSuggestion.MARK, line, cells, Shown.value(found.get(0).value())));
    }
  }

  private static boolean is(Finding finding, IntakeRule rule) {
    return finding.rule().equals(rule.code());
  }
}
