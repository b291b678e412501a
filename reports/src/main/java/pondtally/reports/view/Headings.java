package pondtally.reports.view;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import pondtally.reports.table.Field;

/**
 * What a column is called on paper, with its unit. Names that need other words than their own stand
 * in {@code headings.properties}.
 */
public final class Headings {

  private static final Properties WORDS = read();
  private static final Map<String, String> SUFFIXES =
      Map.of("usd", "_usd", "days", "_days", "years", "_years", "acres", "_acres");

  private Headings() {}

  /**
   * The heading of {@code field}, for example {@code Total (2024 USD)}.
   *
   * @param priceYear year of the dollars; empty leaves it out
   */
  public static String of(Field field, String priceYear) {
    String words = WORDS.getProperty(field.name(), "");
    if (words.isEmpty()) {
      words = spelledOut(field);
    }
    String unit = unit(field.unit(), priceYear);
    return unit.isEmpty() || words.endsWith(")") || names(words, unit)
        ? words
        : words + " (" + unit + ")";
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
      case "usd" -> (priceYear + " USD").trim();
      case "failures per 100 device-years" -> "per 100 device-years";
      default -> unit;
    };
  }

  /** Whether the words already say the unit, as "Device-years" or "Failures" do. */
  private static boolean names(String words, String unit) {
    return plain(words).contains(plain(unit));
  }

  private static String plain(String words) {
    return words.toLowerCase(Locale.ROOT).replace(' ', '-');
  }

  private static Properties read() {
    Properties words = new Properties();
    try (InputStream in = Headings.class.getResourceAsStream("headings.properties")) {
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      return words;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
