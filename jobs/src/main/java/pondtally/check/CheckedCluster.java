package pondtally.check;

import java.io.Serializable;
import java.util.List;
import pondtally.record.ClusterRecords;

/**
 * A cluster after its rows were checked against each other. Each row that went in is either in
 * {@code kept} or has a verdict of {@link RowFate#SET_ASIDE} or {@link RowFate#DUPLICATE}; a kept
 * row that lost a value has a verdict of {@link RowFate#CHANGED}.
 *
 * @param kept the rows that count, in file order
 * @param findings what was noticed, in file order
 * @param verdicts fates that differ from the one the row came with, in file order, one a row
 */
public record CheckedCluster(ClusterRecords kept, List<Finding> findings, List<Verdict> verdicts)
    implements Serializable {}
