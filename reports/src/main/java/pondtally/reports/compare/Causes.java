package pondtally.reports.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pondtally.reports.table.Field;
import pondtally.reports.text.Messages;

/**
 * What can have moved a figure: every setting that differs and reaches it, and every kind of record
 * it is made from of which other rows count. Where only one thing differs it is the cause; where
 * several do, the tables do not tell their shares apart, and all are named.
 */
final class Causes {

  private static final String UNEXPLAINED = "unexplained";

  private final Reach reach;
  private final List<SettingChange> settings;
  private final Map<String, Set<String>> kindsByInput;
  private final GroupRecords groups;

  Causes(Reach reach, List<SettingChange> settings, List<RowChange> rows, GroupRecords groups) {
    this.reach = reach;
    this.settings = settings;
    this.groups = groups;
    kindsByInput =
        rows.stream()
            .collect(
                Collectors.groupingBy(
                    RowChange::table,
                    Collectors.mapping(RowChange::kind, Collectors.toCollection(TreeSet::new))));
  }

  /** Codes, with commas between, and the same in words. */
  record Cause(String codes, String words) {}

  /**
   * What can have moved a figure.
   *
   * @param field null for a whole row
   */
  Cause of(String table, String grouping, String group, Field field) {
    Set<String> codes = new LinkedHashSet<>();
    List<String> words = new ArrayList<>();
    records(table, grouping, group, field, codes, words);
    for (SettingChange setting : settings) {
      if (reach.reaches(setting.setting(), table, grouping, field)) {
        codes.add(reach.source(setting.setting()));
        words.add(said("compare.why.setting." + setting.setting(), setting));
      }
    }
    if (codes.isEmpty()) {
      codes.add(UNEXPLAINED);
      words.add(Messages.reports().text("compare.why.unexplained"));
    }
    return new Cause(String.join(", ", codes), String.join("; ", words));
  }

  private static String said(String key, SettingChange setting) {
    Messages messages = Messages.reports();
    return messages.text(
        messages.has(key) ? key : "compare.why.setting",
        Map.of(
            "setting", setting.setting(),
            "before",
                setting.before().isEmpty() ? messages.text("compare.notSet") : setting.before(),
            "after",
                setting.after().isEmpty() ? messages.text("compare.notSet") : setting.after()));
  }

  private void records(
      String table,
      String grouping,
      String group,
      Field field,
      Set<String> codes,
      List<String> words) {
    boolean isOwn = field == null || !groups.isPooled(field.name());
    if (isOwn && groups.isUntouched(grouping, group)) {
      return;
    }
    for (String kind : List.of(RowChange.NEW_ROWS, RowChange.CORRECTED_ROWS, RowChange.ROWS_GONE)) {
      List<String> inputs =
          reach.inputs(table).stream()
              .filter(input -> kindsByInput.getOrDefault(input, Set.of()).contains(kind))
              .toList();
      if (!inputs.isEmpty()) {
        codes.add(kind);
        words.add(
            Messages.reports()
                .text("compare.why." + kind, Map.of("inputs", String.join(", ", inputs))));
      }
    }
    if (!codes.isEmpty()) {
      groups.words(grouping, group).ifPresent(words::add);
    }
  }
}
