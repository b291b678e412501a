package pondtally.reports.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** What is at stake at the sites, as far as records say it. */
final class GrantNeed {

  private static final int MOST_TYPES = 4;

  private GrantNeed() {}

  static GrantSection of(TablePackage tables) {
    List<Sentence> sentences = new ArrayList<>();
    sites(tables, sentences);
    properties(tables, sentences);
    wetland(tables, sentences);
    removals(tables, sentences);
    sentences.add(GrantCells.words(Messages.of("view.GrantNeed.what-high-water-meant-to-the")));
    return new GrantSection(1, Messages.of("view.GrantNeed.need"), sentences, List.of(), Map.of());
  }

  private static void sites(TablePackage tables, List<Sentence> sentences) {
    Rows sites = Rows.of(tables, "sites");
    if (sites.list().isEmpty()) {
      return;
    }
    Sentence.Builder text =
        Sentence.of(Messages.of("common.The-records-hold"))
            .rows(sites, NumberText.count(sites.list().size(), "sites"));
    Rows without = sites.where("state", "no-device");
    if (!without.list().isEmpty()) {
      text.say(", ")
          .rows(without, NumberText.count(without.list().size()))
          .say(Messages.of("view.GrantNeed.of-them-without-a-device-so"));
    }
    text.say(Messages.of("view.GrantNeed.by-setting"));
    List<String> settings =
        sites.list().stream()
            .map(row -> row.text("setting"))
            .distinct()
            .sorted(
                Comparator.comparingInt((String s) -> -sites.where("setting", s).list().size())
                    .thenComparing(Comparator.naturalOrder()))
            .toList();
    for (int i = 0; i < settings.size(); i++) {
      Rows at = sites.where("setting", settings.get(i));
      text.say(i == 0 ? "" : ", ")
          .say(GroupText.words(settings.get(i)) + " ")
          .rows(at, NumberText.count(at.list().size()));
    }
    sentences.add(text.say(".").build());
  }

  private static void properties(TablePackage tables, List<Sentence> sentences) {
    Rows whole = GrantOutcomes.whole(tables, "properties").where("year", "all");
    Rows all = whole.where("property_type", "all");
    if (all.first().isEmpty()) {
      return;
    }
    Sentence.Builder text =
        Sentence.of(Messages.of("view.GrantNeed.property-on-record-as-in-need"))
            .cell(
                all,
                Cells.count(all.first().get(), "properties_recorded", "properties"),
                "properties_recorded");
    List<Row> types = GrantOutcomes.propertyTypes(whole);
    for (int i = 0; i < Math.min(MOST_TYPES, types.size()); i++) {
      String type = types.get(i).text("property_type");
      text.say(i == 0 ? Messages.of("view.GrantNeed.most-often") : ", ")
          .say(GroupText.words(type) + " ")
          .cell(
              whole.where("property_type", type),
              Cells.count(types.get(i), "properties_recorded"),
              "properties_recorded");
    }
    sentences.add(text.say(".").build());
  }

  private static void wetland(TablePackage tables, List<Sentence> sentences) {
    Rows all = GrantOutcomes.whole(tables, "wetland").where("year", "all");
    if (GrantCells.number(all, "acres_before").isEmpty()) {
      return;
    }
    sentences.add(
        Said.of("view.GrantNeed.wetland-at-these-sites-before-the")
            .cell(
                "acresBefore",
                all,
                NumberText.acres(GrantCells.number(all, "acres_before").getAsDouble()),
                "acres_before")
            .cell(
                "sitesMeasured",
                all,
                Cells.count(all.first().get(), "sites_measured"),
                "sites_measured")
            .cell("sites", all, Cells.count(all.first().get(), "sites", "sites"), "sites")
            .build());
  }

  private static void removals(TablePackage tables, List<Sentence> sentences) {
    String year = tables.fact("period_year");
    Rows computed =
        GrantOutcomes.whole(tables, "removals_avoided").where("year", year).where("evidence", "");
    if (GrantCells.number(computed, "removals_reported").isEmpty()) {
      return;
    }
    sentences.add(
        Said.of("view.GrantNeed.beavers-still-removed-at-program-sites")
            .words("year", year)
            .cell(
                "removalsReported",
                computed,
                Cells.count(computed.first().orElseThrow(), "removals_reported"),
                "removals_reported")
            .cell(
                "sites",
                computed,
                Cells.count(computed.first().orElseThrow(), "sites", "sites"),
                "sites")
            .build());
  }
}
