package pondtally.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pondtally.record.Install;

/**
 * Cuts a device's records into service lives. A life ends with the earliest of {@code retired_on},
 * condition {@code retired} and action {@code removed}; {@code replaced} closes it and opens the
 * next that day. An install row dated on or after such a day, and before the next one, is the next
 * life's design; after an end it also opens that life, on its own date. What was seen between an
 * end and the next installation belongs to no life. Common practice, no source.
 */
final class ServiceRule {

  private static final Comparator<Install> BY_DAY =
      Comparator.comparingInt(Install::installedOn).thenComparing(Install::origin);

  private static final int NEVER = Integer.MAX_VALUE;

  private final List<Install> rows;
  private final List<Inspection> findings;
  private final List<Service> lives = new ArrayList<>(1);
  private int nextRow = 1;
  private int nextFinding = 0;

  private ServiceRule(List<Install> rows, List<Inspection> findings) {
    this.rows = rows;
    this.findings = findings;
  }

  /**
   * Cuts the records of one device.
   *
   * @param installs all install rows of the device, at least one, in any order
   * @param findings by day
   * @return its lives in order, at least one
   */
  static List<Service> lives(List<Install> installs, List<Inspection> findings) {
    List<Install> rows = new ArrayList<>(installs);
    rows.sort(BY_DAY);
    ServiceRule rule = new ServiceRule(rows, findings);
    rule.cut();
    return rule.lives;
  }

  private void cut() {
    Install design = rows.get(0);
    Service life = open(design, HalfDays.startOf(design.installedOn()));
    while (life.closedOn() != null) {
      boolean ended = life.endedOn() != null;
      Install row = rowFor(life.closedOn(), ended ? NEVER : nextOpening(life.closedOn()));
      if (ended && row == null) {
        return;
      }
      design = row == null ? design : row;
      life = open(design, ended ? HalfDays.startOf(row.installedOn()) : life.closedOn());
    }
  }

  private Service open(Install design, int openedOn) {
    while (nextFinding < findings.size() && findings.get(nextFinding).at() < openedOn) {
      nextFinding++;
    }
    Install retiredBy = retirement(design, openedOn);
    int retiredOn = retiredBy == null ? NEVER : retiredOn(retiredBy);
    Service life = closed(design, openedOn, takeUp(retiredOn), retiredBy, retiredOn);
    lives.add(life);
    return life;
  }

  /** The findings of the life that opens, up to the one that closes it. */
  private List<Inspection> takeUp(int retiredOn) {
    int first = nextFinding;
    boolean open = true;
    while (open && nextFinding < findings.size() && findings.get(nextFinding).at() <= retiredOn) {
      Inspection found = findings.get(nextFinding++);
      open = !found.ends() && !found.replaced();
    }
    return findings.subList(first, nextFinding);
  }

  private static Service closed(
      Install design, int openedOn, List<Inspection> own, Install retiredBy, int retiredOn) {
    Inspection last = own.isEmpty() ? null : own.get(own.size() - 1);
    if (last != null && last.ends()) {
      Install says = last.at() == retiredOn ? retiredBy : design;
      return new Service(design, openedOn, own, null, last.at(), says.retiredReason());
    }
    if (last != null && last.replaced() && last.at() < retiredOn) {
      return new Service(design, openedOn, own, last.at(), null, null);
    }
    return retiredBy == null
        ? new Service(design, openedOn, own, null, null, null)
        : new Service(design, openedOn, own, null, retiredOn, retiredBy.retiredReason());
  }

  /** The row whose retirement comes first in a life opened then; null where there is none. */
  private Install retirement(Install design, int openedOn) {
    Install first = null;
    for (Install row : rows) {
      // A retirement on the opening day ends this life only if its own row says so; another row's
      // ended the life before.
      if (row.retiredOn() != null
          && (sameRow(row, design) ? retiredOn(row) >= openedOn : retiredOn(row) > openedOn)
          && (first == null || row.retiredOn() < first.retiredOn())) {
        first = row;
      }
    }
    return first;
  }

  private static boolean sameRow(Install a, Install b) {
    return a.origin().equals(b.origin());
  }

  private static int retiredOn(Install row) {
    return HalfDays.startOf((int) row.retiredOn());
  }

  /** The next unused install row dated within [from, before); null where there is none. */
  private Install rowFor(int from, int before) {
    while (nextRow < rows.size() && HalfDays.startOf(rows.get(nextRow).installedOn()) < from) {
      nextRow++;
    }
    if (nextRow == rows.size() || HalfDays.startOf(rows.get(nextRow).installedOn()) >= before) {
      return null;
    }
    return rows.get(nextRow++);
  }

  /** The next day, after those taken up, on which a life is replaced or ends. */
  private int nextOpening(int closedOn) {
    int next = NEVER;
    for (Install row : rows) {
      if (row.retiredOn() != null && retiredOn(row) > closedOn) {
        next = Math.min(next, retiredOn(row));
      }
    }
    for (Inspection found : findings.subList(nextFinding, findings.size())) {
      if (found.ends() || found.replaced()) {
        return Math.min(next, found.at());
      }
    }
    return next;
  }
}
