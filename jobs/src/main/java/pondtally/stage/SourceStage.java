package pondtally.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.spark.api.java.JavaSparkContext;
import pondtally.check.Finding;
import pondtally.check.Verdict;
import pondtally.intake.InputFile;
import pondtally.intake.PartnerFileReader;
import pondtally.intake.SourceRow;
import pondtally.record.Origin;
import scala.Tuple2;

/**
 * Fetches the original cells of the rows that have an issue, by reading the files that hold them
 * once more.
 */
final class SourceStage {

  private SourceStage() {}

  /** Rows wanted, by file and sheet. */
  static final class Wanted {
    private final SortedMap<Integer, SortedMap<Integer, SortedSet<Integer>>> rows = new TreeMap<>();

    void add(Origin origin) {
      if (origin.row() > 0) {
        rows.computeIfAbsent(origin.file(), f -> new TreeMap<>())
            .computeIfAbsent(origin.sheet(), s -> new TreeSet<>())
            .add(origin.row());
      }
    }

    void addFindings(List<Finding> findings) {
      findings.forEach(finding -> add(finding.origin()));
    }

    void addVerdicts(List<Verdict> verdicts) {
      verdicts.forEach(verdict -> add(verdict.origin()));
    }
  }

  private static List<SourceRow> cells(
      InputFile file, SortedMap<Integer, SortedSet<Integer>> rows) {
    return FileTask.run(file, local -> PartnerFileReader.cells(local, rows));
  }

  /** The wanted rows as their partners wrote them, in file order. */
  static List<SourceRow> rows(JavaSparkContext spark, List<InputFile> files, Wanted wanted) {
    List<Tuple2<InputFile, SortedMap<Integer, SortedSet<Integer>>>> tasks = new ArrayList<>();
    wanted.rows.forEach((file, rows) -> tasks.add(new Tuple2<>(files.get(file), rows)));
    if (tasks.isEmpty()) {
      return List.of();
    }
    return spark
        .parallelize(tasks, tasks.size())
        .flatMap(task -> cells(task._1, task._2).iterator())
        .collect();
  }
}
