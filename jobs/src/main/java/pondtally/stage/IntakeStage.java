package pondtally.stage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import org.apache.spark.TaskContext;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.storage.StorageLevel;
import org.apache.spark.util.TaskCompletionListener;
import pondtally.check.SheetReport;
import pondtally.intake.InputFile;
import pondtally.intake.IntakeSettings;
import pondtally.intake.PartnerFileReader;
import pondtally.intake.ProgramFiles;
import pondtally.record.Sourced;
import scala.Tuple2;

/**
 * Reads every partner file whole in one task, because only then has a row a place to name; small
 * files share a task.
 */
public final class IntakeStage {

  private static final long BYTES_PER_PARTITION = 8L << 20;
  private static final long MOST_IN_MEMORY = 128L << 20;
  private static final int MOST_PARTITIONS = 1000;
  private static final int TASKS_PER_CORE = 8;

  private IntakeStage() {}

  /** Reads the files of a program; each is read once however often its rows are used. */
  public static Inputs read(
      JavaSparkContext spark, ProgramFiles programFiles, IntakeSettings settings) {
    List<InputFile> files = programFiles.files();
    long bytes = bytes(files);
    int partitions = partitions(spark, bytes);
    Progress.now(Progress.Step.READING);
    JavaRDD<FileContent> contents =
        spark
            .parallelize(files, tasks(spark, files))
            .mapPartitions(some -> read(some, settings, partitions))
            .persist(
                bytes < MOST_IN_MEMORY ? StorageLevel.MEMORY_AND_DISK() : StorageLevel.DISK_ONLY());
    List<SheetReport> reports = new ArrayList<>();
    List<byte[]> programRows = new ArrayList<>();
    for (Tuple2<List<SheetReport>, byte[]> found :
        contents.map(content -> new Tuple2<>(content.reports(), content.programRows())).collect()) {
      reports.addAll(found._1);
      programRows.add(found._2);
    }
    reports.sort(Comparator.comparingInt(SheetReport::file).thenComparingInt(SheetReport::sheet));
    List<Sourced> program = Buckets.records(programRows);
    program.sort(Comparator.comparing(Sourced::origin));
    return new Inputs(files, programFiles.aliases(), reports, program, contents, partitions);
  }

  private static int tasks(JavaSparkContext spark, List<InputFile> files) {
    return Math.max(1, Math.min(files.size(), TASKS_PER_CORE * spark.defaultParallelism()));
  }

  private static Iterator<FileContent> read(
      Iterator<InputFile> files, IntakeSettings settings, int partitions) throws IOException {
    ContentSpool rows = new ContentSpool(partitions);
    TaskContext.get().addTaskCompletionListener((TaskCompletionListener) task -> rows.close());
    List<SheetReport> reports = new ArrayList<>();
    while (files.hasNext()) {
      reports.addAll(
          FileTask.run(
              files.next(),
              local -> PartnerFileReader.read(local, settings, row -> take(row, rows))));
    }
    return rows.blocks(reports);
  }

  private static void take(Sourced row, ContentSpool rows) {
    Progress.row();
    rows.add(row);
  }

  private static long bytes(List<InputFile> files) {
    long bytes = 0;
    try {
      for (InputFile file : files) {
        bytes += LocalFile.bytes(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes;
  }

  private static int partitions(JavaSparkContext spark, long bytes) {
    long wanted = Math.max(spark.defaultParallelism(), bytes / BYTES_PER_PARTITION);
    return (int) Math.min(MOST_PARTITIONS, wanted);
  }
}
