package pondtally.reports.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import pondtally.reports.table.TablePackage;

/**
 * A setting that differs between two runs.
 *
 * @param moves which figures it can move, in words
 */
public record SettingChange(String setting, String before, String after, String moves) {

  static List<SettingChange> of(TablePackage before, TablePackage after, Reach reach) {
    TreeSet<String> names = new TreeSet<>(before.facts().keySet());
    names.addAll(after.facts().keySet());
    List<SettingChange> changes = new ArrayList<>();
    for (String name : names) {
      if (!before.fact(name).equals(after.fact(name))) {
        changes.add(
            new SettingChange(name, before.fact(name), after.fact(name), reach.words(name)));
      }
    }
    return changes;
  }
}
