package pondtally.stage;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.Stream;
import pondtally.analysis.Contribution;
import pondtally.table.TableFile;
import pondtally.table.TableFileWriter;

/**
 * The file of the result table {@code contributions}, joined from the runs that tasks wrote, one
 * block of each in memory.
 */
final class ContributionFile {

  private static final String NAME = "contributions";

  private ContributionFile() {}

  /**
   * Writes the table into {@code tables} and removes the folder of runs.
   *
   * @param runs names of the runs in {@code folder}
   * @param ofProgram contributions that no task knows
   */
  static TableFile write(
      Path tables,
      Path folder,
      List<String> runs,
      ContributionLines lines,
      List<Contribution> ofProgram) {
    List<String> all = new ArrayList<>(runs);
    try (ContributionRuns own = new ContributionRuns(folder, lines)) {
      own.add(new ArrayList<>(ofProgram));
      own.close();
      all.addAll(own.runs());
    }
    try (TableFileWriter out = TableFileWriter.open(tables, NAME)) {
      join(folder, all, out);
      delete(folder);
      return out.written();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void join(Path folder, List<String> runs, TableFileWriter into)
      throws IOException {
    PriorityQueue<Run> heads = new PriorityQueue<>();
    try {
      for (String name : runs) {
        Run run = new Run(folder.resolve(name));
        if (run.next()) {
          heads.add(run);
        }
      }
      ContributionBlock last = null;
      while (!heads.isEmpty()) {
        Run least = heads.remove();
        if (last != null && last.compareTo(least.head) == 0) {
          throw new IllegalStateException(
              "two clusters hold %s of site %s".formatted(last.subject(), last.siteId()));
        }
        last = least.head;
        into.rows(last.lines(), last.rows());
        if (least.next()) {
          heads.add(least);
        }
      }
    } finally {
      for (Run run : heads) {
        run.in.close();
      }
    }
  }

  /** With what tasks left there whose machine was lost. */
  private static void delete(Path folder) throws IOException {
    try (Stream<Path> runs = Files.list(folder)) {
      for (Path run : runs.toList()) {
        Files.delete(run);
      }
    }
    Files.delete(folder);
  }

  private static final class Run implements Comparable<Run> {
    private final DataInputStream in;
    private ContributionBlock head;

    Run(Path file) throws IOException {
      in =
          new DataInputStream(
              new BufferedInputStream(Files.newInputStream(file), ContributionRuns.BUFFER_BYTES));
    }

    /** Reads the next block; at the end closes the file. */
    private boolean next() throws IOException {
      try {
        head = ContributionBlock.read(in);
        return true;
      } catch (EOFException e) {
        in.close();
        return false;
      }
    }

    @Override
    public int compareTo(Run other) {
      return head.compareTo(other.head);
    }
  }
}
