package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;
import pondtally.reports.view.Setting;

/** Causes, wetland, removals and properties. */
final class OutcomeSheets {

  private static final int MOST_BARS = 24;

  private OutcomeSheets() {}

  static void causes(Book book, TablePackage tables) {
    List<Line> lines =
        Rows.of(tables, "failure_causes").where("grouping", "all").list().stream()
            .sorted(
                java.util.Comparator.comparingDouble(
                    row -> -Line.of(row).number("failures").orElse(0)))
            .map(Line::of)
            .toList();
    Columns columns =
        Columns.of(tables, "failure_causes")
            .add("cause")
            .width(26)
            .add("failures")
            .total()
            .add("share")
            .live(shareOf(lines))
            .add("lower")
            .format(Format.SHARE)
            .add("upper")
            .format(Format.SHARE);
    TableSheet sheet =
        TableSheet.of(
            "Causes",
            "What failures were put down to",
            List.of(
                "The cause is what the visitor wrote down at the first visit that found the device failed.",
                "Shares are of all failures, whether or not rows are filtered away."),
            columns,
            lines);
    int bars = Math.min(MOST_BARS, lines.size());
    book.add(
        bars == 0
            ? sheet
            : sheet.withCharts(
                new ChartPlan(
                    "Failures by cause",
                    "Bars: number of failures put down to each cause, most frequent first. Figures: the table on this sheet.",
                    ChartPlan.Kind.COLUMNS,
                    "Cause",
                    "Failures",
                    "0",
                    List.of(ChartPlan.Series.of("Failures", "cause", "failures", bars)))));
  }

  private static Formula shareOf(List<Line> lines) {
    double all = lines.stream().mapToDouble(l -> l.number("failures").orElse(0)).sum();
    return Formula.of(
        refs -> Formula.orUnknown(refs.cell("failures") + "/SUM(" + refs.column("failures") + ")"),
        line -> {
          OptionalDouble own = line.number("failures");
          return own.isEmpty() || all == 0
              ? OptionalDouble.empty()
              : OptionalDouble.of(own.getAsDouble() / all);
        });
  }

  static void causesByGroup(Book book, TablePackage tables) {
    List<Line> lines =
        Rows.of(tables, "failure_causes").only(r -> !r.text("grouping").equals("all")).lines();
    Map<String, Double> sums = new TreeMap<>();
    lines.forEach(l -> sums.merge(group(l), l.number("failures").orElse(0), Double::sum));
    Formula share =
        Formula.of(
            refs ->
                Formula.orUnknown(
                    "%s/SUMIFS(%s,%s,%s,%s,%s)"
                        .formatted(
                            refs.cell("failures"),
                            refs.column("failures"),
                            refs.column("grouping"),
                            refs.cell("grouping"),
                            refs.column("group"),
                            refs.cell("group"))),
            line -> {
              OptionalDouble own = line.number("failures");
              double all = sums.getOrDefault(group(line), 0.0);
              return own.isEmpty() || all == 0
                  ? OptionalDouble.empty()
                  : OptionalDouble.of(own.getAsDouble() / all);
            });
    Columns columns =
        Columns.of(tables, "failure_causes")
            .add("grouping", "group", "cause", "failures", "share")
            .live(share)
            .add("lower")
            .format(Format.SHARE)
            .add("upper")
            .format(Format.SHARE);
    book.add(
        TableSheet.of(
                "Causes by group",
                "What failures were put down to, by group",
                List.of(
                    "Shares are of the failures of that group. The same failure comes again under each grouping."),
                columns,
                lines)
            .withKeyColumns(3));
  }

  private static String group(Line line) {
    return line.text("grouping") + "\n" + line.text("group");
  }

  static void wetland(Book book, TablePackage tables) {
    List<Line> lines =
        Line.of(
            Rows.of(tables, "wetland")
                .where("grouping", "watershed")
                .where("year", "all")
                .list()
                .stream()
                .sorted(
                    java.util.Comparator.comparing((Row row) -> row.number("acre_years").isEmpty())
                        .thenComparing(row -> row.text("group")))
                .toList());
    Columns columns =
        Columns.of(tables, "wetland")
            .add("group")
            .heading("Watershed")
            .width(26)
            .add("sites", "sites_measured", "ponds", "acres_before")
            .total()
            .add("acres_retained_verified")
            .total()
            .add("acres_retained_unverified")
            .total()
            .add("hectares_retained_verified")
            .live(hectares())
            .add("acre_years")
            .total()
            .add("acre_years_extrapolated")
            .total()
            .add("acres_lost_to_lowering")
            .total();
    TableSheet sheet =
        TableSheet.of(
            "Wetland",
            "Wetland kept, by watershed, whole record",
            wetlandNotes(tables, lines),
            columns,
            lines);
    int bars = ChartPlan.leading(lines, "acre_years", MOST_BARS);
    book.add(bars == 0 ? sheet : sheet.withCharts(acreYears("Watershed", "group", bars)));
  }

  private static List<String> wetlandNotes(TablePackage tables, List<Line> lines) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "A pond counts once, however many devices it has. A site without measurement is unmeasured, never zero. Verified: working at its last visit and not overdue.");
    double sum = lines.stream().mapToDouble(l -> l.number("acre_years").orElse(0)).sum();
    double all =
        Rows.of(tables, "wetland")
            .where("grouping", "all")
            .where("year", "all")
            .first()
            .map(row -> Line.of(row).number("acre_years").orElse(sum))
            .orElse(sum);
    if (Math.abs(all - sum) > 1e-6 * Math.max(1, all)) {
      notes.add(
          "Watersheds do not add up to the program: a pond that reaches into two watersheds stands in both rows. The program's own figures are on Summary and Wetland by year.");
    }
    return notes;
  }

  private static Formula hectares() {
    return Formula.product(
        List.of("acres_retained_verified"),
        "*Hectares_per_acre",
        OptionalDouble.of(Setting.HECTARES_PER_ACRE));
  }

  private static ChartPlan acreYears(String axis, String category, int count) {
    return new ChartPlan(
        "Acre-years of wetland kept, verified, by " + axis.toLowerCase(java.util.Locale.ROOT),
        "Bars: acre-years over verified working time. Figures: the table on this sheet.",
        ChartPlan.Kind.COLUMNS,
        axis,
        "Acre-years",
        "#,##0",
        List.of(ChartPlan.Series.of("Acre-years", category, "acre_years", count)));
  }

  static void wetlandByYear(Book book, TablePackage tables) {
    List<Line> lines =
        Rows.of(tables, "wetland")
            .where("grouping", "all")
            .only(row -> !row.text("year").equals("all"))
            .lines();
    Columns columns =
        Columns.of(tables, "wetland")
            .add("year")
            .heading("Fiscal year")
            .width(24)
            .add("sites", "sites_measured", "acres_retained_verified", "acres_retained_unverified")
            .add("hectares_retained_verified")
            .live(hectares())
            .add("acre_years")
            .total()
            .add("acre_years_extrapolated")
            .total();
    TableSheet sheet =
        TableSheet.of(
            "Wetland by year",
            "Wetland kept, by fiscal year",
            List.of(
                "Acres stand at the end of the year or the data cut: they are a stock and are not added up over years. Acre-years are."),
            columns,
            lines);
    book.add(
        lines.isEmpty() ? sheet : sheet.withCharts(acreYears("Fiscal year", "year", lines.size())));
  }

  static void removals(Book book, TablePackage tables) {
    Rows all = Rows.of(tables, "removals_avoided").where("grouping", "all");
    TreeSet<String> grades = new TreeSet<>();
    Map<String, Map<String, String>> years = new TreeMap<>();
    for (Row row : all.list()) {
      Map<String, String> cells =
          years.computeIfAbsent(row.text("year"), y -> new LinkedHashMap<>());
      String grade = row.text("evidence");
      if (grade.isEmpty()) {
        List.of("year", "sites", "sites_left_out", "avoided_computed", "removals_reported")
            .forEach(column -> cells.put(column, row.text(column)));
      } else {
        cells.put("year", row.text("year"));
        cells.put("claim " + grade, row.text("avoided_claimed"));
        grades.add(grade);
      }
    }
    List<Line> lines = years.values().stream().map(Line::of).toList();
    Columns columns =
        Columns.of(tables, "removals_avoided")
            .add("year")
            .width(24)
            .add("sites", "sites_left_out", "avoided_computed")
            .format(Format.ONE)
            .total();
    for (String grade : grades) {
      columns.add("claim " + grade, "Claimed, by " + grade, Format.ONE).total();
    }
    columns.add("removals_reported").format(Format.ONE).total();
    TableSheet sheet =
        TableSheet.of(
            "Removals",
            "Removals avoided, computed and claimed",
            List.of(
                "Computed: removals a year before, times the verified working share of the year, less removals that still happened. It may be below zero, and then it stays so in every sum.",
                "The partners' own claims stand beside it by the evidence given. The two are never added."),
            columns,
            lines);
    book.add(
        lines.isEmpty()
            ? sheet
            : sheet.withCharts(removalChart(lines.size(), List.copyOf(grades))));
  }

  private static ChartPlan removalChart(int years, List<String> grades) {
    List<ChartPlan.Series> series = new ArrayList<>();
    series.add(ChartPlan.Series.of("Computed", "year", "avoided_computed", years));
    for (String grade : grades) {
      series.add(ChartPlan.Series.of("Claimed, by " + grade, "year", "claim " + grade, years));
    }
    return new ChartPlan(
        "Removals avoided by year: computed, and claimed by evidence",
        "Bars side by side for each year: removals avoided as computed, and as claimed by each grade of evidence. Figures: the table on this sheet.",
        ChartPlan.Kind.COLUMNS,
        "Year",
        "Removals avoided",
        "0",
        series);
  }

  static void properties(Book book, TablePackage tables) {
    List<Line> lines =
        Rows.of(tables, "properties")
            .where("grouping", "all")
            .where("year", "all")
            .only(row -> !row.text("property_type").equals("all"))
            .lines();
    Columns columns =
        Columns.of(tables, "properties")
            .add("property_type")
            .width(26)
            .add("properties_recorded")
            .total()
            .add("properties_protected")
            .total();
    columns
        .add("share", "Share protected", Format.SHARE)
        .live(Formula.ratio("properties_protected", "properties_recorded", 1));
    columns.add("property_years").total();
    book.add(
        TableSheet.of(
            "Properties",
            "Properties protected, by type, whole record",
            List.of(
                "A property counts as protected where a device at its site was verified working on at least one day of its span. Each property has one type and counts once."),
            columns,
            lines));
  }

  static void propertiesByWatershed(Book book, TablePackage tables) {
    List<Line> lines =
        Rows.of(tables, "properties")
            .where("grouping", "watershed")
            .where("property_type", "all")
            .list()
            .stream()
            .sorted(
                java.util.Comparator.comparing((Row row) -> row.text("group"))
                    .thenComparing(row -> row.text("year")))
            .map(Line::of)
            .toList();
    Columns columns =
        Columns.of(tables, "properties")
            .add("group")
            .heading("Watershed")
            .add("year")
            .heading("Fiscal year")
            .add("properties_recorded", "properties_protected");
    columns
        .add("share", "Share protected", Format.SHARE)
        .live(Formula.ratio("properties_protected", "properties_recorded", 1));
    columns.add("property_years");
    book.add(
        TableSheet.of(
                "Properties by watershed",
                "Properties protected, by watershed and fiscal year",
                List.of(
                    "A property can lie in two watersheds and stands in each year, so nothing is added up here."),
                columns,
                lines)
            .withKeyColumns(2));
  }
}
