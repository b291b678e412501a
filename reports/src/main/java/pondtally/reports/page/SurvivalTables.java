package pondtally.reports.page;

import java.util.List;
import java.util.stream.Stream;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
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
            .head("Pipe type", "group", group -> GroupText.label("pipe", group));
    return columns(grid, rows)
        .note("Devices not failed, by age. Each age shows the estimate and its 95% limits.")
        .note("Comparisons are observational: crews, sites and years differ between pipe types.")
        .build("Survival by pipe type", rows);
  }

  private static PageTable undated(TablePackage tables) {
    Rows rows = Rows.of(tables, "survival_summary").where("method", "interval");
    Grid grid =
        Grid.of(tables, "survival_summary", "grouping", "group")
            .head("Grouping", "grouping", GroupText::grouping)
            .group("Group", GroupText::label);
    return columns(grid, rows)
        .note(
            "Failures are not given a day: each lies between two visits (Turnbull 1976). Where visits"
                + " are far apart, quote these figures.")
        .note(
            "Limits are approximate, from 200 resamples of sites: in simulated programs they covered"
                + " the true share in 92 to 96 of 100.")
        .build("Survival estimated from the visits alone", rows);
  }

  private static PageTable pipesInWatersheds(TablePackage tables) {
    Rows rows = rows(tables).where("grouping", "pipe-in-watershed");
    Grid grid =
        Grid.of(tables, "survival_summary", "group")
            .head(
                "Watershed and pipe type",
                "group",
                group -> GroupText.label("pipe-in-watershed", group));
    return columns(grid, rows)
        .note("Comparisons are observational: crews, sites and years differ between pipe types.")
        .build("Survival by pipe type within watersheds", rows)
        .fold();
  }

  private static PageTable groups(TablePackage tables) {
    Rows rows = rows(tables).only(row -> !row.text("grouping").startsWith("pipe"));
    Grid grid =
        Grid.of(tables, "survival_summary", "grouping", "group")
            .head("Grouping", "grouping", GroupText::grouping)
            .group("Group", GroupText::label);
    return columns(grid, rows)
        .note("The same devices come again under each grouping.")
        .build("Survival of the other groups", rows)
        .fold();
  }

  private static Rows rows(TablePackage tables) {
    return Rows.of(tables, "survival_summary").where("method", SurvivalMethod.of());
  }

  private static Grid columns(Grid grid, Rows rows) {
    grid.number(Shape.COUNT, "devices", "lives").number("First failures", Shape.COUNT, "failures");
    List<Line> lines = rows.lines();
    for (int years : YEARS) {
      String name = "survival_" + years + "y";
      if (lines.stream().anyMatch(line -> line.number(name).isPresent())) {
        grid.estimate(
            "Not failed at " + years + (years == 1 ? " year" : " years"),
            name,
            name + "_lower",
            name + "_upper",
            Estimate::percent);
      }
    }
    return grid.estimate(
        "Half have failed by", "median_years", "median_lower", "median_upper", Estimate::years);
  }
}
