package pondtally.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pondtally.check.UserError;

/**
 * {@code aliases.csv} of a program folder: ids which the coordinator has decided mean the same.
 * Columns {@code kind} (site, device, pond or property), {@code id} and {@code same_as}.
 */
final class Aliases {

  static final String NAME = "aliases.csv";
  private static final List<String> HEADINGS = List.of("kind", "id", "same_as");
  private static final List<String> KINDS = List.of("site", "device", "pond", "property");

  private final Map<String, Map<String, String>> byField = new TreeMap<>();
  private final List<Alias> rows = new ArrayList<>();

  private Aliases() {}

  /**
   * What the file says; nothing where there is no such file.
   *
   * @throws UserError if the file holds anything else, an id twice, or a circle
   */
  static Aliases read(Path folder) {
    Path file = folder.resolve(NAME);
    Aliases aliases = new Aliases();
    if (Files.isRegularFile(file)) {
      aliases.readRows(file);
    }
    aliases.byField.values().forEach(Aliases::followChains);
    return aliases;
  }

  /**
   * The id that counts, by field ({@code site_id}, ...) and by the id that is written. Chains are
   * followed to their end.
   */
  Map<String, Map<String, String>> byField() {
    return byField;
  }

  /** Its rows as they stand there. */
  List<Alias> rows() {
    return List.copyOf(rows);
  }

  private void readRows(Path file) {
    try {
      CsvSource.of(file, new TextForm(null, ',')).read(this::row);
    } catch (IOException e) {
      throw UserError.input("%s cannot be read: %s".formatted(NAME, e.getMessage()));
    }
  }

  private void row(RawRow row) {
    List<String> cells =
        List.of(Blank.clean(row.cell(0)), Blank.clean(row.cell(1)), Blank.clean(row.cell(2)));
    if (row.isBlank() || cells.equals(HEADINGS)) {
      return;
    }
    String kind = cells.get(0);
    if (row.width > HEADINGS.size() || cells.contains("")) {
      throw wrong(row, "expected three cells, kind,id,same_as, as device,B-12,B12");
    }
    if (!KINDS.contains(kind)) {
      String near = Likeness.nearest(kind, KINDS);
      throw wrong(
          row,
          "%s is no kind of id. %sExpected one of: %s"
              .formatted(
                  Shown.value(kind),
                  near.isEmpty() ? "" : "Did you mean %s? ".formatted(near),
                  String.join(", ", KINDS)));
    }
    Map<String, String> ids = byField.computeIfAbsent(kind + "_id", field -> new TreeMap<>());
    String other = ids.put(cells.get(1), cells.get(2));
    rows.add(new Alias(row.number, kind + "_id", cells.get(1)));
    if (other != null) {
      throw wrong(
          row,
          "%s is the same as %s already".formatted(Shown.value(cells.get(1)), Shown.value(other)));
    }
  }

  private static UserError wrong(RawRow row, String problem) {
    return UserError.input("%s, line %s: %s.".formatted(NAME, row.number, problem));
  }

  private static void followChains(Map<String, String> ids) {
    for (Map.Entry<String, String> alias : ids.entrySet()) {
      String end = alias.getValue();
      for (int steps = 0; ids.containsKey(end); steps++) {
        if (steps > ids.size() || end.equals(alias.getKey())) {
          throw UserError.input(
              "%s: %s leads back to itself. Expected one id of them that is not in the column id."
                  .formatted(NAME, Shown.value(alias.getKey())));
        }
        end = ids.get(end);
      }
      alias.setValue(end);
    }
  }
}
