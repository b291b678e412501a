package pondtally.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pondtally.record.Origin;

/** Findings and verdicts of one cluster as they come up. */
final class CheckLog {

  private static final Comparator<Finding> ORDER =
      Comparator.comparing(Finding::origin)
          .thenComparing(Finding::rule)
          .thenComparing(Finding::field, Comparator.nullsFirst(Comparator.naturalOrder()))
          .thenComparing(Finding::message);

  private final List<Finding> findings = new ArrayList<>();
  private final Map<Origin, Verdict> verdicts = new TreeMap<>();

  void find(Origin origin, String table, Severity severity, Remark remark) {
    findings.add(
        new Finding(
            origin,
            table,
            remark.field(),
            null,
            remark.value(),
            severity,
            remark.rule().code(),
            remark.message(),
            remark.suggestion()));
  }

  /** The last verdict stands: a row that lost a value may still be set aside. */
  void judge(Origin origin, String table, RowFate fate) {
    verdicts.put(origin, new Verdict(origin, table, fate));
  }

  List<Finding> findings() {
    return findings.stream().sorted(ORDER).toList();
  }

  List<Verdict> verdicts() {
    return List.copyOf(verdicts.values());
  }
}
