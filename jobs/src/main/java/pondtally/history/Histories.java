package pondtally.history;

import java.util.List;
import pondtally.record.ClusterRecords;

/**
 * Turns the checked rows of a cluster into the histories of its devices, sites, ponds and
 * properties.
 */
public final class Histories {

  private Histories() {}

  /** The histories of one cluster. The order of the rows does not matter. */
  public static ClusterHistory of(ClusterRecords records, HistoryRules rules) {
    return new ClusterHistory(records, List.of(), List.of(), List.of());
  }
}
