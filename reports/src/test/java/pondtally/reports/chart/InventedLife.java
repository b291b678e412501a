package pondtally.reports.chart;

/**
 * One service life of an invented program: which pipe and watershed, until when, and how it ended.
 */
record InventedLife(String pipe, String watershed, int days, String cause, boolean retired) {

  static final String[] CAUSES = {
    "fence-dammed", "pipe-plugged", "washed-out", "pipe-chewed", "pipe-separated", "ice", "unknown"
  };

  boolean failed() {
    return !cause.isEmpty();
  }
}
