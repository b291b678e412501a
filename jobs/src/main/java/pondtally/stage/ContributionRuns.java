package pondtally.stage;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pondtally.analysis.Contribution;

/**
 * Contributions on their way to one sorted file: each task makes rows of text, site by site, and
 * writes sorted runs of limited size into a folder that all can reach. {@link ContributionFile}
 * joins them.
 */
final class ContributionRuns implements AutoCloseable {

  private static final long RUN_BYTES = 48L << 20;
  static final int BUFFER_BYTES = 1 << 16;

  private final Path folder;
  private final ContributionLines lines;
  private final List<ContributionBlock> waiting = new ArrayList<>();
  private final List<String> runs = new ArrayList<>();
  private long waitingBytes;

  ContributionRuns(Path folder, ContributionLines lines) {
    this.folder = folder;
    this.lines = lines;
  }

  /** Adds all the contributions of some sites, in any order; they get sorted. */
  void add(List<Contribution> contributions) {
    contributions.sort(null);
    int from = 0;
    for (int to = 1; to <= contributions.size(); to++) {
      if (to == contributions.size()
          || !isTogether(contributions.get(from), contributions.get(to))) {
        add(block(contributions.subList(from, to)));
        from = to;
      }
    }
  }

  private static boolean isTogether(Contribution a, Contribution b) {
    return a.subject() == b.subject()
        && (a.siteId() == null ? b.siteId() == null : a.siteId().equals(b.siteId()));
  }

  private ContributionBlock block(List<Contribution> rows) {
    Contribution first = rows.get(0);
    String site = first.siteId() == null ? "" : first.siteId();
    return new ContributionBlock(first.subject().code(), site, rows.size(), lines.of(rows));
  }

  private void add(ContributionBlock block) {
    waiting.add(block);
    waitingBytes += block.lines().length;
    if (waitingBytes > RUN_BYTES) {
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
        for (ContributionBlock block : waiting) {
          block.write(out);
        }
      }
      runs.add(run.getFileName().toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    waiting.clear();
    waitingBytes = 0;
  }
}
