package pondtally.reports.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.stream.Collectors;
import pondtally.reports.view.Figure;

/**
 * Where a printed figure was read, as two attributes: {@code data-cell} is table, key and columns
 * between semicolons, the key written as in a web address; {@code data-how} says what was done with
 * the rows: {@code cell}, {@code rows} (their number), {@code sum}, {@code fact}, or {@code
 * without} (the number of rows in which one of the columns holds no number).
 */
final class Source {

  private Source() {}

  /** Names and values of the attributes in turn. */
  static String[] attributes(Figure figure) {
    return new String[] {
      "data-cell", cell(figure), "data-how", figure.how().name().toLowerCase(Locale.ROOT)
    };
  }

  private static String cell(Figure figure) {
    String key =
        figure.key().entrySet().stream()
            .map(entry -> coded(entry.getKey()) + "=" + coded(entry.getValue()))
            .collect(Collectors.joining("&"));
    return figure.table() + ";" + key + ";" + String.join(",", figure.columns());
  }

  private static String coded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
