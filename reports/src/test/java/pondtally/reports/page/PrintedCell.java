package pondtally.reports.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;

/** A piece of the page with what its attributes say it was read from. */
final class PrintedCell {

  private static final Pattern NUMBER = Pattern.compile("[\u2212-]?\\$?\\d[\\d,]*(\\.\\d+)?");
  private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

  private final String printed;
  private final String how;
  private final String table;
  private final Map<String, String> key = new LinkedHashMap<>();
  private final List<String> columns;
  private final boolean number;
  private final String place;

  private PrintedCell(Element element) {
    printed = element.getTextContent();
    how = element.getAttribute("data-how");
    place = element.getAttribute("data-cell");
    number = element.getAttribute("class").equals("number");
    String[] parts = place.split(";", -1);
    table = parts[0];
    columns = parts[2].isEmpty() ? List.of() : Arrays.asList(parts[2].split(","));
    for (String pair : parts[1].split("&")) {
      if (!pair.isEmpty()) {
        String[] halves = pair.split("=", -1);
        key.put(decoded(halves[0]), decoded(halves[1]));
      }
    }
  }

  static PrintedCell of(Element element) {
    return new PrintedCell(element);
  }

  private static String decoded(String text) {
    return URLDecoder.decode(text, StandardCharsets.UTF_8);
  }

  /** Looks up what was printed. */
  void check(TablePackage tables) {
    switch (how) {
      case "fact" -> checkFact(tables);
      case "rows" -> assertNumbers(List.of((double) rows(tables).size()));
      case "sum" -> assertNumbers(List.of(sum(tables)));
      case "without" -> assertNumbers(List.of((double) without(tables)));
      default -> checkCell(tables);
    }
  }

  private void checkFact(TablePackage tables) {
    String fact = tables.fact(columns.get(0));
    if (fact.matches("\\d+(\\.\\d+)?")) {
      assertNumbers(List.of(Double.valueOf(fact)));
    } else if (fact.isEmpty()) {
      assertEquals("\u2013not known", printed, place);
    } else if (DATE.matcher(fact).matches()) {
      assertTrue(printed.equals(fact) || printed.contains(fact.substring(0, 4)), place);
    } else {
      assertTrue(printed.equals(fact) || List.of("yes", "no").contains(printed), place);
    }
  }

  private void checkCell(TablePackage tables) {
    List<Row> rows = rows(tables);
    assertEquals(1, rows.size(), place);
    List<String> raw = columns.stream().map(rows.get(0)::text).toList();
    if (raw.get(0).equals("withheld")) {
      assertEquals("withheld", printed, place);
    } else if (raw.get(0).isEmpty()) {
      // A name of our own, as "text file", or the sign for not known; never a number.
      assertFalse(NUMBER.matcher(printed).find(), place + " " + printed);
    } else if (number || raw.size() > 1 || !isText(tables, columns.get(0))) {
      assertNumbers(raw.stream().map(Double::valueOf).toList());
    } else {
      assertWords(raw.get(0));
    }
  }

  private boolean isText(TablePackage tables, String column) {
    return tables.table(table).orElseThrow().fields().stream()
        .filter(field -> field.name().equals(column))
        .allMatch(f -> !f.type().equals("number") && !f.type().equals("integer"));
  }

  /** Digits of a code or a name are those of the table. */
  private void assertWords(String raw) {
    assertEquals(raw.replaceAll("\\D", ""), printed.replaceAll("\\D", ""), place);
  }

  private List<Row> rows(TablePackage tables) {
    return tables.table(table).orElseThrow().rows().stream()
        .filter(
            row -> key.entrySet().stream().allMatch(e -> row.text(e.getKey()).equals(e.getValue())))
        .toList();
  }

  private double sum(TablePackage tables) {
    return rows(tables).stream().mapToDouble(row -> row.number(columns.get(0)).orElse(0)).sum();
  }

  private long without(TablePackage tables) {
    return rows(tables).stream()
        .filter(row -> columns.stream().anyMatch(column -> row.text(column).isEmpty()))
        .count();
  }

  private void assertNumbers(List<Double> cells) {
    boolean hundred = printed.contains("of\u00a0100") || printed.contains("%");
    String text = printed.replace("of\u00a0100", "");
    List<String> numbers = new ArrayList<>();
    Matcher matcher = NUMBER.matcher(text);
    while (matcher.find()) {
      numbers.add(matcher.group());
    }
    assertEquals(cells.size(), numbers.size(), place + " " + printed);
    for (int i = 0; i < cells.size(); i++) {
      double value = cells.get(i) * (hundred ? 100 : 1);
      double shown =
          Double.parseDouble(numbers.get(i).replaceAll("[,$]", "").replace('\u2212', '-'));
      String before = text.substring(0, text.indexOf(numbers.get(i)));
      if (before.matches("(?s).*(under|below)[ \u00a0]") || before.endsWith("fewer than\u00a0")) {
        assertTrue(value < shown, place + " " + printed);
      } else if (before.endsWith("over\u00a0") || before.endsWith("more than\u00a0")) {
        assertTrue(value > shown, place + " " + printed);
      } else {
        // Only limits are a reason to round above the last digit of a number in a table.
        boolean whole = number && cells.size() == 1 && numbers.get(i).indexOf('.') < 0;
        double half = whole ? 0.5 : halfLastDigit(numbers.get(i));
        assertEquals(value, shown, half + 1e-9, place + " " + printed);
      }
    }
  }

  /** Half of the place of the last digit that is not a rounding zero. */
  private static double halfLastDigit(String number) {
    int point = number.indexOf('.');
    if (point >= 0) {
      return 0.5 * Math.pow(10, -(number.length() - point - 1));
    }
    String digits = number.replaceAll("[^0-9]", "");
    int zeros = 0;
    while (zeros < digits.length() - 1 && digits.charAt(digits.length() - 1 - zeros) == '0') {
      zeros++;
    }
    return 0.5 * Math.pow(10, zeros);
  }
}
