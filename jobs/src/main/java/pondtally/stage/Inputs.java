package pondtally.stage;

import java.util.List;
import org.apache.spark.api.java.JavaRDD;
import pondtally.check.SheetReport;
import pondtally.intake.Alias;
import pondtally.intake.InputFile;
import pondtally.record.Sourced;

/**
 * A program folder after every file was read once.
 *
 * @param files all input files, in order
 * @param aliases rows of {@code aliases.csv}
 * @param reports what was found in each sheet, in file and sheet order
 * @param programRows budgets and expenses: few, whatever the number of devices
 * @param contents every other row that was read well, packed, spread over the cluster
 * @param partitions of the shuffles to come
 */
public record Inputs(
    List<InputFile> files,
    List<Alias> aliases,
    List<SheetReport> reports,
    List<Sourced> programRows,
    JavaRDD<FileContent> contents,
    int partitions) {}
