package pondtally.stage;

import java.util.List;
import pondtally.check.DataIssue;
import pondtally.check.RowAccount;
import pondtally.table.ResultTable;

/**
 * What a run found.
 *
 * @param tables every result table, in reading order
 * @param account what became of the rows of each sheet
 * @param issues what was noticed
 */
public record Results(List<ResultTable> tables, List<RowAccount> account, List<DataIssue> issues) {}
