package pondtally.reports.chart;

/** Hazard ratios, written down as they are to be seen. */
final class InventedHazards {

  private final TestTables tables;

  InventedHazards(TestTables tables) {
    this.tables = tables;
  }

  void hazards(boolean anyFailed) {
    if (!anyFailed) {
      tables.row(
          "hazard_ratios",
          "model",
          "pipe",
          "term",
          "pipe",
          "level",
          "single 10 in",
          "reference",
          "dual 12 in",
          "devices",
          12,
          "failures",
          0,
          "reason",
          "no failure at any level");
      return;
    }
    Object[][] levels = {
      {"pipe", "pipe", "single 10 in", "dual 12 in", 78, 38, 2.9, 1.6, 5.2, 0.0004},
      {"pipe", "pipe", "dual 15 in", "dual 12 in", 41, 7, 0.8, 0.34, 1.9, 0.6},
      {"pipe", "pipe", "smooth 8 in", "dual 12 in", 9, 0, null, null, null, null},
      {"adjusted", "pipe", "single 10 in", "dual 12 in", 78, 38, 2.4, 1.2, 4.7, 0.01},
      {"adjusted", "build", "not-met", "met", 60, 26, 1.7, 0.9, 3.3, 0.1},
      {"adjusted", "kind", "culvert-fence", "pond-leveler", 4, 1, 1.1, 0.01, 80.0, 0.9},
      {"adjusted", "cohort", "2022", "2018", 30, 9, 1.05, 0.6, 1.9, 0.8}
    };
    for (Object[] level : levels) {
      tables.row(
          "hazard_ratios",
          "model",
          level[0],
          "term",
          level[1],
          "level",
          level[2],
          "reference",
          level[3],
          "devices",
          level[4],
          "failures",
          level[5],
          "hazard_ratio",
          level[6],
          "lower",
          level[7],
          "upper",
          level[8],
          "p_value",
          level[9],
          "reason",
          level[6] == null ? "no failure at this level" : "");
    }
  }
}
