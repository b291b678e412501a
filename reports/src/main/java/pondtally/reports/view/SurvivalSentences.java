package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** How long devices last, in sentences, and whether pipe types differ. */
final class SurvivalSentences {

  static final int[] HORIZONS = {10, 5, 3, 1};
  private static final int MOST_PIPES = 6;
  private static final double SIGNIFICANT = 0.05;

  private SurvivalSentences() {}

  static List<Sentence> of(TablePackage tables) {
    List<Sentence> sentences = new ArrayList<>();
    Rows all = Rows.of(tables, "survival_summary").where("method", SurvivalMethod.of());
    if (all.list().isEmpty()) {
      return sentences;
    }
    working(all.where("grouping", "all").where("group", "all"), sentences);
    median(all.where("grouping", "all").where("group", "all"), sentences);
    SurvivalChecks.undated(tables, sentences);
    Rows pipes = all.where("grouping", "pipe");
    pipes.list().stream()
        .sorted(Groups.bySize())
        .filter(row -> !Groups.isSmall(Line.of(row), tables))
        .limit(MOST_PIPES)
        .forEach(row -> working(pipes.where("group", row.text("group")), sentences));
    small(pipes, tables, sentences);
    compared(tables, sentences);
    SurvivalChecks.withinWatersheds(tables, sentences);
    return sentences;
  }

  /** At the greatest age that the group's records reach. */
  static void working(Rows row, List<Sentence> sentences) {
    Optional<Row> found = row.first();
    if (found.isEmpty()) {
      return;
    }
    String grouping = found.get().text("grouping");
    String devices =
        grouping.equals("all")
            ? Messages.of("common.all-devices")
            : Groups.devices(grouping, found.get().text("group"));
    for (int years : HORIZONS) {
      String column = "survival_" + years + "y";
      Optional<Estimate> share =
          Estimate.of(
              Cells.number(found.get(), column),
              Cells.number(found.get(), column + "_lower"),
              Cells.number(found.get(), column + "_upper"));
      if (share.isPresent()) {
        sentences.add(
            based(row, "view.SurvivalSentences.go-without-a-failure")
                .words("devices", devices)
                .cell(
                    "share",
                    row,
                    share.get().ofHundred(),
                    column,
                    column + "_lower",
                    column + "_upper")
                .words("years", NumberText.years(years))
                .build());
        return;
      }
    }
    sentences.add(
        based(row, "view.SurvivalSentences.how-many-of-go-a-year")
            .words("devices", devices)
            .build());
  }

  private static Said based(Rows row, String key) {
    Row found = row.first().orElseThrow();
    return Said.of(key)
        .cell("followed", row, Cells.count(found, "devices", "devices"), "devices")
        .cell("failures", row, Cells.count(found, "failures", "first failures"), "failures");
  }

  static void median(Rows row, List<Sentence> sentences) {
    if (row.first().isEmpty()) {
      return;
    }
    Row found = row.first().get();
    if (Cells.number(found, "median_years").isEmpty()) {
      sentences.add(Said.of("view.SurvivalSentences.fewer-than-half-of-the-devices").build());
      return;
    }
    double years = Cells.number(found, "median_years").getAsDouble();
    boolean hasLower = Cells.number(found, "median_lower").isPresent();
    boolean hasUpper = Cells.number(found, "median_upper").isPresent();
    Said said =
        Said.of(
                !hasLower
                    ? "view.SurvivalSentences.half-have-failed-by"
                    : hasUpper
                        ? "view.SurvivalSentences.half-have-failed-by-likely"
                        : "view.SurvivalSentences.half-have-failed-by-or-more")
            .cell("median", row, NumberText.measured(years, 1, "years"), "median_years");
    if (hasLower) {
      said.cell("lower", row, oneDecimal(found, "median_lower"), "median_lower");
    }
    if (hasLower && hasUpper) {
      said.cell("upper", row, oneDecimal(found, "median_upper"), "median_upper");
    }
    sentences.add(said.build());
  }

  private static String oneDecimal(Row row, String column) {
    return NumberText.decimal(Cells.number(row, column).orElseThrow(), 1);
  }

  static void small(Rows pipes, TablePackage tables, List<Sentence> sentences) {
    String small = named(pipes, row -> !isWithheld(row) && Groups.isSmall(Line.of(row), tables));
    if (!small.isEmpty()) {
      sentences.add(
          Said.of("view.SurvivalSentences.too-few-devices-to-compare-fewer")
              .fact("groupsBelow", "groups_below", count(Groups.smallBelow(tables)))
              .words("part", small)
              .build());
    }
    String withheld = named(pipes, SurvivalSentences::isWithheld);
    if (!withheld.isEmpty()) {
      sentences.add(
          Said.of("view.SurvivalSentences.withheld-in-this-edition")
              .fact("groupsBelow", "groups_below", count(Groups.smallBelow(tables)))
              .words("pipes", withheld)
              .build());
    }
  }

  private static String count(double number) {
    return NumberText.count((long) number);
  }

  /** Kept back in the public edition; how large the group is, is kept back as well. */
  private static boolean isWithheld(Row row) {
    return row.text("devices").equals(Line.WITHHELD);
  }

  private static String named(Rows pipes, Predicate<Row> which) {
    return pipes.list().stream()
        .filter(which)
        .map(row -> GroupText.label("pipe", row.text("group")))
        .collect(Collectors.joining("; "));
  }

  /** What the test of all pipe types together supports, and no more. */
  static void compared(TablePackage tables, List<Sentence> sentences) {
    Rows tests = Rows.of(tables, "group_tests").where("grouping", "pipe");
    Rows together =
        tests
            .only(row -> row.text("test").startsWith("log-rank"))
            .where("group_a", "")
            .where("group_b", "");
    Optional<Row> test = together.first();
    if (test.isEmpty() || Cells.number(test.get(), "p_value").isEmpty()) {
      return;
    }
    double p = Cells.number(test.get(), "p_value").getAsDouble();
    Rows named =
        together.where("test", test.get().text("test")).where("strata", test.get().text("strata"));
    if (p >= SIGNIFICANT) {
      sentences.add(
          Said.of("view.SurvivalSentences.the-records-do-not-show-that")
              .cell("pValue", named, probability(p), "p_value")
              .build());
      return;
    }
    sentences.add(
        Said.of("view.SurvivalSentences.pipe-types-differ-in-how-long")
            .cell("pValue", named, probability(p), "p_value")
            .words("pairs", pairs(tests, tables))
            .build());
  }

  private static String pairs(Rows tests, TablePackage tables) {
    List<Row> pipes = Rows.of(tables, "survival_summary").where("grouping", "pipe").list();
    List<String> small =
        pipes.stream()
            .filter(row -> Groups.isSmall(Line.of(row), tables))
            .map(row -> row.text("group"))
            .toList();
    String pairs =
        tests.list().stream()
            .filter(row -> !row.text("group_a").isEmpty() && !row.text("group_b").isEmpty())
            .filter(row -> Cells.number(row, "p_adjusted").orElse(1) < SIGNIFICANT)
            .filter(row -> !small.contains(row.text("group_a")))
            .filter(row -> !small.contains(row.text("group_b")))
            .map(
                row ->
                    Messages.of(
                        "view.SurvivalSentences.from",
                        Map.of(
                            "pipe",
                            GroupText.label("pipe", row.text("group_a")),
                            "pipe2",
                            GroupText.label("pipe", row.text("group_b")))))
            .distinct()
            .collect(Collectors.joining("; "));
    return pairs.isEmpty()
        ? Messages.of("view.SurvivalSentences.no-single-pair-is-far-enough")
        : Messages.of("view.SurvivalSentences.pairs-that-differ", Map.of("pairs", pairs));
  }

  static String probability(double p) {
    return p < 0.001
        ? Messages.of("view.SurvivalSentences.p-below-0-001")
        : "p = " + NumberText.decimal(p, 3);
  }
}
