package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import pondtally.reports.table.TablePackage;
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
        Sentence.of("The records hold ")
            .rows(devices, NumberText.count(devices.list().size(), "devices"));
    if (!retired.list().isEmpty()) {
      text.say(", ").rows(retired, NumberText.count(retired.list().size())).say(" of them retired");
    }
    text.say(". Of those not retired: ");
    return text.rows(devices.where("state", "working"), count(devices, "working"))
        .say(" working, ")
        .rows(devices.where("state", "reduced"), count(devices, "reduced"))
        .say(" at reduced flow, ")
        .rows(devices.where("state", "failed"), count(devices, "failed"))
        .say(" failed, ")
        .rows(devices.where("state", "unverified"), count(devices, "unverified"))
        .say(" unverified.")
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
      return Sentence.of(
              "Every device not retired was looked at within "
                  + since
                  + ", or is known to have failed.")
          .build();
    }
    Rows never = unverified.only(row -> row.has("last_visit_on")).where("last_visit_on", "");
    Sentence.Builder text = Sentence.of("").rows(unverified, NumberText.count(count, "devices"));
    text.say(count == 1 ? " has" : " have").say(" not been looked at for more than " + since);
    if (!never.list().isEmpty()) {
      text.say(" (").rows(never, NumberText.count(never.list().size())).say(" of them never)");
    }
    return text.say(count == 1 ? ": its state is unverified." : ": their state is unverified.")
        .build();
  }

  private static String since(TablePackage tables) {
    String days = tables.fact("revisit_every_days");
    return days.isEmpty()
        ? "twice the planned interval"
        : NumberText.count(2 * Long.parseLong(days), "days");
  }
}
