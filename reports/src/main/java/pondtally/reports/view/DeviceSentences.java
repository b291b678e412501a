package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** Which devices work today, in sentences. */
final class DeviceSentences {

  private DeviceSentences() {}

  static List<Sentence> of(TablePackage tables) {
    Rows devices = Rows.of(tables, "devices");
    int all = devices.list().size();
    if (all == 0) {
      return List.of();
    }
    List<Sentence> sentences = new ArrayList<>();
    sentences.add(counts(devices));
    sentences.add(unverified(devices, tables));
    return sentences;
  }

  static Sentence counts(Rows devices) {
    Rows retired = devices.where("state", "retired");
    Said said =
        Said.of("view.DeviceSentences.the-records-hold")
            .rows("devices", devices, NumberText.count(devices.list().size(), "devices"))
            .part(
                "retired",
                Optional.of(retired)
                    .filter(rows -> !rows.list().isEmpty())
                    .map(
                        rows ->
                            Said.of("view.DeviceSentences.of-them-retired")
                                .rows("count", rows, NumberText.count(rows.list().size()))));
    for (String state : List.of("working", "reduced", "failed", "unverified")) {
      said.rows(state, devices.where("state", state), count(devices, state));
    }
    return said.build();
  }

  private static String count(Rows devices, String state) {
    return NumberText.count(devices.where("state", state).list().size());
  }

  static Sentence unverified(Rows devices, TablePackage tables) {
    Rows unverified = devices.where("state", "unverified");
    int count = unverified.list().size();
    String since = since(tables);
    if (count == 0) {
      return Said.of("view.DeviceSentences.every-device-not-retired-was-looked")
          .words("since", since)
          .build();
    }
    Rows never = unverified.only(row -> row.has("last_visit_on")).where("last_visit_on", "");
    return Said.of("view.DeviceSentences.not-been-looked-at-for-more")
        .rows("devices", unverified, NumberText.count(count, "devices"))
        .number("n", count)
        .words("since", since)
        .part(
            "never",
            Optional.of(never)
                .filter(rows -> !rows.list().isEmpty())
                .map(
                    rows ->
                        Said.of("view.DeviceSentences.of-them-never")
                            .rows("count", rows, NumberText.count(rows.list().size()))))
        .build();
  }

  private static String since(TablePackage tables) {
    String days = tables.fact("revisit_every_days");
    return days.isEmpty()
        ? Messages.of("view.DeviceSentences.twice-the-planned-interval")
        : NumberText.count(2 * Long.parseLong(days), "days");
  }
}
