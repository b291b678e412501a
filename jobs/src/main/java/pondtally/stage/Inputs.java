package pondtally.stage;

import java.util.List;
import org.apache.spark.api.java.JavaRDD;
import pondtally.check.SheetReport;
import pondtally.intake.InputFile;
import pondtally.record.Sourced;

/**
 * A program folder after every file was read once.
 *
 * @param files all input files, in order
 * @param reports what was found in each sheet, in file and sheet order
 * @param records every row that was read well, spread over the cluster
 */
public record Inputs(List<InputFile> files, List<SheetReport> reports, JavaRDD<Sourced> records) {}
