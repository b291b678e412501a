package pondtally.reports.page;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;
import pondtally.reports.view.SurvivalMethod;

/** How long devices last, by group. */
final class SurvivalTables {

  private static final int[] YEARS = {1, 3, 5, 10};

  private SurvivalTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    return Stream.of(pipes(tables), undated(tables), pipesInWatersheds(tables), groups(tables));
  }

  private static PageTable pipes(TablePackage tables) {
    Rows rows = rows(tables).where("grouping", "pipe");
    Grid grid =
        Grid.of(tables, "survival_summary", "group")
            .head(
                Messages.of("common.Pipe-type"), "group", group -> GroupText.label("pipe", group));
    return columns(grid, rows)
        .note(Messages.of("page.SurvivalTables.devices-not-failed-by-age-each"))
        .note(Messages.of("common.Comparisons-are-observational-crews-sites-and"))
        .build(Messages.of("page.SurvivalTables.survival-by-pipe-type"), rows);
  }

  private static PageTable undated(TablePackage tables) {
    Rows rows = Rows.of(tables, "survival_summary").where("method", "interval");
    Grid grid =
        Grid.of(tables, "survival_summary", "grouping", "group")
            .head(Messages.of("common.Grouping"), "grouping", GroupText::grouping)
            .group(Messages.of("common.Group"), GroupText::label);
    return columns(grid, rows)
        .note(Messages.of("page.SurvivalTables.failures-are-not-given-a-day"))
        .note(Messages.of("common.Limits-are-approximate-from-200-resamples"))
        .build(Messages.of("page.SurvivalTables.survival-estimated-from-the-visits-alone"), rows);
  }

  private static PageTable pipesInWatersheds(TablePackage tables) {
    Rows rows = rows(tables).where("grouping", "pipe-in-watershed");
    Grid grid =
        Grid.of(tables, "survival_summary", "group")
            .head(
                Messages.of("page.SurvivalTables.watershed-and-pipe-type"),
                "group",
                group -> GroupText.label("pipe-in-watershed", group));
    return columns(grid, rows)
        .note(Messages.of("common.Comparisons-are-observational-crews-sites-and"))
        .build(Messages.of("page.SurvivalTables.survival-by-pipe-type-within-watersheds"), rows)
        .fold();
  }

  private static PageTable groups(TablePackage tables) {
    Rows rows = rows(tables).only(row -> !row.text("grouping").startsWith("pipe"));
    Grid grid =
        Grid.of(tables, "survival_summary", "grouping", "group")
            .head(Messages.of("common.Grouping"), "grouping", GroupText::grouping)
            .group(Messages.of("common.Group"), GroupText::label);
    return columns(grid, rows)
        .note(Messages.of("page.SurvivalTables.the-same-devices-come-again-under"))
        .build(Messages.of("page.SurvivalTables.survival-of-the-other-groups"), rows)
        .fold();
  }

  private static Rows rows(TablePackage tables) {
    return Rows.of(tables, "survival_summary").where("method", SurvivalMethod.of());
  }

  private static Grid columns(Grid grid, Rows rows) {
    grid.number(Shape.COUNT, "devices", "lives")
        .number(Messages.of("common.First-failures"), Shape.COUNT, "failures");
    List<Line> lines = rows.lines();
    for (int years : YEARS) {
      String name = "survival_" + years + "y";
      if (lines.stream().anyMatch(line -> line.number(name).isPresent())) {
        grid.estimate(
            Messages.of(
                "page.SurvivalTables.not-failed-at",
                Map.of(
                    "years",
                    String.valueOf(years),
                    "part",
                    years == 1
                        ? Messages.of("page.SurvivalTables.year")
                        : Messages.of("page.SurvivalTables.years"))),
            name,
            name + "_lower",
            name + "_upper",
            Estimate::percent);
      }
    }
    return grid.estimate(
        Messages.of("page.SurvivalTables.half-have-failed-by"),
        "median_years",
        "median_lower",
        "median_upper",
        Estimate::years);
  }
}
