package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.DateText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** What changed between two runs, in sentences. */
public final class ChangeSentences {

  private static final Messages SAY = Messages.reports();

  private ChangeSentences() {}

  /** The title of the comparison. */
  public static String title(TablePackage tables) {
    String region = tables.fact("region");
    return region.isEmpty()
        ? SAY.text("compare.title.plain")
        : SAY.text("compare.title", Map.of("region", region));
  }

  /** What was compared, what went in, and the main figures. */
  public static List<Section> of(TablePackage tables) {
    return List.of(
        new Section(SAY.text("compare.section.runs"), runs(tables)),
        new Section(SAY.text("compare.section.figures"), MainChanges.of(tables)),
        new Section(SAY.text("compare.section.inputs"), inputs(tables)));
  }

  private static List<Sentence> runs(TablePackage tables) {
    Rows changes = Rows.of(tables, "changes");
    Rows changed = changes.where("kind", "changed");
    Rows added = changes.where("kind", "new");
    Rows gone = changes.where("kind", "gone");
    List<Sentence> all = new ArrayList<>();
    all.add(
        Said.of("compare.runs")
            .fact("beforeCut", "before_as_of", DateText.readable(tables.fact("before_as_of")))
            .words("beforeVersion", tables.fact("before_version"))
            .fact("afterCut", "as_of", DateText.readable(tables.fact("as_of")))
            .words("afterVersion", tables.fact("after_version"))
            .build());
    String compared = NumberText.count(Long.parseLong(tables.fact("compared")));
    if (changes.list().isEmpty()) {
      all.add(Said.of("compare.counts.none").fact("compared", "compared", compared).build());
      return all;
    }
    all.add(
        Said.of("compare.counts")
            .fact("compared", "compared", compared)
            .rows("changed", changed, NumberText.count(changed.list().size()))
            .rows("newRows", added, NumberText.count(added.list().size()))
            .rows("goneRows", gone, NumberText.count(gone.list().size()))
            .build());
    all.add(Said.of("compare.limits").build());
    all.add(Said.of("compare.together").build());
    all.add(Said.of("compare.curves").build());
    return all;
  }

  private static List<Sentence> inputs(TablePackage tables) {
    List<Sentence> all = new ArrayList<>();
    Rows settings = Rows.of(tables, "changed_settings");
    for (Row row : settings.list()) {
      all.add(
          Said.of("compare.setting")
              .words("label", Setting.label(row.text("setting")))
              .words("before", known(row.text("before")))
              .words("after", known(row.text("after")))
              .words("moves", row.text("moves"))
              .build());
    }
    if (settings.list().isEmpty()) {
      all.add(Said.of("compare.settings.none").build());
    }
    all.add(files(tables));
    rows(tables, all);
    records(tables, all);
    return all;
  }

  private static String known(String setting) {
    return setting.isEmpty() ? SAY.text("compare.notSet") : setting;
  }

  private static Sentence files(TablePackage tables) {
    Rows files = Rows.of(tables, "changed_files");
    if (!tables.fact("files_known").equals("true")) {
      return Said.of("compare.files.unknown").build();
    }
    if (files.list().isEmpty()) {
      return Said.of("compare.files.none").build();
    }
    return kinds("compare.files", files);
  }

  private static Sentence kinds(String key, Rows rows) {
    Said said = Said.of(key);
    for (String kind : List.of("new", "changed", "gone")) {
      Rows some = rows.where("kind", kind);
      said.rows(kind, some, NumberText.count(some.list().size()));
    }
    return said.build();
  }

  private static void rows(TablePackage tables, List<Sentence> all) {
    Rows rows = Rows.of(tables, "changed_rows");
    if (rows.list().isEmpty()) {
      return;
    }
    Said said = Said.of("compare.rows");
    for (String column :
        List.of(
            "rows_before",
            "rows_after",
            "counted_before",
            "counted_after",
            "set_aside_before",
            "set_aside_after")) {
      double sum = rows.list().stream().mapToDouble(r -> r.number(column).orElse(0)).sum();
      said.sum(column, rows, NumberText.count((long) sum), column);
    }
    all.add(said.build());
  }

  private static void records(TablePackage tables, List<Sentence> all) {
    Rows records = Rows.of(tables, "changed_records");
    if (records.list().isEmpty()) {
      all.add(Said.of("compare.records.none").build());
    }
    for (String subject : List.of("device", "site")) {
      Rows some = records.where("subject", subject);
      if (!some.list().isEmpty()) {
        all.add(kinds("compare.records." + subject, some));
      }
    }
  }
}
