package pondtally.reports.page;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import pondtally.reports.chart.ChartFile;
import pondtally.reports.table.TablePackage;

/**
 * The chapters of the page in reading order: which sentences, charts and tables belong together.
 */
enum Subject {
  COVER("What these figures cover", "cover", tables -> Stream.empty()),
  DEVICES("Devices today", "devices", StateTables::of),
  SURVIVAL(
      "How long devices last", "survival", SurvivalTables::of, "survival", "hazard", "mean-life"),
  FAILURES(
      "What fails, and where",
      "failures",
      RateTables::of,
      "failure",
      "cumulative-incidence",
      "watershed-funnel",
      "repeat-failures"),
  COST("What it cost", "cost", MoneyTables::of, "cost", "funding"),
  SHARES("Each funder's part", "shares", ShareTables::of),
  BENEFIT("Benefit against cost", "benefit", BenefitTables::of, "sensitivity", "benefit"),
  OUTCOMES(
      "Wetland, properties and removals",
      "outcomes",
      OutcomeTables::of,
      "acre",
      "wetland",
      "removals",
      "properties"),
  SEASON("Next season", "season", SeasonTables::of, "season", "expected", "visit"),
  PUBLISHED("Published before, and restated", "published", ChangeTables::restated),
  RECORDS("The records behind this", "records", RecordTables::of),
  TESTS("Tests and fitted models", "tests", TestTables::of);

  private final String heading;
  private final String id;
  private final Function<TablePackage, Stream<PageTable>> tables;
  private final List<String> charts;

  Subject(
      String heading,
      String id,
      Function<TablePackage, Stream<PageTable>> tables,
      String... charts) {
    this.heading = heading;
    this.id = id;
    this.tables = tables;
    this.charts = List.of(charts);
  }

  String heading() {
    return heading;
  }

  /** What links point at. */
  String id() {
    return id;
  }

  /** The tables that the run allows; one without a line is left out. */
  List<PageTable> tables(TablePackage of) {
    return tables.apply(of).filter(table -> !table.lines().isEmpty()).toList();
  }

  /** Whether the chart belongs here, by the beginning of its name. */
  boolean owns(ChartFile chart) {
    return charts.stream().anyMatch(chart.name()::startsWith);
  }
}
