package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.NumberText;

/** What became of the rows and who has not sent any, in sentences. */
public final class DataSentences {

  private DataSentences() {}

  static List<Sentence> of(TablePackage tables) {
    List<Sentence> sentences = new ArrayList<>();
    rows(tables, sentences);
    completeness(tables, sentences);
    return sentences;
  }

  private static void rows(TablePackage tables, List<Sentence> sentences) {
    Rows account = Rows.of(tables, "row_account");
    if (account.list().isEmpty()) {
      return;
    }
    sentences.add(
        Sentence.of("Rows read: ")
            .sum(account, sum(account, "rows_read"), "rows_read")
            .say(". Used as they stood: ")
            .sum(account, sum(account, "used"), "used")
            .say("; used with a change: ")
            .sum(account, sum(account, "changed"), "changed")
            .say("; set aside: ")
            .sum(account, sum(account, "set_aside"), "set_aside")
            .say("; duplicates: ")
            .sum(account, sum(account, "duplicate"), "duplicate")
            .say(reasons(tables))
            .build());
  }

  /** The public edition has no list of issues, no fix list and no names of files. */
  public static boolean hasReasons(TablePackage tables) {
    return tables.table("data_issues").isPresent();
  }

  private static String reasons(TablePackage tables) {
    return hasReasons(tables) ? ". The reasons stand beside the rows in fix-list.xlsx." : ".";
  }

  private static String sum(Rows rows, String column) {
    return NumberText.count(
        rows.list().stream().mapToLong(row -> (long) Cells.number(row, column).orElse(0)).sum());
  }

  private static void completeness(TablePackage tables, List<Sentence> sentences) {
    Rows all = Rows.of(tables, "completeness");
    Optional<String> latest =
        all.list().stream().map(row -> row.text("year")).max(String::compareTo);
    if (latest.isEmpty()) {
      return;
    }
    Rows year = all.where("year", latest.get());
    sentences.add(
        Sentence.of("Of ")
            .sum(year, sum(year, "devices_expected"), "devices_expected")
            .say(" devices in service in " + latest.get() + ", ")
            .sum(year, sum(year, "devices_seen"), "devices_seen")
            .say(" were visited that year.")
            .build());
    List<Row> silent =
        year.list().stream().filter(row -> row.text("last_date_sent").isEmpty()).toList();
    if (!silent.isEmpty()) {
      Rows none = year.where("last_date_sent", "");
      sentences.add(
          Sentence.of("")
              .rows(none, NumberText.count(silent.size(), "partners"))
              .say(" sent nothing dated in " + latest.get() + ": ")
              .say(silent.stream().map(r -> r.text("partner")).collect(Collectors.joining("; ")))
              .say(".")
              .build());
    }
  }
}
