package pondtally.stage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.storage.StorageLevel;
import pondtally.check.SheetReport;
import pondtally.intake.InputFile;
import pondtally.intake.IntakeSettings;
import pondtally.intake.PartnerFileReader;
import pondtally.intake.ProgramFiles;
import pondtally.record.Sourced;
import scala.Tuple2;

/** Reads every partner file, one task a file, because only then has a row a place to name. */
public final class IntakeStage {

  private static final long BYTES_PER_PARTITION = 8L << 20;
  private static final int MOST_PARTITIONS = 1000;

  private IntakeStage() {}

  /** Reads the files of a program; each is read once however often its rows are used. */
  public static Inputs read(
      JavaSparkContext spark, ProgramFiles programFiles, IntakeSettings settings) {
    List<InputFile> files = programFiles.files();
    int partitions = partitions(spark, files);
    JavaRDD<FileContent> contents =
        spark
            .parallelize(files, Math.max(1, files.size()))
            .map(file -> read(file, settings, partitions))
            .persist(StorageLevel.MEMORY_AND_DISK());
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

  private static FileContent read(InputFile file, IntakeSettings settings, int partitions) {
    FileContent.Packer rows = new FileContent.Packer(partitions);
    return FileTask.run(
        file, local -> rows.pack(PartnerFileReader.read(local, settings, rows::add)));
  }

  private static int partitions(JavaSparkContext spark, List<InputFile> files) {
    long bytes = 0;
    try {
      for (InputFile file : files) {
        bytes += LocalFile.bytes(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    long wanted = Math.max(spark.defaultParallelism(), bytes / BYTES_PER_PARTITION);
    return (int) Math.min(MOST_PARTITIONS, wanted);
  }
}
