package pondtally.reports.page;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Rows;

/** Tests, ratios and fits, for readers who want them. */
final class TestTables {

  private static final List<String> PAIRED = List.of("pipe", "kind");
  private static final String ACROSS_ONE = Messages.of("common.Limits-that-reach-across-1-the");

  private TestTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    return Stream.of(
            hazards(tables),
            tests(tables),
            meanLife(tables),
            rateRatios(tables),
            sampleSize(tables),
            dating(tables),
            fits(tables))
        .map(PageTable::fold);
  }

  private static PageTable tests(TablePackage tables) {
    Rows rows =
        Rows.of(tables, "group_tests")
            .only(row -> row.text("group_a").isEmpty() || PAIRED.contains(row.text("grouping")));
    return Grid.of(tables, "group_tests", "test", "grouping", "strata", "group_a", "group_b")
        .note(Messages.of("common.A-large-p-does-not-show"))
        .note(Messages.of("page.TestTables.pairs-other-than-of-pipe-types"))
        .head(Messages.of("page.TestTables.test"), "test", GroupText::words)
        .head(Messages.of("page.TestTables.between"), "grouping", GroupText::grouping)
        .named(Messages.of("page.TestTables.groups"), TestTables::pair)
        .named(Messages.of("page.TestTables.within"), TestTables::strata)
        .number(Shape.TWO, "statistic")
        .number(Shape.COUNT, "df")
        .number(Shape.PROBABILITY, "p_value", "p_adjusted")
        .words(text -> text, "note")
        .build(Messages.of("page.TestTables.tests-of-differences-between-groups"), rows);
  }

  private static String pair(Row row) {
    if (row.text("group_a").isEmpty() && row.text("group_b").isEmpty()) {
      return Messages.of("page.TestTables.all-groups");
    }
    String grouping = row.text("grouping");
    return Messages.of(
        "page.TestTables.and",
        Map.of(
            "grouping",
            GroupText.label(grouping, row.text("group_a")),
            "grouping2",
            GroupText.label(grouping, row.text("group_b"))));
  }

  private static String strata(Row row) {
    return row.text("strata").isEmpty()
        ? Messages.of("common.all-devices")
        : GroupText.grouping(row.text("strata"));
  }

  private static PageTable hazards(TablePackage tables) {
    return Grid.of(tables, "hazard_ratios", "model", "term", "level")
        .note(
            Messages.of(
                "page.TestTables.above-1-fails-sooner-than-the", Map.of("acrossone", ACROSS_ONE)))
        .head(Messages.of("page.TestTables.model"), "model", GroupText::words)
        .head(Messages.of("page.TestTables.what-varies"), "term", GroupText::words)
        .head(Messages.of("page.TestTables.level"), "level", level -> level)
        .words(text -> text, "reference")
        .number(Shape.COUNT, "devices", "failures")
        .estimate(
            Messages.of("page.TestTables.hazard-ratio"),
            "hazard_ratio",
            "lower",
            "upper",
            Estimate::ratio)
        .number(Shape.PROBABILITY, "p_value", "proportionality_p")
        .words(text -> text, "reason", "note")
        .build(
            Messages.of("page.TestTables.hazard-ratios-by-model"),
            Rows.of(tables, "hazard_ratios"));
  }

  private static PageTable meanLife(TablePackage tables) {
    return pairs(tables, "mean_life_differences")
        .note(Messages.of("common.Limits-that-reach-across-0-the"))
        .number(Shape.ONE, "horizon_years")
        .estimate(
            Messages.of("page.TestTables.difference-in-mean-life"),
            "difference_years",
            "lower",
            "upper",
            Estimate::years)
        .number(Shape.PROBABILITY, "p_value", "p_adjusted")
        .build(
            Messages.of("page.TestTables.differences-in-mean-life-between-groups"),
            Rows.of(tables, "mean_life_differences"));
  }

  private static PageTable rateRatios(TablePackage tables) {
    return pairs(tables, "rate_ratios")
        .note(ACROSS_ONE)
        .number(Shape.COUNT, "failures_a", "failures_b")
        .estimate(
            Messages.of("page.TestTables.ratio-of-rates"),
            "rate_ratio",
            "lower",
            "upper",
            Estimate::ratio)
        .number(Shape.PROBABILITY, "p_value", "p_adjusted")
        .build(
            Messages.of("page.TestTables.failure-rates-of-two-groups-compared"),
            Rows.of(tables, "rate_ratios"));
  }

  private static PageTable sampleSize(TablePackage tables) {
    return pairs(tables, "sample_size")
        .number(Shape.RATIO, "hazard_ratio")
        .number(Shape.COUNT, "failures_needed", "failures_so_far")
        .number(Shape.ONE, "more_device_years")
        .build(
            Messages.of("page.TestTables.what-a-comparison-would-need-to"),
            Rows.of(tables, "sample_size"));
  }

  private static Grid pairs(TablePackage tables, String name) {
    return Grid.of(tables, name, "grouping", "group_a", "group_b")
        .head(Messages.of("page.TestTables.between"), "grouping", GroupText::grouping)
        .named(Messages.of("page.TestTables.groups"), TestTables::pair);
  }

  private static PageTable dating(TablePackage tables) {
    return Grid.of(tables, "dating_comparison", "grouping", "group", "dating", "years")
        .note(Messages.of("common.The-same-records-with-failures-dated"))
        .head(Messages.of("common.Grouping"), "grouping", GroupText::grouping)
        .group(Messages.of("common.Group"), GroupText::label)
        .head(Messages.of("page.TestTables.dated-by"), "dating", GroupText::words)
        .number(Shape.ONE, "years")
        .estimate(
            Messages.of("page.TestTables.not-failed"),
            "survival",
            "lower",
            "upper",
            Estimate::percent)
        .build(
            Messages.of("page.TestTables.how-the-dating-of-failures-changes"),
            Rows.of(tables, "dating_comparison"));
  }

  private static PageTable fits(TablePackage tables) {
    return Grid.of(tables, "parametric_fits", "grouping", "group", "distribution")
        .note(Messages.of("common.Shape-above-1-failure-grows-likelier"))
        .head(Messages.of("common.Grouping"), "grouping", GroupText::grouping)
        .group(Messages.of("common.Group"), GroupText::label)
        .head(Messages.of("page.TestTables.distribution"), "distribution", GroupText::words)
        .estimate(
            Messages.of("page.TestTables.shape"),
            "shape",
            "shape_lower",
            "shape_upper",
            Estimate::ratio)
        .estimate(
            Messages.of("page.TestTables.scale"),
            "scale_days",
            "scale_lower",
            "scale_upper",
            estimate -> estimate.measured("days"))
        .words(text -> text, "reason")
        .build(
            Messages.of("page.TestTables.fitted-life-distributions"),
            Rows.of(tables, "parametric_fits"));
  }
}
