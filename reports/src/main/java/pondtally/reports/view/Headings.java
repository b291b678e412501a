package pondtally.reports.view;

import java.util.Locale;
import java.util.Map;
import pondtally.reports.table.Field;
import pondtally.reports.text.Messages;

/**
 * What a column is called on paper, with its unit. The message bundle names them; a column that it
 * does not have is told by its own name.
 */
public final class Headings {

  private static final Map<String, String> SUFFIXES =
      Map.of("usd", "_usd", "days", "_days", "years", "_years", "acres", "_acres");

  private Headings() {}

  /**
   * The heading of {@code field}, for example {@code Total (2024 USD)}.
   *
   * @param priceYear year of the dollars; empty leaves it out
   */
  public static String of(Field field, String priceYear) {
    String words = Messages.or("heading." + field.name(), spelledOut(field));
    String unit = unit(field.unit(), priceYear);
    return unit.isEmpty() || words.endsWith(")") || names(words, unit)
        ? words
        : Messages.of("heading.with-unit", Map.of("heading", words, "unit", unit));
  }

  private static String spelledOut(Field field) {
    String name = field.name();
    String suffix = SUFFIXES.getOrDefault(field.unit(), "");
    if (!suffix.isEmpty() && name.endsWith(suffix)) {
      name = name.substring(0, name.length() - suffix.length());
    }
    String words = name.replace('_', ' ');
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static String unit(String unit, String priceYear) {
    return switch (unit) {
      case "usd" -> (Messages.of("heading.unit.usd", Map.of("year", priceYear))).trim();
      case "failures per 100 device-years" -> Messages.of("heading.unit.rate");
      default -> Messages.or("unit." + unit.replace(' ', '-') + ".other", unit);
    };
  }

  /** Whether the words already say the unit, as "Device-years" or "Failures" do. */
  private static boolean names(String words, String unit) {
    return plain(words).contains(plain(unit));
  }

  private static String plain(String words) {
    return words.toLowerCase(Locale.ROOT).replace(' ', '-');
  }
}
