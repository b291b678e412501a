package pondtally.reports.page;

import java.util.Arrays;
import java.util.stream.Collectors;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** What singles a row out beside its group, in words. */
final class RowKey {

  private RowKey() {}

  /** {@code basis=to-date; horizon_years=7.98904} as {@code Basis: to date; Horizon: 7.99}. */
  static String words(String key) {
    return Arrays.stream(key.split("; ", -1)).map(RowKey::part).collect(Collectors.joining("; "));
  }

  /** The heading of a column by its name in the tables. */
  static String column(String name) {
    return Messages.or("heading." + name, name.replace('_', ' '));
  }

  private static String part(String part) {
    int equals = part.indexOf('=');
    return equals < 0
        ? part
        : column(part.substring(0, equals)) + ": " + value(part.substring(equals + 1));
  }

  private static String value(String value) {
    if (value.matches("-?\\d+\\.\\d{3,}")) {
      return NumberText.decimal(Double.parseDouble(value), 2);
    }
    return value.matches("[a-z][a-z-]*") ? GroupText.words(value) : value;
  }
}
