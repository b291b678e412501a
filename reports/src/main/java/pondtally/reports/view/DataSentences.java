package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
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
        Said.of("view.DataSentences.rows-read-used-as-they-stood")
            .sum("rowsRead", account, sum(account, "rows_read"), "rows_read")
            .sum("used", account, sum(account, "used"), "used")
            .sum("changed", account, sum(account, "changed"), "changed")
            .sum("setAside", account, sum(account, "set_aside"), "set_aside")
            .sum("duplicate", account, sum(account, "duplicate"), "duplicate")
            .words("reasons", reasons(tables))
            .build());
  }

  /** The public edition has no list of issues, no fix list and no names of files. */
  public static boolean hasReasons(TablePackage tables) {
    return tables.table("data_issues").isPresent();
  }

  private static String reasons(TablePackage tables) {
    return hasReasons(tables)
        ? Messages.of("view.DataSentences.the-reasons-stand-beside-the-rows")
        : ".";
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
        Said.of("view.DataSentences.of-devices-in-service-in-were")
            .sum("devicesExpected", year, sum(year, "devices_expected"), "devices_expected")
            .words("latest", latest.get())
            .sum("devicesSeen", year, sum(year, "devices_seen"), "devices_seen")
            .build());
    List<Row> silent =
        year.list().stream().filter(row -> row.text("last_date_sent").isEmpty()).toList();
    if (!silent.isEmpty()) {
      Rows none = year.where("last_date_sent", "");
      sentences.add(
          Said.of("view.DataSentences.sent-nothing-dated-in")
              .rows("none", none, NumberText.count(silent.size(), "partners"))
              .words("latest", latest.get())
              .words(
                  "joining",
                  silent.stream().map(r -> r.text("partner")).collect(Collectors.joining("; ")))
              .build());
    }
  }
}
