package pondtally.check;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import pondtally.record.Origin;
import pondtally.record.Sourced;

/**
 * The rows of one table that still count. A row that was set aside or found to be a duplicate is
 * gone: later rules do not look at it again.
 */
final class Rows<T extends Sourced> {

  private final String table;
  private final SortedMap<Origin, T> kept = new TreeMap<>();
  private final CheckLog log;

  Rows(String table, List<T> rows, CheckLog log) {
    this.table = table;
    this.log = log;
    for (T row : rows) {
      if (kept.put(row.origin(), row) != null) {
        throw new IllegalStateException("two rows of " + table + " at " + row.origin());
      }
    }
  }

  int size() {
    return kept.size();
  }

  /** In file order; a copy, so that rows may be judged on the way. */
  List<T> list() {
    return List.copyOf(kept.values());
  }

  /** By a key, each group in file order; rows without the key are left out. */
  <K extends Comparable<K>> SortedMap<K, List<T>> by(Function<T, K> key) {
    SortedMap<K, List<T>> groups = new TreeMap<>();
    for (T row : kept.values()) {
      K k = key.apply(row);
      if (k != null) {
        groups.computeIfAbsent(k, unused -> new ArrayList<>()).add(row);
      }
    }
    return groups;
  }

  void setAside(T row, Remark remark) {
    remove(row, RowFate.SET_ASIDE, Severity.SET_ASIDE, remark);
  }

  void duplicate(T row, Remark remark) {
    remove(row, RowFate.DUPLICATE, Severity.NOTICE, remark);
  }

  /** Drops the value of the optional field that the remark is about. */
  void drop(T row, Remark remark) {
    present(row);
    kept.put(row.origin(), Fields.without(kept.get(row.origin()), remark.field()));
    log.judge(row.origin(), table, RowFate.CHANGED);
    log.find(row.origin(), table, Severity.CHANGED, remark);
  }

  void notice(T row, Remark remark) {
    present(row);
    log.find(row.origin(), table, Severity.NOTICE, remark);
  }

  private void remove(T row, RowFate fate, Severity severity, Remark remark) {
    present(row);
    kept.remove(row.origin());
    log.judge(row.origin(), table, fate);
    log.find(row.origin(), table, severity, remark);
  }

  private void present(T row) {
    if (!kept.containsKey(row.origin())) {
      throw new IllegalStateException("judged twice: " + table + " " + row.origin());
    }
  }
}
