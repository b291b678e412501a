package pondtally.reports.page;

import java.util.List;
import java.util.stream.Stream;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.view.Rows;

/** Tests, ratios and fits, for readers who want them. */
final class TestTables {

  private static final List<String> PAIRED = List.of("pipe", "kind");
  private static final String ACROSS_ONE =
      "Limits that reach across 1: the records do not show a difference.";

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
        .note("A large p does not show that groups are alike. Pairs are adjusted for their number.")
        .note("Pairs other than of pipe types and kinds of device stand in program.xlsx.")
        .head("Test", "test", GroupText::words)
        .head("Between", "grouping", GroupText::grouping)
        .named("Groups", TestTables::pair)
        .named("Within", TestTables::strata)
        .number(Shape.TWO, "statistic")
        .number(Shape.COUNT, "df")
        .number(Shape.PROBABILITY, "p_value", "p_adjusted")
        .words(text -> text, "note")
        .build("Tests of differences between groups", rows);
  }

  private static String pair(Row row) {
    if (row.text("group_a").isEmpty() && row.text("group_b").isEmpty()) {
      return "all groups";
    }
    String grouping = row.text("grouping");
    return GroupText.label(grouping, row.text("group_a"))
        + " and "
        + GroupText.label(grouping, row.text("group_b"));
  }

  private static String strata(Row row) {
    return row.text("strata").isEmpty() ? "all devices" : GroupText.grouping(row.text("strata"));
  }

  private static PageTable hazards(TablePackage tables) {
    return Grid.of(tables, "hazard_ratios", "model", "term", "level")
        .note(ACROSS_ONE + " Above 1: fails sooner than the reference.")
        .head("Model", "model", GroupText::words)
        .head("What varies", "term", GroupText::words)
        .head("Level", "level", level -> level)
        .words(text -> text, "reference")
        .number(Shape.COUNT, "devices", "failures")
        .estimate("Hazard ratio", "hazard_ratio", "lower", "upper", Estimate::ratio)
        .number(Shape.PROBABILITY, "p_value", "proportionality_p")
        .words(text -> text, "reason", "note")
        .build("Hazard ratios by model", Rows.of(tables, "hazard_ratios"));
  }

  private static PageTable meanLife(TablePackage tables) {
    return pairs(tables, "mean_life_differences")
        .note("Limits that reach across 0: the records do not show a difference.")
        .number(Shape.ONE, "horizon_years")
        .estimate("Difference in mean life", "difference_years", "lower", "upper", Estimate::years)
        .number(Shape.PROBABILITY, "p_value", "p_adjusted")
        .build("Differences in mean life between groups", Rows.of(tables, "mean_life_differences"));
  }

  private static PageTable rateRatios(TablePackage tables) {
    return pairs(tables, "rate_ratios")
        .note(ACROSS_ONE)
        .number(Shape.COUNT, "failures_a", "failures_b")
        .estimate("Ratio of rates", "rate_ratio", "lower", "upper", Estimate::ratio)
        .number(Shape.PROBABILITY, "p_value", "p_adjusted")
        .build("Failure rates of two groups compared", Rows.of(tables, "rate_ratios"));
  }

  private static PageTable sampleSize(TablePackage tables) {
    return pairs(tables, "sample_size")
        .number(Shape.RATIO, "hazard_ratio")
        .number(Shape.COUNT, "failures_needed", "failures_so_far")
        .number(Shape.ONE, "more_device_years")
        .build("What a comparison would need to be decided", Rows.of(tables, "sample_size"));
  }

  private static Grid pairs(TablePackage tables, String name) {
    return Grid.of(tables, name, "grouping", "group_a", "group_b")
        .head("Between", "grouping", GroupText::grouping)
        .named("Groups", TestTables::pair);
  }

  private static PageTable dating(TablePackage tables) {
    return Grid.of(tables, "dating_comparison", "grouping", "group", "dating", "years")
        .note("The same records, with failures dated in three ways.")
        .head("Grouping", "grouping", GroupText::grouping)
        .group("Group", GroupText::label)
        .head("Dated by", "dating", GroupText::words)
        .number(Shape.ONE, "years")
        .estimate("Not failed", "survival", "lower", "upper", Estimate::percent)
        .build("How the dating of failures changes survival", Rows.of(tables, "dating_comparison"));
  }

  private static PageTable fits(TablePackage tables) {
    return Grid.of(tables, "parametric_fits", "grouping", "group", "distribution")
        .note("Shape above 1: failure grows likelier with age.")
        .head("Grouping", "grouping", GroupText::grouping)
        .group("Group", GroupText::label)
        .head("Distribution", "distribution", GroupText::words)
        .estimate("Shape", "shape", "shape_lower", "shape_upper", Estimate::ratio)
        .estimate(
            "Scale",
            "scale_days",
            "scale_lower",
            "scale_upper",
            estimate -> estimate.measured("days"))
        .words(text -> text, "reason")
        .build("Fitted life distributions", Rows.of(tables, "parametric_fits"));
  }
}
