package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StackedXYBarRenderer;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.data.xy.DefaultTableXYDataset;
import org.jfree.data.xy.XYSeries;
import pondtally.reports.chart.Figure.KeyEntry;
import pondtally.reports.chart.Figure.Sample;
import pondtally.reports.chart.Panel.Frame;
import pondtally.reports.table.Row;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;

/** Acre-years of wetland kept by year, one small plot a watershed on one scale. */
final class AcreYearsChart {

  private static final String NAME = "acre-years";
  private static final String NEUTRAL =
      Messages.of("chart.AcreYearsChart.wetland-kept-by-working-devices-by");
  private static final int COLUMNS = 3;
  private static final int PANELS = 12;
  private static final Look MEASURED = new Look(Look.GREEN, Look.line(1), Look.square(3));
  private static final Look EXTRAPOLATED =
      new Look(Look.tint(Look.GREEN, 0.4), Look.line(1), Look.square(3));

  private AcreYearsChart() {}

  static List<Figure> figures(ChartSource source) {
    Map<String, List<Row>> groups = yearRows(source, "watershed");
    if (groups.isEmpty()) {
      return List.of();
    }
    List<Row> all = groups.values().stream().flatMap(List::stream).toList();
    if (all.stream().noneMatch(row -> row.number("acre_years").orElse(0) > 0)) {
      return List.of(
          Figure.nothingToShow(
              NAME,
              NEUTRAL,
              source,
              Messages.of("chart.AcreYearsChart.nothing-is-drawn-no-pond-with")));
    }
    List<Panel> panels = new ArrayList<>();
    Axes axes = Axes.of(all);
    groups.forEach((group, rows) -> panels.add(panel(group, rows, axes)));
    List<List<Panel>> parts = pages(panels);
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      figures.add(figure(source, groups, parts.get(i)).part(i + 1, parts.size()));
    }
    return figures;
  }

  private static List<List<Panel>> pages(List<Panel> panels) {
    List<List<Panel>> pages = new ArrayList<>();
    for (int from = 0; from < panels.size(); from += PANELS) {
      pages.add(panels.subList(from, Math.min(panels.size(), from + PANELS)));
    }
    return pages;
  }

  private static Map<String, List<Row>> yearRows(ChartSource source, String grouping) {
    Map<String, List<Row>> groups = new LinkedHashMap<>();
    source
        .groups("wetland", grouping)
        .forEach(
            (group, rows) -> {
              List<Row> years =
                  rows.stream().filter(row -> !row.text("year").equals("all")).toList();
              if (!years.isEmpty()) {
                groups.put(group, years);
              }
            });
    return groups;
  }

  /** The same axes for all watersheds. */
  private record Axes(int firstYear, int lastYear, Scale acreYears) {

    static Axes of(List<Row> rows) {
      int first = rows.stream().mapToInt(row -> (int) row.count("year")).min().orElseThrow();
      int last = rows.stream().mapToInt(row -> (int) row.count("year")).max().orElseThrow();
      double most =
          rows.stream().mapToDouble(row -> row.number("acre_years").orElse(0)).max().orElse(1);
      return new Axes(first, last, Scale.upTo(0, most, 3, "#,##0.###"));
    }

    Scale years() {
      int tick = Math.max(1, (lastYear - firstYear + 4) / 4);
      return new Scale(firstYear - 0.6, lastYear + 0.6, tick, Scale.format("0"));
    }
  }

  private static Panel panel(String group, List<Row> rows, Axes axes) {
    DefaultTableXYDataset data = new DefaultTableXYDataset();
    data.setIntervalWidth(0.7);
    data.setAutoWidth(false);
    XYSeries measured =
        new XYSeries(Messages.of("chart.AcreYearsChart.between-measurements"), true, false);
    XYSeries extrapolated =
        new XYSeries(Messages.of("chart.AcreYearsChart.beyond-measurements"), true, false);
    for (Row row : rows) {
      row.number("acre_years")
          .ifPresent(
              total -> {
                double beyond = row.number("acre_years_extrapolated").orElse(0);
                measured.add((double) row.count("year"), total - beyond);
                extrapolated.add((double) row.count("year"), beyond);
              });
    }
    data.addSeries(measured);
    data.addSeries(extrapolated);
    XYPlot plot =
        Plots.plot(Plots.axis("", axes.years()), Plots.bare(Plots.axis("", axes.acreYears())));
    Plots.layer(plot, data, bars());
    Frame frame = new Frame(34, 6, Plots.NUMBERS, 62);
    Row last = rows.get(rows.size() - 1);
    return new Panel(
        GroupText.label("watershed", group),
        measuredSites(last),
        Plots.chart(plot, frame),
        frame,
        data.getItemCount() == 0
            ? List.of(new Note(Messages.of("chart.AcreYearsChart.area-not-known")))
            : List.of());
  }

  private static String measuredSites(Row row) {
    return Messages.of(
        "chart.AcreYearsChart.of-measured",
        Map.of(
            "count",
            NumberText.count((long) row.number("sites_measured").orElse(0)),
            "sites",
            NumberText.count((long) row.number("sites").orElse(0), "sites")));
  }

  private static StackedXYBarRenderer bars() {
    StackedXYBarRenderer renderer = new StackedXYBarRenderer();
    renderer.setBarPainter(new StandardXYBarPainter());
    renderer.setShadowVisible(false);
    renderer.setSeriesPaint(0, MEASURED.color());
    renderer.setSeriesPaint(1, EXTRAPOLATED.color());
    return renderer;
  }

  private static Figure figure(
      ChartSource source, Map<String, List<Row>> groups, List<Panel> panels) {
    String title = title(source);
    return new Figure(
        NAME,
        title,
        List.of(
            Messages.of(
                "chart.AcreYearsChart.acre-years-by-fiscal-year-all", Map.of("cut", source.cut()))),
        List.of(
            new KeyEntry(
                MEASURED,
                Sample.SOLID,
                Messages.of("chart.AcreYearsChart.between-area-measurements")),
            new KeyEntry(
                EXTRAPOLATED,
                Sample.SOLID,
                Messages.of("chart.AcreYearsChart.before-the-first-or-after-the"))),
        panels,
        Math.min(COLUMNS, panels.size()),
        List.of(
            Messages.of(
                "chart.AcreYearsChart.pond-area-over-the-verified-time",
                Map.of("incomplete", source.incomplete())),
            Messages.of("common.Time-after-a-device-s-last")),
        Messages.of(
            "chart.AcreYearsChart.bars-by-year-for-each-watershed",
            Map.of("title", title, "description", description(groups))));
  }

  private static String title(ChartSource source) {
    List<Row> years = yearRows(source, "all").values().stream().flatMap(List::stream).toList();
    return source
        .inPeriod(years)
        .filter(row -> row.number("acre_years").isPresent())
        .map(
            row ->
                Messages.of(
                    "chart.AcreYearsChart.working-devices-kept-of-wetland-in",
                    Map.of(
                        "acreYears",
                        NumberText.acreYears(row.number("acre_years").getAsDouble()),
                        "year",
                        row.text("year"))))
        .orElse(NEUTRAL);
  }

  private static String description(Map<String, List<Row>> groups) {
    return groups.entrySet().stream()
            .limit(12)
            .map(
                entry -> {
                  Row last = entry.getValue().get(entry.getValue().size() - 1);
                  return Messages.of(
                      "chart.AcreYearsChart.in",
                      Map.of(
                          "watershed",
                          GroupText.label("watershed", entry.getKey()),
                          "acreYears",
                          Missing.orNotKnown(last.number("acre_years"), NumberText::acreYears),
                          "year",
                          last.text("year")));
                })
            .collect(Collectors.joining("; "))
        + ".";
  }
}
