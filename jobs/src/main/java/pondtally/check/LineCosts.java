package pondtally.check;

import pondtally.record.MaterialLine;

/** The cost of a material line: its total, else quantity times unit cost. */
final class LineCosts {

  /** Printed prices are rounded to the cent: half a cent a unit and half a cent on the total. */
  private static final double HALF_CENT_USD = 0.005;

  private static final String NO_COST =
      """
          The line has neither a unit cost nor a total that could be used. The row \
          was set aside. Add one of the two.""";

  private LineCosts() {}

  static void apply(OpenCluster cluster) {
    for (MaterialLine row : cluster.materials.list()) {
      if (row.unitCostUsd() == null && row.totalCostUsd() == null) {
        cluster.materials.setAside(row, Remark.row(CheckRule.COST_MISSING, NO_COST));
      } else if (row.unitCostUsd() != null && row.totalCostUsd() != null && inconsistent(row)) {
        cluster.materials.notice(row, remark(row));
      }
    }
  }

  /** Nominal dollars of the line. */
  static double usd(MaterialLine row) {
    return row.totalCostUsd() != null ? row.totalCostUsd() : row.quantity() * row.unitCostUsd();
  }

  private static boolean inconsistent(MaterialLine row) {
    double product = row.quantity() * row.unitCostUsd();
    double rounding = HALF_CENT_USD * (Math.abs(row.quantity()) + 1);
    return Math.abs(product - row.totalCostUsd()) > rounding + 1e-9 * Math.abs(product);
  }

  private static Remark remark(MaterialLine row) {
    double product = row.quantity() * row.unitCostUsd();
    String message =
        """
            %s × %s is %s, but the total of the line is %s. The total is used. If it \
            includes tax or freight, nothing needs correcting."""
            .formatted(
                Words.number(row.quantity()),
                Words.usd(row.unitCostUsd()),
                Words.usd(product),
                Words.usd(row.totalCostUsd()));
    return Remark.cell(
        CheckRule.COST_INCONSISTENT, "total_cost_usd", Words.number(row.totalCostUsd()), message);
  }
}
