package pondtally.reports.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pondtally.reports.chart.Figure.KeyEntry;
import pondtally.reports.chart.Figure.Sample;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/**
 * Numbers at risk, failed and censored under a curve, each below its age on the axis.
 *
 * @param name of the group; empty where the panel has only one
 * @param look of its curve
 * @param counts what is written
 * @param axis the horizontal one, in years
 */
record CountsTable(String name, Optional<Look> look, Counts counts, Scale axis)
    implements Panel.Beside {

  private static final Font SMALL = Lettering.regular(Lettering.SMALL);
  private static final Font BOLD = Lettering.bold(Lettering.SMALL);
  private static final double ROW = 10.5;
  private static final double ABOVE = 4;

  @Override
  public double heightBelow() {
    return ROW * (rows().size() + (name.isEmpty() ? 0 : 1)) + ABOVE;
  }

  @Override
  public void draw(Graphics2D g, Rectangle2D data, Rectangle2D below) {
    double y = below.getY() + ABOVE + ROW * 0.8;
    if (!name.isEmpty()) {
      drawName(g, below.getX(), y, below.getWidth());
      y += ROW;
    }
    for (CountsRow row : rows()) {
      Words.at(g, row.label, SMALL, Look.GRAY, below.getX(), y);
      for (int i = 0; i < row.numbers.size(); i++) {
        String number = NumberText.count(row.numbers.get(i));
        Words.centeredAt(g, number, SMALL, Look.INK, x(data, counts.years().get(i)), y);
      }
      y += ROW;
    }
  }

  private void drawName(Graphics2D g, double x, double y, double width) {
    look.ifPresent(
        found -> KeyRow.sample(g, new KeyEntry(found, Sample.LINE_AND_MARK, name), x, y - 3));
    Color color = Look.INK;
    Words.at(g, Lettering.shorten(name, BOLD, width - 28), BOLD, color, x + 28, y);
  }

  private double x(Rectangle2D data, double year) {
    double share = (year - axis.lower()) / (axis.upper() - axis.lower());
    return data.getX() + share * data.getWidth();
  }

  private record CountsRow(String label, List<Long> numbers) {}

  private List<CountsRow> rows() {
    List<CountsRow> rows = new ArrayList<>();
    rows.add(new CountsRow(Messages.of("chart.CountsTable.at-risk"), counts.atRisk()));
    rows.add(new CountsRow(Messages.of("common.Failed"), counts.failed()));
    rows.add(new CountsRow(Messages.of("chart.CountsTable.censored"), counts.censored()));
    if (counts.hasLateEntry()) {
      rows.add(new CountsRow(Messages.of("chart.CountsTable.not-yet-followed"), counts.notYet()));
    }
    return rows;
  }
}
