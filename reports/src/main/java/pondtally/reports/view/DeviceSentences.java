package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
    Sentence.Builder text =
        Sentence.of(Messages.of("common.The-records-hold"))
            .rows(devices, NumberText.count(devices.list().size(), "devices"));
    if (!retired.list().isEmpty()) {
      text.say(", ")
          .rows(retired, NumberText.count(retired.list().size()))
          .say(Messages.of("view.DeviceSentences.of-them-retired"));
    }
    text.say(Messages.of("view.DeviceSentences.of-those-not-retired"));
    return text.rows(devices.where("state", "working"), count(devices, "working"))
        .say(Messages.of("view.DeviceSentences.working"))
        .rows(devices.where("state", "reduced"), count(devices, "reduced"))
        .say(Messages.of("view.DeviceSentences.at-reduced-flow"))
        .rows(devices.where("state", "failed"), count(devices, "failed"))
        .say(Messages.of("view.DeviceSentences.failed"))
        .rows(devices.where("state", "unverified"), count(devices, "unverified"))
        .say(Messages.of("view.DeviceSentences.unverified"))
        .build();
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
    Sentence.Builder text = Sentence.of("").rows(unverified, NumberText.count(count, "devices"));
    text.say(count == 1 ? Messages.of("common.has") : Messages.of("common.have"))
        .say(
            Messages.of(
                "view.DeviceSentences.not-been-looked-at-for-more", Map.of("since", since)));
    if (!never.list().isEmpty()) {
      text.say(" (")
          .rows(never, NumberText.count(never.list().size()))
          .say(Messages.of("view.DeviceSentences.of-them-never"));
    }
    return text.say(
            count == 1
                ? Messages.of("view.DeviceSentences.its-state-is-unverified")
                : Messages.of("view.DeviceSentences.their-state-is-unverified"))
        .build();
  }

  private static String since(TablePackage tables) {
    String days = tables.fact("revisit_every_days");
    return days.isEmpty()
        ? Messages.of("view.DeviceSentences.twice-the-planned-interval")
        : NumberText.count(2 * Long.parseLong(days), "days");
  }
}
