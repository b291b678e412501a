package pondtally.reports.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pondtally.reports.text.Messages;

/**
 * A sentence of the message bundle whose places are filled with words and figures. The pattern
 * decides in which order they stand.
 */
public final class Said {

  /** Stands for a figure while the pattern is filled in; no text has such characters. */
  private static final Pattern PLACE = Pattern.compile("\uE000(\\d+)\uE001");

  private final String key;
  private final Map<String, Object> arguments = new HashMap<>();
  private final List<Figure> figures = new ArrayList<>();

  private Said(String key) {
    this.key = key;
  }

  /** Starts with the message of that key. */
  public static Said of(String key) {
    return new Said(key);
  }

  /** A whole number that chooses a plural form; it is not printed by itself. */
  public Said number(String name, long number) {
    arguments.put(name, number);
    return this;
  }

  /** Words without a figure. */
  public Said words(String name, String words) {
    arguments.put(name, words);
    return this;
  }

  /** Words printed from cells of the first of the rows. */
  public Said cell(String name, Rows row, String printed, String... columns) {
    return figure(
        name, new Figure(row.table(), row.key(), Figure.How.CELL, List.of(columns), printed));
  }

  /** Words printed from the number of rows. */
  public Said rows(String name, Rows rows, String printed) {
    return figure(name, new Figure(rows.table(), rows.key(), Figure.How.ROWS, List.of(), printed));
  }

  /** Words printed from the sum of a column over the rows. */
  public Said sum(String name, Rows rows, String printed, String column) {
    return figure(
        name, new Figure(rows.table(), rows.key(), Figure.How.SUM, List.of(column), printed));
  }

  /** Words printed from a fact of the run. */
  public Said fact(String name, String fact, String printed) {
    return figure(name, new Figure("", Map.of(), Figure.How.FACT, List.of(fact), printed));
  }

  /** A clause with figures of its own, which the pattern puts where it belongs. */
  public Said part(String name, Said clause) {
    return parts(name, List.of(clause));
  }

  /** Clauses of a kind, apart by commas. */
  public Said parts(String name, List<Said> clauses) {
    StringBuilder joined = new StringBuilder();
    for (Said clause : clauses) {
      joined.append(joined.length() == 0 ? "" : Messages.of("list.separator"));
      int before = figures.size();
      joined.append(
          PLACE
              .matcher(Messages.of(clause.key, clause.arguments))
              .replaceAll(m -> "\uE000" + (before + Integer.parseInt(m.group(1))) + "\uE001"));
      figures.addAll(clause.figures);
    }
    return words(name, joined.toString());
  }

  /** A clause where it applies. */
  public Said part(String name, Optional<Said> clause) {
    return clause.isPresent() ? part(name, clause.get()) : words(name, "");
  }

  private Said figure(String name, Figure figure) {
    arguments.put(name, "\uE000" + figures.size() + "\uE001");
    figures.add(figure);
    return this;
  }

  /** The finished sentence. */
  public Sentence build() {
    Matcher place = PLACE.matcher(Messages.of(key, arguments));
    StringBuilder text = new StringBuilder();
    List<Figure> inOrder = new ArrayList<>();
    while (place.find()) {
      Figure figure = figures.get(Integer.parseInt(place.group(1)));
      inOrder.add(figure);
      place.appendReplacement(text, Matcher.quoteReplacement(figure.printed()));
    }
    place.appendTail(text);
    return new Sentence(text.toString(), List.copyOf(inOrder));
  }
}
