package pondtally.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import pondtally.schema.FieldSchema;
import pondtally.schema.FieldType;
import pondtally.schema.HeadingMatch;
import pondtally.schema.TableSchema;

/**
 * How much a column looks like a field, by the words of its heading and by its cells. Good enough
 * for a suggestion that somebody decides, never for reading.
 */
final class FieldLikeness {

  /** From here on a column is suggested for a field. */
  static final double LIKELY = 3;

  private static final double KNOWN_HEADING = 10;
  private static final int SHORTEST_STEM = 3;
  private static final int SHORTEST_MISSPELT = 5;
  private static final Set<String> YES_AND_NO =
      Set.of("yes", "no", "y", "n", "true", "false", "x", "✓", "✔");

  private FieldLikeness() {}

  /** 0: the column cannot be the field; the more, the likelier. */
  static double of(ColumnSample column, FieldSchema field, TableSchema table) {
    Optional<HeadingMatch> match = table.match(column.heading());
    if (match.isPresent() && match.get().field().equals(field)) {
      return KNOWN_HEADING;
    }
    double byCells = byCells(column.cells(), field);
    if (byCells <= 0) {
      return 0;
    }
    boolean namesUnit = table.matchAs(column.heading(), field).unit() != null;
    return byCells + byWords(column.heading(), field) + (namesUnit ? 1 : 0);
  }

  private static double byCells(Set<String> cells, FieldSchema field) {
    if (cells.isEmpty()) {
      return 0.1;
    }
    if (!field.codes().isEmpty()) {
      double known = share(cells, cell -> field.codes().contains(code(cell)));
      return known >= 0.5 ? 5 : mayBeCodes(cells) ? 0.5 + known : 0;
    }
    return switch (field.type()) {
      case DATE -> share(cells, FieldLikeness::isDate) < 0.5 ? 0 : field.required() ? 3 : 1.5;
      case BOOLEAN -> share(cells, c -> YES_AND_NO.contains(code(c))) < 0.5 ? 0 : 2;
      case YEAR -> share(cells, cell -> cell.matches("(19|20)\\d\\d")) < 1 ? 0 : 2.5;
      case NUMBER, INTEGER -> share(cells, cell -> isNumber(cell, field)) < 0.5 ? 0 : 0.5;
      case STRING -> share(cells, cell -> isDate(cell) || isFraction(cell)) > 0.5 ? 0 : 0.5;
    };
  }

  private static String code(String cell) {
    return cell.toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
  }

  /** Words of a partner's own that are used again and again. */
  private static boolean mayBeCodes(Set<String> cells) {
    return cells.size() <= 12 && cells.stream().noneMatch(cell -> cell.matches(".*\\d.*"));
  }

  private static boolean isDate(String cell) {
    return IsoDay.parse(cell) != IsoDay.NONE
        || DateText.of(cell).form() == DateText.Form.YEAR_LAST
        || DateText.of(cell).form() == DateText.Form.SHORT_YEAR
        || DateText.of(cell).form() == DateText.Form.PLAIN;
  }

  private static boolean isNumber(String cell, FieldSchema field) {
    NumberText number = NumberText.of(cell);
    boolean isRead = number.mark() != NumberText.Mark.BROKEN;
    return isRead && (field.type() == FieldType.NUMBER || number.after().isEmpty());
  }

  /** Nobody numbers a site or a device with decimals. */
  private static boolean isFraction(String cell) {
    return cell.matches("[-+]?\\d+[.,]\\d+");
  }

  private static double share(Set<String> cells, Predicate<String> test) {
    return (double) cells.stream().filter(test).count() / cells.size();
  }

  /** Up to 4: how many words heading and name share, stems such as {@code dia} included. */
  private static double byWords(String heading, FieldSchema field) {
    List<String> given = words(heading);
    List<String> names = new ArrayList<>(field.synonyms());
    names.add(field.name());
    double best = 0;
    for (String name : names) {
      List<String> known = words(name);
      long met =
          given.stream().filter(word -> known.stream().anyMatch(w -> isLike(word, w))).count();
      if (met > 0) {
        best = Math.max(best, 3.0 * met / given.size() + (double) met / known.size());
      }
    }
    return best;
  }

  private static boolean isLike(String a, String b) {
    if (a.equals(b)) {
      return true;
    }
    String shorter = a.length() < b.length() ? a : b;
    String longer = a.length() < b.length() ? b : a;
    return shorter.length() >= SHORTEST_STEM
        && (longer.startsWith(shorter)
            || shorter.length() >= SHORTEST_MISSPELT
                && !Likeness.nearest(longer, List.of(shorter)).isEmpty());
  }

  private static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")) {
      if (word.length() > 1) {
        words.add(word);
      }
    }
    return words;
  }
}
