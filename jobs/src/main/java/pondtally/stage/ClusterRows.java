package pondtally.stage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pondtally.record.Area;
import pondtally.record.ClusterRecords;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Property;
import pondtally.record.Removal;
import pondtally.record.Request;
import pondtally.record.Site;
import pondtally.record.Sourced;
import pondtally.record.Visit;

/**
 * Sorts the rows of a cluster, which a shuffle brings in any order, back into file order and by
 * table.
 */
final class ClusterRows {

  private ClusterRows() {}

  static ClusterRecords sorted(String cluster, Iterable<Sourced> rows) {
    List<Sourced> sorted = new ArrayList<>();
    rows.forEach(sorted::add);
    sorted.sort(Comparator.comparing(Sourced::origin));
    return new ClusterRecords(
        cluster,
        only(Site.class, sorted),
        only(Install.class, sorted),
        only(MaterialLine.class, sorted),
        only(Visit.class, sorted),
        only(Removal.class, sorted),
        only(Property.class, sorted),
        only(Area.class, sorted),
        only(Request.class, sorted));
  }

  /** The rows of one kind, in the same order. */
  static <T extends Sourced> List<T> only(Class<T> type, List<Sourced> rows) {
    List<T> some = new ArrayList<>();
    for (Sourced row : rows) {
      if (type.isInstance(row)) {
        some.add(type.cast(row));
      }
    }
    return some;
  }
}
