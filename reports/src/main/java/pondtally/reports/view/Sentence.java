package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A sentence or two for a reader, with the figures printed in it.
 *
 * @param text as it is shown
 */
public record Sentence(String text, List<Figure> figures) {

  /** Starts a sentence. */
  public static Builder of(String text) {
    return new Builder().say(text);
  }

  /** Where in the text each figure begins, in their order; a 3 is not looked for within 360. */
  public List<Integer> places() {
    List<Integer> places = new ArrayList<>();
    int from = 0;
    for (Figure figure : figures) {
      int at = text.indexOf(figure.printed(), from);
      while (at >= 0 && isWithinNumber(at, at + figure.printed().length())) {
        at = text.indexOf(figure.printed(), at + 1);
      }
      if (at < 0) {
        throw new IllegalStateException(figure.printed() + " not in the sentence: " + text);
      }
      places.add(at);
      from = at + figure.printed().length();
    }
    return places;
  }

  private boolean isWithinNumber(int from, int to) {
    boolean before = from > 0 && isDigit(from) && isDigit(from - 1);
    boolean mark = to < text.length() && (text.charAt(to) == '.' || text.charAt(to) == ',');
    return before || isDigit(to - 1) && isDigit(mark ? to + 1 : to);
  }

  private boolean isDigit(int at) {
    return at < text.length() && Character.isDigit(text.charAt(at));
  }

  /** Puts a sentence together from words and figures. */
  public static final class Builder {

    private final StringBuilder text = new StringBuilder();
    private final List<Figure> figures = new ArrayList<>();

    private Builder() {}

    /** Adds words without a figure. */
    public Builder say(String words) {
      text.append(words);
      return this;
    }

    /** Adds words printed from cells of the first of the rows. */
    public Builder cell(Rows row, String printed, String... columns) {
      return figure(row.table(), row.key(), Figure.How.CELL, List.of(columns), printed);
    }

    /** Adds words printed from the number of rows. */
    public Builder rows(Rows rows, String printed) {
      return figure(rows.table(), rows.key(), Figure.How.ROWS, List.of(), printed);
    }

    /** Adds words printed from the sum of a column over the rows. */
    public Builder sum(Rows rows, String printed, String column) {
      return figure(rows.table(), rows.key(), Figure.How.SUM, List.of(column), printed);
    }

    /** Adds words printed from a fact of the run. */
    public Builder fact(String name, String printed) {
      return figure("", Map.of(), Figure.How.FACT, List.of(name), printed);
    }

    private Builder figure(
        String table,
        Map<String, String> key,
        Figure.How how,
        List<String> columns,
        String printed) {
      figures.add(new Figure(table, key, how, columns, printed));
      return say(printed);
    }

    /** The finished sentence. */
    public Sentence build() {
      return new Sentence(text.toString(), List.copyOf(figures));
    }
  }
}
