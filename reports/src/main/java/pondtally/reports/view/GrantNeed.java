package pondtally.reports.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    Rows without = sites.where("state", "no-device");
    List<String> settings =
        sites.list().stream()
            .map(row -> row.text("setting"))
            .distinct()
            .sorted(
                Comparator.comparingInt((String s) -> -sites.where("setting", s).list().size())
                    .thenComparing(Comparator.naturalOrder()))
            .toList();
    sentences.add(
        Said.of("view.GrantNeed.the-records-hold")
            .rows("sites", sites, NumberText.count(sites.list().size(), "sites"))
            .part(
                "without",
                Optional.of(without)
                    .filter(rows -> !rows.list().isEmpty())
                    .map(
                        rows ->
                            Said.of("view.GrantNeed.of-them-without-a-device-so")
                                .rows("count", rows, NumberText.count(rows.list().size()))))
            .parts("settings", settings.stream().map(s -> setting(sites, s)).toList())
            .build());
  }

  private static Said setting(Rows sites, String setting) {
    Rows at = sites.where("setting", setting);
    return Said.of("view.NamedCount")
        .words("name", GroupText.words(setting))
        .rows("count", at, NumberText.count(at.list().size()));
  }

  private static void properties(TablePackage tables, List<Sentence> sentences) {
    Rows whole = GrantOutcomes.whole(tables, "properties").where("year", "all");
    Rows all = whole.where("property_type", "all");
    if (all.first().isEmpty()) {
      return;
    }
    List<Said> types =
        GrantOutcomes.propertyTypes(whole).stream()
            .limit(MOST_TYPES)
            .map(
                row ->
                    Said.of("view.NamedCount")
                        .words("name", GroupText.words(row.text("property_type")))
                        .cell(
                            "count",
                            whole.where("property_type", row.text("property_type")),
                            Cells.count(row, "properties_recorded"),
                            "properties_recorded"))
            .toList();
    sentences.add(
        Said.of("view.GrantNeed.property-on-record-as-in-need")
            .cell(
                "properties",
                all,
                Cells.count(all.first().get(), "properties_recorded", "properties"),
                "properties_recorded")
            .part(
                "types",
                types.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Said.of("view.GrantNeed.most-often").parts("types", types)))
            .build());
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
