package pondtally.reports.page;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import pondtally.reports.chart.ChartFile;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;

/**
 * The chapters of the page in reading order: which sentences, charts and tables belong together.
 */
enum Subject {
  COVER(Messages.of("common.What-these-figures-cover"), "cover", tables -> Stream.empty()),
  DEVICES(Messages.of("common.Devices-today"), "devices", StateTables::of),
  SURVIVAL(
      Messages.of("common.How-long-devices-last"),
      "survival",
      SurvivalTables::of,
      "survival",
      "hazard",
      "mean-life"),
  FAILURES(
      Messages.of("common.What-fails-and-where"),
      "failures",
      RateTables::of,
      "failure",
      "cumulative-incidence",
      "watershed-funnel",
      "repeat-failures"),
  COST(Messages.of("common.What-it-cost"), "cost", MoneyTables::of, "cost", "funding"),
  SHARES(Messages.of("common.Each-funder-s-part"), "shares", ShareTables::of),
  BENEFIT(
      Messages.of("common.Benefit-against-cost"),
      "benefit",
      BenefitTables::of,
      "sensitivity",
      "benefit"),
  OUTCOMES(
      Messages.of("common.Wetland-properties-and-removals"),
      "outcomes",
      OutcomeTables::of,
      "acre",
      "wetland",
      "removals",
      "properties"),
  SEASON(
      Messages.of("common.Next-season"), "season", SeasonTables::of, "season", "expected", "visit"),
  PUBLISHED(
      Messages.of("page.Subject.published-before-and-restated"),
      "published",
      ChangeTables::restated),
  RECORDS(Messages.of("common.The-records-behind-this"), "records", RecordTables::of),
  TESTS(Messages.of("page.Subject.tests-and-fitted-models"), "tests", TestTables::of);

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
