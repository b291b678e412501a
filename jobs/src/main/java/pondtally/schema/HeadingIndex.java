package pondtally.schema;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the field of a table that a heading stands for. */
final class HeadingIndex {

  private final Map<String, FieldSchema> names = new HashMap<>();
  private final Map<String, FieldSchema> synonyms = new HashMap<>();
  private final Map<String, FieldSchema> withoutUnit = new HashMap<>();

  HeadingIndex(String table, List<FieldSchema> fields) {
    fields.forEach(field -> add(table, names, HeadingText.key(field.name()), field));
    for (FieldSchema field : fields) {
      for (String synonym : field.synonyms()) {
        add(table, synonyms, HeadingText.key(synonym), field);
      }
      String base = HeadingText.of(field.name()).baseKey();
      if (field.unit() != null && !base.isEmpty()) {
        add(table, withoutUnit, base, field);
      }
    }
  }

  private static void add(
      String table, Map<String, FieldSchema> index, String key, FieldSchema field) {
    FieldSchema other = index.putIfAbsent(key, field);
    if (other != null && !other.equals(field)) {
      throw new IllegalStateException(
          "%s: %s stands for %s and %s".formatted(table, key, other.name(), field.name()));
    }
  }

  Optional<HeadingMatch> match(String heading) {
    HeadingText text = HeadingText.of(heading);
    FieldSchema named = names.get(text.key());
    if (named != null) {
      return Optional.of(new HeadingMatch(named, signOf(text, named), text.comment(), true));
    }
    FieldSchema field = byOtherName(text.key());
    if (field != null) {
      return Optional.of(new HeadingMatch(field, signOf(text, field), text.comment(), false));
    }
    return text.unit() == null ? Optional.empty() : matchWithUnit(text);
  }

  /** A unit written as a sign, which the key has not; null: none. */
  private static Unit signOf(HeadingText text, FieldSchema field) {
    return field.unit() != null && text.key().equals(text.baseKey()) ? text.unit() : null;
  }

  private Optional<HeadingMatch> matchWithUnit(HeadingText text) {
    FieldSchema field =
        text.baseKey().isEmpty() ? calledByUnit(text.unit()) : known(text.baseKey());
    if (field == null || field.unit() == null) {
      return Optional.ofNullable(field).map(f -> new HeadingMatch(f, null, text.comment(), false));
    }
    return Optional.of(new HeadingMatch(field, text.unit(), text.comment(), false));
  }

  /**
   * The field that a bare unit as heading means: the one that is called by a unit itself, as {@code
   * acres} is, else the only one of that dimension; null: none.
   */
  private FieldSchema calledByUnit(Unit unit) {
    List<FieldSchema> fitting =
        names.values().stream()
            .filter(field -> field.unit() != null)
            .filter(field -> field.unit().dimension() == unit.dimension())
            .toList();
    return fitting.stream()
        .filter(field -> Unit.find(field.name()).isPresent())
        .findFirst()
        .orElse(fitting.size() == 1 ? fitting.get(0) : null);
  }

  private FieldSchema known(String key) {
    FieldSchema named = names.get(key);
    return named != null ? named : byOtherName(key);
  }

  private FieldSchema byOtherName(String key) {
    FieldSchema field = withoutUnit.get(key);
    return field != null ? field : synonyms.get(key);
  }
}
