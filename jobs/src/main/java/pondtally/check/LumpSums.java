package pondtally.check;

import java.util.List;
import java.util.SortedMap;
import pondtally.record.Install;
import pondtally.record.MaterialLine;

/**
 * A lump sum beside material lines of the same install: lines and hours win. Lines bought after the
 * install are upkeep and do not compete with it. Hours have no price here, so that a lump sum
 * beside lines and hours is always reported.
 */
final class LumpSums {

  private LumpSums() {}

  static void apply(OpenCluster cluster) {
    SortedMap<String, List<MaterialLine>> lines = cluster.materials.by(MaterialLine::deviceId);
    for (List<Install> lives : cluster.lives().values()) {
      Install first = lives.get(0);
      List<MaterialLine> building =
          lines.getOrDefault(first.deviceId(), List.of()).stream()
              .filter(line -> isBuilding(line, first))
              .toList();
      if (first.installCostUsd() != null && !building.isEmpty()) {
        compare(cluster, first, building);
      }
    }
  }

  private static boolean isBuilding(MaterialLine line, Install install) {
    return line.purchasedOn() == null || line.purchasedOn() <= install.installedOn();
  }

  private static void compare(OpenCluster cluster, Install row, List<MaterialLine> lines) {
    double linesUsd = lines.stream().mapToDouble(LineCosts::usd).sum();
    String hours = hours(row);
    boolean equal = Math.abs(linesUsd - row.installCostUsd()) < 0.005;
    if (equal && hours.isEmpty()) {
      return;
    }
    String message =
        """
            The lump sum of %s stands beside %s of %s%s. The lines%s are counted, \
            the lump sum is not. If it holds something more, add a line for that."""
            .formatted(
                Words.usd(row.installCostUsd()),
                Words.count(lines.size(), "material line"),
                Words.usd(linesUsd),
                hours,
                hours.isEmpty() ? "" : " and hours");
    cluster.installs.notice(
        row,
        Remark.cell(
            CheckRule.LUMP_SUM_BESIDE_LINES,
            "install_cost_usd",
            Words.number(row.installCostUsd()),
            message));
  }

  private static String hours(Install row) {
    double hours = orZero(row.laborHours()) + orZero(row.volunteerHours());
    return hours > 0 ? " and " + Words.number(hours) + " hours" : "";
  }

  static double orZero(Double number) {
    return number == null ? 0 : number;
  }
}
