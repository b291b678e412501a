package pondtally.app;

import java.util.List;
import java.util.Map;
import pondtally.check.DataIssue;
import pondtally.check.RowAccount;
import pondtally.intake.ProgramFiles;
import pondtally.table.ResultTable;
import pondtally.table.TableFile;

/**
 * What a run found.
 *
 * @param program the input files, in order, and what is stated about them
 * @param tables every result table, in reading order
 * @param longTables tables that are in the folder already
 * @param facts what reports have to know besides the tables, by name
 * @param account what became of the rows of each sheet
 * @param issues what was noticed
 * @param settings the text of {@code program.yaml}; empty where there is none
 */
public record JobResult(
    ProgramFiles program,
    List<ResultTable> tables,
    List<TableFile> longTables,
    Map<String, String> facts,
    List<RowAccount> account,
    List<DataIssue> issues,
    String settings) {}
