package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.reports.text.Messages;

/**
 * One chart as it is printed: words above, panels in rows, words below.
 *
 * @param name file name without ending
 * @param title what is seen
 * @param subtitles counts, data cut; for a chart with nothing to show the reason
 * @param key samples of the lines and marks, in order
 * @param panels from left to right and top to bottom
 * @param columns panels side by side
 * @param foot definitions
 * @param description alternative text
 */
record Figure(
    String name,
    String title,
    List<String> subtitles,
    List<KeyEntry> key,
    List<Panel> panels,
    int columns,
    List<String> foot,
    String description) {

  /** A figure that says why there is nothing to draw. */
  static Figure nothingToShow(String name, String title, ChartSource source, String reason) {
    return new Figure(
        name,
        title,
        List.of(source.cut()),
        List.of(),
        List.of(),
        1,
        List.of(reason),
        title + ". " + reason + " " + source.cut());
  }

  /** The same figure, one of several: its name and title say which. */
  Figure part(int number, int of) {
    if (of == 1) {
      return this;
    }
    List<String> lines = new ArrayList<>(subtitles);
    lines.add(
        Messages.of(
            "chart.Figure.part-of",
            Map.of("number", String.valueOf(number), "of", String.valueOf(of))));
    String partName = number == 1 ? name : name + "-" + number;
    return new Figure(partName, title, lines, key, panels, columns, foot, description);
  }

  /**
   * A sample in the key.
   *
   * @param look color, line and mark
   * @param sample what of it is drawn
   * @param label what it stands for
   */
  record KeyEntry(Look look, Sample sample, String label) {}

  /** What a sample in the key looks like. */
  enum Sample {
    LINE_AND_MARK,
    MARK,
    HOLLOW_MARK,
    LINE,
    BAND,
    SOLID
  }
}
