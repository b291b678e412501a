package pondtally.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import pondtally.analysis.WetlandWorth;
import pondtally.check.UserError;
import pondtally.history.FailureDating;
import pondtally.history.FailureDefinition;
import pondtally.intake.SettingsText;
import pondtally.record.Code;

/**
 * Reads {@code program.yaml}. Every setting has a default; a key that is not known or a value out
 * of range stops the run.
 */
final class SettingsFile {

  private static final List<String> KEYS =
      List.of(
          "region",
          "as_of",
          "period",
          "watershed_digits",
          "failure",
          "failure_dated",
          "base_year",
          "discount_rate",
          "horizon_years",
          "labor_rate_usd",
          "volunteer_rate_usd",
          "revisit_every_days",
          "groups_below",
          "seed",
          "resamples",
          "wetland_value");

  private static final List<String> WORTH_KEYS = List.of("low", "high", "source", "year");
  private static final String WORTH_EXAMPLE =
      "{low: 500, high: 4000, source: \"who published it, when\", year: 2020}";

  private final String name;
  private final Map<String, Object> values;

  private SettingsFile(String name, Map<String, Object> values) {
    this.name = name;
    this.values = values;
  }

  /** The settings of a program folder. */
  static ProgramSettings read(Path folder) {
    Path file = folder.resolve("program.yaml");
    if (!Files.isRegularFile(file)) {
      return new SettingsFile("program.yaml", Map.of()).settings(Optional.empty());
    }
    String text = SettingsText.of(file, "program.yaml");
    SettingsFile settings = new SettingsFile("program.yaml", mapping("program.yaml", text));
    settings.checkKeys("", settings.values, KEYS);
    return settings.settings(Optional.of(text));
  }

  private static Map<String, Object> mapping(String name, String text) {
    Object root;
    try {
      Load load = new Load(LoadSettings.builder().setLabel(name).build());
      root = SettingsText.parsed(text, name, load::loadFromString);
    } catch (YamlEngineException e) {
      throw UserError.input(name + " is not valid YAML: " + e.getMessage().replace('\n', ' '));
    }
    if (root == null) {
      return Map.of();
    }
    if (!(root instanceof Map<?, ?> map)) {
      throw UserError.input(
          name + " must hold `key: value` lines, for example `as_of: 2025-12-31`.");
    }
    return map.entrySet().stream()
        .filter(entry -> entry.getValue() != null)
        .collect(Collectors.toMap(e -> String.valueOf(e.getKey()), Map.Entry::getValue));
  }

  private void checkKeys(String prefix, Map<String, Object> map, List<String> known) {
    for (String key : map.keySet()) {
      if (!known.contains(key)) {
        throw UserError.input(
            "%s: `%s%s` is not a setting. Settings are: %s."
                .formatted(name, prefix, key, String.join(", ", known)));
      }
    }
  }

  private ProgramSettings settings(Optional<String> source) {
    Map<String, Object> period = period();
    ProgramSettings settings =
        new ProgramSettings(
            text("region", "Beaver coexistence program"),
            date(values, "as_of"),
            date(period, "from"),
            date(period, "to"),
            integer("watershed_digits", 8, 2, 12),
            code(FailureDefinition.class, "failure", FailureDefinition.FAILED),
            code(FailureDating.class, "failure_dated", FailureDating.INTERVAL),
            values.containsKey("base_year")
                ? OptionalInt.of(integer("base_year", 0, 1900, 2200))
                : OptionalInt.empty(),
            number("discount_rate", 0.07, 0, 0.2),
            integer("horizon_years", 10, 1, 100),
            number("labor_rate_usd", 32, 0, 1000),
            values.containsKey("volunteer_rate_usd")
                ? OptionalDouble.of(number("volunteer_rate_usd", 0, 0, 1000))
                : OptionalDouble.empty(),
            integer("revisit_every_days", 180, 1, 3660),
            integer("groups_below", 5, 1, 1000),
            wholeNumber("seed", 20251231),
            integer("resamples", 2000, 100, 100_000),
            wetlandWorth(),
            source);
    if (settings.periodFrom().isPresent()
        && settings.periodTo().isPresent()
        && settings.periodFrom().getAsInt() > settings.periodTo().getAsInt()) {
      throw UserError.input(name + ": `period` ends before it begins.");
    }
    return settings;
  }

  private Map<String, Object> period() {
    return map("period", List.of("from", "to"), "{from: 2025-01-01, to: 2025-12-31}");
  }

  @SuppressWarnings("unchecked")
  private Map<String, Object> map(String key, List<String> keys, String example) {
    Object value = values.get(key);
    if (value == null) {
      return Map.of();
    }
    if (!(value instanceof Map<?, ?>)) {
      throw wrong(key, value, example);
    }
    Map<String, Object> map = (Map<String, Object>) value;
    checkKeys(key + ".", map, keys);
    return map;
  }

  private Optional<WetlandWorth> wetlandWorth() {
    Map<String, Object> map = map("wetland_value", WORTH_KEYS, WORTH_EXAMPLE);
    if (map.isEmpty()) {
      return Optional.empty();
    }
    boolean whole =
        map.keySet().containsAll(WORTH_KEYS)
            && map.get("low") instanceof Number
            && map.get("high") instanceof Number
            && map.get("year") instanceof Integer
            && !String.valueOf(map.get("source")).isBlank();
    if (!whole) {
      throw wrong("wetland_value", map, WORTH_EXAMPLE + ", all four");
    }
    double low = ((Number) map.get("low")).doubleValue();
    double high = ((Number) map.get("high")).doubleValue();
    if (!(low >= 0 && low <= high && high < 1e9)) {
      throw wrong("wetland_value", map, "`low` from 0 to `high`, dollars an acre and year");
    }
    return Optional.of(
        new WetlandWorth(low, high, String.valueOf(map.get("source")), (Integer) map.get("year")));
  }

  private String text(String key, String otherwise) {
    return values.containsKey(key) ? String.valueOf(values.get(key)) : otherwise;
  }

  private OptionalInt date(Map<String, Object> map, String key) {
    if (!map.containsKey(key)) {
      return OptionalInt.empty();
    }
    try {
      return OptionalInt.of((int) LocalDate.parse(String.valueOf(map.get(key))).toEpochDay());
    } catch (DateTimeException e) {
      throw wrong(key, map.get(key), "a date such as 2025-12-31");
    }
  }

  private int integer(String key, int otherwise, int least, int most) {
    long value = wholeNumber(key, otherwise);
    if (values.containsKey(key) && (value < least || value > most)) {
      throw wrong(key, value, "a whole number from " + least + " to " + most);
    }
    return (int) value;
  }

  private long wholeNumber(String key, long otherwise) {
    Object value = values.getOrDefault(key, otherwise);
    if (value instanceof Integer || value instanceof Long) {
      return ((Number) value).longValue();
    }
    throw wrong(key, value, "a whole number");
  }

  private double number(String key, double otherwise, double least, double most) {
    Object value = values.getOrDefault(key, otherwise);
    if (value instanceof Number number
        && number.doubleValue() >= least
        && number.doubleValue() <= most) {
      return number.doubleValue();
    }
    throw wrong(key, value, String.format(Locale.ROOT, "a number from %s to %s", least, most));
  }

  private <E extends Enum<E> & Code> E code(Class<E> type, String key, E otherwise) {
    if (!values.containsKey(key)) {
      return otherwise;
    }
    return Code.find(type, String.valueOf(values.get(key)))
        .orElseThrow(
            () ->
                wrong(
                    key,
                    values.get(key),
                    "one of "
                        + Stream.of(type.getEnumConstants())
                            .map(Code::code)
                            .collect(Collectors.joining(", "))));
  }

  private UserError wrong(String key, Object value, String expected) {
    return UserError.input("%s: `%s` is %s, expected %s.".formatted(name, key, value, expected));
  }
}
