package pondtally.stage;

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
import pondtally.record.Sourced;

/** Reads every partner file, one task a file, because only then has a row a place to name. */
public final class IntakeStage {

  private IntakeStage() {}

  /** Reads {@code files}; each is read once however often the records are used. */
  public static Inputs read(
      JavaSparkContext spark, List<InputFile> files, IntakeSettings settings) {
    JavaRDD<FileContent> contents =
        spark
            .parallelize(files, Math.max(1, files.size()))
            .map(file -> read(file, settings))
            .persist(StorageLevel.MEMORY_AND_DISK());
    List<SheetReport> reports =
        new ArrayList<>(contents.flatMap(content -> content.reports().iterator()).collect());
    reports.sort(Comparator.comparingInt(SheetReport::file).thenComparingInt(SheetReport::sheet));
    return new Inputs(files, reports, contents.flatMap(content -> content.records().iterator()));
  }

  private static FileContent read(InputFile file, IntakeSettings settings) {
    List<Sourced> records = new ArrayList<>();
    List<SheetReport> reports = PartnerFileReader.read(file, settings, records::add);
    return new FileContent(new ArrayList<>(reports), records);
  }
}
