package pondtally.reports.chart;

import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import pondtally.reports.chart.Panel.Frame;

/** A plot of rows: names down the left side, the first on top, values along the horizontal axis. */
final class RowPlot {

  private RowPlot() {}

  static XYPlot plot(ValueAxis values, List<String> names) {
    SymbolAxis rows = new SymbolAxis(null, names.toArray(String[]::new));
    rows.setRange(-0.5, names.size() - 0.5);
    rows.setInverted(true);
    rows.setGridBandsVisible(false);
    rows.setTickLabelsVisible(false);
    Plots.quiet(rows, "");
    Plots.bare(rows);
    XYPlot plot = Plots.plot(values, rows);
    plot.setDomainGridlinesVisible(true);
    return plot;
  }

  static Panel panel(String heading, XYPlot plot, RowWords words) {
    Frame frame =
        new Frame(
            words.room().left(),
            words.room().right(),
            Plots.NUMBERS_AND_TITLE,
            words.room().rowHeight() * words.names().size());
    String room = words.heads().isEmpty() ? "" : " ";
    return new Panel(heading, room, Plots.chart(plot, frame), frame, List.of(words));
  }

  /** Lists cut into parts of at most {@code most}, as even as can be. */
  static <T> List<List<T>> parts(List<T> rows, int most) {
    int count = (rows.size() + most - 1) / most;
    return IntStream.range(0, count)
        .mapToObj(i -> rows.subList(i * rows.size() / count, (i + 1) * rows.size() / count))
        .toList();
  }
}
