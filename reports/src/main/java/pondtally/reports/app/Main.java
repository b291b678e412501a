package pondtally.reports.app;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import pondtally.app.Version;
import pondtally.check.UserError;
import pondtally.reports.table.BrokenTables;

/** The {@code pondtally} command. The only class that ends the process. */
@Command(
    name = "pondtally",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionText.class,
    subcommands = {
      CheckCommand.class,
      ReportCommand.class,
      RenderCommand.class,
      TraceCommand.class,
      CompareCommand.class,
      BlankCommand.class
    },
    sortOptions = false,
    header = {"Turns the records of a beaver-coexistence program into its annual report.", ""},
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Examples:",
      "  pondtally check my-program                     which rows count, which do not, and why",
      "  pondtally report my-program --out report-2025  tables, charts and workbook",
      "  pondtally trace report-2025/tables --subject upkeep_usd   the rows behind a figure",
      "  pondtally blank --out new-partner.xlsx         an empty workbook for a partner to fill in",
      "",
      "Exit codes: 0 done; 1 done, with rows set aside (check only); 2 wrong use; 3 input unusable;",
      "4 output not writable; 5 memory too small; 70 a fault of the program."
    })
public final class Main implements Runnable {

  static final int DONE = 0;
  static final int ROWS_SET_ASIDE = 1;
  static final int WRONG_USE = 2;
  static final int INPUT_UNUSABLE = 3;
  static final int OUTPUT_UNWRITABLE = 4;
  static final int OUT_OF_MEMORY = 5;
  static final int FAULT = 70;
  static final int STOPPED = 130;

  /** Whether somebody stopped the program: what breaks then is no fault. */
  private static volatile boolean stopping;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Option(
      names = "--verbose",
      description = "With --version: also Java, memory, libraries, fonts and locale.")
  private boolean isVerbose;

  /** Runs the command and exits with its code. */
  public static void main(String[] arguments) {
    System.setProperty("java.awt.headless", "true");
    Runtime.getRuntime().addShutdownHook(new Thread(() -> stopping = true));
    FirstMachine.watch();
    System.exit(run(arguments));
  }

  /** Runs the command; returns its exit code. */
  static int run(String... arguments) {
    return run(new CommandLine(new Main()), arguments);
  }

  static int run(CommandLine line, String... arguments) {
    line.setExecutionExceptionHandler(
        (error, command, parsed) -> explain(error, command, arguments));
    line.setExitCodeExceptionMapper(
        error -> error instanceof CommandLine.ParameterException ? WRONG_USE : FAULT);
    try {
      return Launcher.ofChild(line.execute(arguments));
    } catch (StackOverflowError | LinkageError e) {
      return explain(e, line, arguments);
    }
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static int explain(Throwable error, CommandLine command, String[] arguments) {
    PrintWriter err = command.getErr();
    if (stopping) {
      return STOPPED;
    }
    if (error instanceof UserError user) {
      err.println("pondtally: " + user.getMessage());
      return user.exitCode();
    }
    if (error instanceof BrokenTables broken) {
      err.println("pondtally: " + broken.getMessage());
      return INPUT_UNUSABLE;
    }
    if (DiskFull.isCauseOf(error)) {
      err.println("pondtally: " + DiskFull.SENTENCE);
      return OUTPUT_UNWRITABLE;
    }
    String file = FaultText.file(error).map(name -> " (it came up at " + name + ")").orElse("");
    err.printf(
        "pondtally: this is a fault of the program, not of your files%s. Please report it with the lines below,%n",
        file);
    err.printf(
        "the command (%s) and what pondtally --version --verbose prints (version %s).%n",
        String.join(" ", List.of(arguments)), Version.text());
    FaultText.lines(error).forEach(err::println);
    return FAULT;
  }

  /** What {@code --version} prints: one line; with {@code --verbose} the facts of the machine. */
  static final class VersionText implements IVersionProvider {

    @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

    @Override
    public String[] getVersion() {
      if (spec.userObject() instanceof Main main && main.isVerbose) {
        return FaultFacts.lines().toArray(String[]::new);
      }
      return new String[] {"pondtally " + Version.text()};
    }
  }
}
