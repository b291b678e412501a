package pondtally.check;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pondtally.record.Origin;

/**
 * Moves rows from the fate they were read with to the one they ended with. A row moves once, to the
 * gravest of its verdicts, so that the four fates still add up to the rows read.
 */
final class RowLedger {

  private final Map<SheetPlace, Map<Origin, RowFate>> moved = new TreeMap<>();

  RowLedger(List<Verdict> verdicts) {
    for (Verdict verdict : verdicts) {
      moved
          .computeIfAbsent(SheetPlace.of(verdict.origin()), unused -> new TreeMap<>())
          .merge(verdict.origin(), verdict.fate(), RowLedger::graver);
    }
  }

  private static RowFate graver(RowFate a, RowFate b) {
    return gravity(a) >= gravity(b) ? a : b;
  }

  private static int gravity(RowFate fate) {
    return switch (fate) {
      case USED -> 0;
      case CHANGED -> 1;
      case DUPLICATE -> 2;
      case SET_ASIDE -> 3;
    };
  }

  /** Sheets that have a verdict. */
  Collection<SheetPlace> sheets() {
    return moved.keySet();
  }

  /** The counts of a sheet after its verdicts. */
  RowCounts after(SheetPlace sheet, RowCounts before) {
    Map<RowFate, Long> shift = new EnumMap<>(RowFate.class);
    moved
        .getOrDefault(sheet, Map.of())
        .forEach(
            (origin, fate) -> {
              RowFate from = origin.changed() ? RowFate.CHANGED : RowFate.USED;
              if (gravity(fate) > gravity(from)) {
                shift.merge(from, -1L, Long::sum);
                shift.merge(fate, 1L, Long::sum);
              }
            });
    return new RowCounts(
        before.read(),
        before.used() + shift.getOrDefault(RowFate.USED, 0L),
        before.changed() + shift.getOrDefault(RowFate.CHANGED, 0L),
        before.setAside() + shift.getOrDefault(RowFate.SET_ASIDE, 0L),
        before.duplicate() + shift.getOrDefault(RowFate.DUPLICATE, 0L));
  }
}
