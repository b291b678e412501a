package pondtally.reports.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pondtally.app.Job;
import pondtally.app.JobRequest;
import pondtally.app.UnreadableFiles;
import pondtally.check.IssueBook;
import pondtally.check.MessageGroups;
import pondtally.check.UserError;

/** {@code pondtally check}: what became of every row, without making a report. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionText.class,
    sortOptions = false,
    header = {"Says which rows of a program folder count, which do not, and why.", ""},
    footer = {
      "",
      "Examples:",
      "  pondtally check my-program",
      "  pondtally check my-program --json > issues.json",
      "  pondtally check my-program --suggest               show a columns.yaml for each partner",
      "  pondtally check my-program --suggest --out drafts  write them to drafts/PARTNER",
      "",
      "Exits with 1 if any row was set aside, with 3 if a file could not be read."
    })
final class CheckCommand implements Callable<Integer> {

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Parameters(paramLabel = "FOLDER", description = "The program folder with the partners' files.")
  private Path folder;

  @Option(names = "--json", description = "The row account and every issue as JSON.")
  private boolean isJson;

  @Option(
      names = "--suggest",
      description = {
        "Suggest a columns.yaml for each partner from the headings and values found,",
        "what is to be decided marked with #?. Nothing is checked then."
      })
  private boolean isSuggested;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "With --suggest: write DIR/PARTNER/columns.yaml; DIR may be FOLDER itself.")
  private Path out;

  @Option(names = "--replace", description = "With --suggest --out: overwrite earlier ones.")
  private boolean isReplaced;

  @CommandLine.Mixin private Machine machine;

  @Override
  public Integer call() {
    if (isSuggested) {
      return suggest();
    }
    if (out != null || isReplaced) {
      throw UserError.usage("--out and --replace go with --suggest. Add it, or leave them out.");
    }
    if (!Launcher.isHere()) {
      return Launcher.relaunch(
          spec.commandLine().getParent().getParseResult().originalArgs(),
          folder,
          machine,
          ClassArchive.Extent.PART);
    }
    IssueBook book = checked();
    print(book);
    UnreadableFiles.among(book.issues())
        .ifPresent(
            unusable -> {
              throw unusable;
            });
    boolean anySetAside = book.accounts().stream().anyMatch(row -> row.counts().setAside() > 0);
    return anySetAside ? Main.ROWS_SET_ASIDE : Main.DONE;
  }

  private IssueBook checked() {
    ProgressLine progress = ProgressLine.start();
    try {
      return Job.check(
          new JobRequest(
              folder,
              (int) LocalDate.now().toEpochDay(),
              OptionalInt.empty(),
              OptionalInt.empty(),
              machine.cores()));
    } finally {
      progress.close();
    }
  }

  private void print(IssueBook book) {
    PrintWriter lines = spec.commandLine().getOut();
    if (isJson) {
      lines.println(CheckJson.of(book.accounts(), book.issues()));
    } else {
      MessageGroups.lines(book.issues(), "").forEach(lines::println);
      if (!book.issues().isEmpty()) {
        lines.println();
      }
      PartnerAccounts.lines(book.accounts()).forEach(lines::println);
      Summary.printAccount(lines, book.accounts());
    }
    lines.flush();
  }

  private int suggest() {
    if (isJson) {
      throw UserError.usage("--suggest and --json do not go together. Leave one of them out.");
    }
    if (isReplaced && out == null) {
      throw UserError.usage("--replace goes with --out. Add it, or leave --replace out.");
    }
    PrintWriter lines = spec.commandLine().getOut();
    SortedMap<String, String> texts = SuggestedColumns.of(folder);
    if (out == null) {
      SuggestedColumns.print(texts, lines);
    } else {
      SuggestedColumns.write(texts, out, isReplaced, lines);
    }
    return Main.DONE;
  }
}
