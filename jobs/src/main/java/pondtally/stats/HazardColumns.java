package pondtally.stats;

import java.util.ArrayList;
import java.util.List;

/**
 * Which columns carry information of their own at β = 0, taken in order; a column that does not
 * gets a plain reason. The rest of a redundant set stays, so later levels give way to earlier ones.
 */
final class HazardColumns {
  private static final double FLAT = 1e-12;
  private static final double REDUNDANT = 1e-9;

  private final List<Integer> kept = new ArrayList<>();
  private final String[] reason;

  private HazardColumns(int columns) {
    reason = new String[columns];
  }

  static HazardColumns of(HazardData data, HazardDesign design, double[][] information) {
    HazardColumns columns = new HazardColumns(information.length);
    for (int j = 0; j < information.length; j++) {
      columns.judge(j, data, design, information);
    }
    return columns;
  }

  private void judge(int j, HazardData data, HazardDesign design, double[][] information) {
    double spread = 0;
    for (double[] row : data.x) {
      spread = Math.max(spread, Math.abs(row[j]));
    }
    if (data.failures == 0) {
      reason[j] = "no device failed";
    } else if (data.livesWith[j] == 0) {
      reason[j] = "no device at this level";
    } else if (information[j][j] <= FLAT * data.failures * spread * spread) {
      reason[j] = "at every failure all devices it could be compared with had the same value";
    } else {
      String same = sameAs(j, design, information);
      if (same.isEmpty()) {
        kept.add(j);
      } else {
        reason[j] = "tells nothing that is not told by " + same;
      }
    }
  }

  /** The kept columns that together make this one; empty if it is new. */
  private String sameAs(int j, HazardDesign design, double[][] information) {
    int[] before = kept();
    double[] with = new double[before.length];
    for (int i = 0; i < before.length; i++) {
      with[i] = information[before[i]][j];
    }
    double[] weights =
        HazardInverse.times(HazardInverse.of(HazardInverse.part(information, before)), with);
    double left = information[j][j];
    for (int i = 0; i < before.length; i++) {
      left -= weights[i] * with[i];
    }
    if (left > REDUNDANT * information[j][j]) {
      return "";
    }
    List<String> names = new ArrayList<>();
    for (int i = 0; i < before.length; i++) {
      if (Math.abs(weights[i]) > 1e-6) {
        names.add(design.columns().get(before[i]).label());
      }
    }
    return String.join(", ", names);
  }

  /** Numbers of the columns with information of their own. */
  int[] kept() {
    return kept.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Why a column was left out; null if it was not. */
  String reason(int column) {
    return reason[column];
  }
}
