package pondtally.stage;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
import pondtally.analysis.Contribution;

/**
 * Contributions on their way to one sorted file: each task writes sorted runs of limited length
 * into a folder that all can reach, and the runs are merged in order, one row of each in memory.
 */
final class ContributionRuns implements AutoCloseable {

  private static final int RUN_LENGTH = 100_000;
  private static final int BUFFER_BYTES = 1 << 16;

  private final Path folder;
  private final List<Contribution> waiting = new ArrayList<>();
  private final List<String> runs = new ArrayList<>();

  ContributionRuns(Path folder) {
    this.folder = folder;
  }

  void add(Contribution contribution) {
    waiting.add(contribution);
    if (waiting.size() == RUN_LENGTH) {
      close();
    }
  }

  /** Names of the runs written so far. */
  List<String> runs() {
    return runs;
  }

  /** Writes what is waiting. */
  @Override
  public void close() {
    if (waiting.isEmpty()) {
      return;
    }
    waiting.sort(null);
    try {
      Path run = Files.createTempFile(folder, "run-", ".bin");
      try (DataOutputStream out =
          new DataOutputStream(
              new BufferedOutputStream(Files.newOutputStream(run), BUFFER_BYTES))) {
        for (Contribution contribution : waiting) {
          contribution.write(out);
        }
      }
      runs.add(run.getFileName().toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    waiting.clear();
  }

  /** Takes rows in order. */
  interface Sink {
    void accept(Contribution contribution) throws IOException;
  }

  /** Hands over the rows of all runs in order. */
  static void merge(Path folder, List<String> runs, Sink into) throws IOException {
    PriorityQueue<Run> heads = new PriorityQueue<>();
    try {
      for (String name : runs) {
        Run run = new Run(folder.resolve(name));
        if (run.next()) {
          heads.add(run);
        }
      }
      while (!heads.isEmpty()) {
        Run least = heads.remove();
        into.accept(least.head);
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

  private static final class Run implements Comparable<Run> {
    private final DataInputStream in;
    private Contribution head;

    Run(Path file) throws IOException {
      in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file), BUFFER_BYTES));
    }

    /** Reads the next row; at the end closes the file. */
    private boolean next() throws IOException {
      try {
        head = Contribution.read(in);
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
