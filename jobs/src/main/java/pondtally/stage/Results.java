package pondtally.stage;

import java.util.List;
import pondtally.check.DataIssue;
import pondtally.check.RowAccount;
import pondtally.table.ResultTable;
import pondtally.table.TableFile;

/**
 * What a run found.
 *
 * @param tables every result table held in memory, in reading order
 * @param files long tables that were written by row
 * @param account what became of the rows of each sheet
 * @param issues what was noticed
 */
public record Results(
    List<ResultTable> tables,
    List<TableFile> files,
    List<RowAccount> account,
    List<DataIssue> issues) {}
