package pondtally.reports.chart;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pondtally.reports.table.Field;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;

/**
 * Letters of names that no font of this machine has. Charts as PNG pictures, and the document that
 * shows them, have a box in place of each; in SVG and on the page the reader's fonts fill them in.
 */
public final class MissingLetters {

  /** Columns whose names charts show. */
  private static final List<String> SHOWN = List.of("group", "group_a", "group_b", "level");

  private MissingLetters() {}

  /** The letters, each once and in the order of their code points; empty where there are none. */
  public static String of(TablePackage tables) {
    TreeSet<Integer> missing = new TreeSet<>();
    addMissing(tables.fact("region"), missing);
    for (Table table : tables.tables()) {
      for (Field field : table.fields()) {
        if (SHOWN.contains(field.name())) {
          table.rows().stream()
              .map((Row row) -> row.text(field.name()))
              .distinct()
              .forEach(name -> addMissing(name, missing));
        }
      }
    }
    return missing.stream().map(Character::toString).collect(Collectors.joining());
  }

  private static void addMissing(String name, TreeSet<Integer> missing) {
    if (Lettering.regular(1).canDisplayUpTo(name) >= 0) {
      name.codePoints()
          .filter(letter -> !Lettering.isThere(Character.toString(letter)))
          .forEach(missing::add);
    }
  }
}
