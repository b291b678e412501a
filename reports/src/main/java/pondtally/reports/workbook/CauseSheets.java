package pondtally.reports.workbook;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** What failures were put down to, for the program and by group. */
final class CauseSheets {

  private static final int MOST_BARS = 24;

  private CauseSheets() {}

  static void causes(Book book, TablePackage tables) {
    List<Line> lines =
        Rows.of(tables, "failure_causes").where("grouping", "all").lines().stream()
            .sorted(Comparator.comparingDouble(line -> -failures(line)))
            .toList();
    double all = lines.stream().mapToDouble(CauseSheets::failures).sum();
    Columns columns = Columns.of(tables, "failure_causes").add("cause").width(26);
    shares(
        columns.add("failures").total(),
        share(refs -> "SUM(" + refs.column("failures") + ")", line -> all));
    book.add(
        TableSheet.of(
                Messages.of("workbook.CauseSheets.causes"),
                Messages.of("common.What-failures-were-put-down-to"),
                List.of(
                    Messages.of("common.The-cause-is-what-the-visitor"),
                    Messages.of("workbook.CauseSheets.shares-are-of-all-failures-whether")),
                columns,
                lines)
            .withCharts(chart(lines)));
  }

  private static ChartPlan[] chart(List<Line> lines) {
    int bars = ChartPlan.leading(lines, "failures", MOST_BARS);
    return bars == 0
        ? new ChartPlan[0]
        : new ChartPlan[] {
          new ChartPlan(
              Messages.of("workbook.CauseSheets.failures-by-cause"),
              Messages.of("workbook.CauseSheets.bars-number-of-failures-put-down"),
              ChartPlan.Kind.COLUMNS,
              Messages.of("common.Cause"),
              Messages.of("common.Failures"),
              "0",
              List.of(
                  ChartPlan.Series.of(Messages.of("common.Failures"), "cause", "failures", bars)))
        };
  }

  static void byGroup(Book book, TablePackage tables) {
    List<Line> lines =
        Rows.of(tables, "failure_causes").only(r -> !r.text("grouping").equals("all")).lines();
    Map<String, Double> sums = new TreeMap<>();
    lines.forEach(line -> sums.merge(group(line), failures(line), Double::sum));
    Columns columns =
        Columns.of(tables, "failure_causes").add("grouping", "group", "cause", "failures");
    shares(
        columns, share(CauseSheets::failuresOfGroup, line -> sums.getOrDefault(group(line), 0.0)));
    book.add(
        TableSheet.of(
                Messages.of("workbook.CauseSheets.causes-by-group"),
                Messages.of("workbook.CauseSheets.what-failures-were-put-down-to"),
                List.of(Messages.of("workbook.CauseSheets.shares-are-of-the-failures-of")),
                columns,
                lines)
            .withKeyColumns(3));
  }

  private static void shares(Columns columns, Formula share) {
    columns
        .add("share")
        .live(share)
        .add("lower")
        .format(Format.SHARE)
        .add("upper")
        .format(Format.SHARE);
  }

  private static Formula share(
      java.util.function.Function<Refs, String> whole, ToDoubleFunction<Line> sum) {
    return Formula.of(
        refs -> Formula.orUnknown(refs.cell("failures") + "/" + whole.apply(refs)),
        line -> {
          OptionalDouble own = line.number("failures");
          double all = sum.applyAsDouble(line);
          return own.isEmpty() || all == 0
              ? OptionalDouble.empty()
              : OptionalDouble.of(own.getAsDouble() / all);
        });
  }

  private static String failuresOfGroup(Refs refs) {
    return "SUMIFS(%s,%s,%s,%s,%s)"
        .formatted(
            refs.column("failures"),
            refs.column("grouping"),
            refs.cell("grouping"),
            refs.column("group"),
            refs.cell("group"));
  }

  private static double failures(Line line) {
    return line.number("failures").orElse(0);
  }

  private static String group(Line line) {
    return line.text("grouping") + "\n" + line.text("group");
  }
}
