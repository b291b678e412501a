package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;

/** Wetland kept, properties protected and removals avoided, in sentences. */
final class OutcomeSentences {

  private OutcomeSentences() {}

  static List<Sentence> of(TablePackage tables) {
    List<Sentence> sentences = new ArrayList<>();
    wetland(tables, sentences);
    properties(tables, sentences);
    removals(tables, sentences);
    return sentences;
  }

  static void wetland(TablePackage tables, List<Sentence> sentences) {
    Rows all =
        Rows.of(tables, "wetland")
            .where("grouping", "all")
            .where("group", "all")
            .where("year", "all");
    if (all.first().isEmpty()) {
      return;
    }
    Row row = all.first().get();
    Sentence.Builder kept =
        Sentence.of(Messages.of("view.OutcomeSentences.wetland-kept-at-the-data-cut"))
            .cell(all, acres(row, "acres_retained_verified"), "acres_retained_verified");
    if (Cells.number(row, "acres_retained_verified").isPresent()) {
      kept.say(Messages.of("view.OutcomeSentences.verified-and"))
          .cell(all, acres(row, "acres_retained_unverified"), "acres_retained_unverified")
          .say(Messages.of("view.OutcomeSentences.more-at-sites-that-worked-when"));
    }
    sentences.add(
        kept.say(Messages.of("view.OutcomeSentences.measured-at"))
            .cell(all, Cells.count(row, "sites_measured"), "sites_measured")
            .say(Messages.of("common.of"))
            .cell(all, Cells.count(row, "sites", "sites"), "sites")
            .say(unmeasured(row))
            .build());
    if (Cells.number(row, "acre_years").isPresent()) {
      sentences.add(
          Said.of("view.OutcomeSentences.over-the-whole-record-that-makes")
              .cell(
                  "acreYears",
                  all,
                  NumberText.acreYears(Cells.number(row, "acre_years").getAsDouble()),
                  "acre_years")
              .cell(
                  "acreYearsExtrapolated",
                  all,
                  Missing.orNotKnown(
                      Cells.number(row, "acre_years_extrapolated"), NumberText::acreYears),
                  "acre_years_extrapolated")
              .build());
    }
  }

  private static String unmeasured(Row row) {
    double others =
        Cells.number(row, "sites").orElse(0) - Cells.number(row, "sites_measured").orElse(0);
    if (others <= 0) {
      return ".";
    }
    return others == 1
        ? Messages.of("view.OutcomeSentences.the-other-one-counts-as-unmeasured")
        : Messages.of("view.OutcomeSentences.the-others-count-as-unmeasured-not");
  }

  private static String acres(Row row, String column) {
    return Missing.orNotKnown(Cells.number(row, column), NumberText::acres);
  }

  static void properties(TablePackage tables, List<Sentence> sentences) {
    Rows all =
        Rows.of(tables, "properties")
            .where("grouping", "all")
            .where("group", "all")
            .where("year", "all")
            .where("property_type", "all");
    all.first()
        .ifPresent(
            row ->
                sentences.add(
                    Said.of("view.OutcomeSentences.protected-by-devices-verified-working-of")
                        .cell(
                            "propertiesProtected",
                            all,
                            Cells.count(row, "properties_protected"),
                            "properties_protected")
                        .cell(
                            "propertiesRecorded",
                            all,
                            Cells.count(row, "properties_recorded", "properties"),
                            "properties_recorded")
                        .cell(
                            "propertyYears",
                            all,
                            Missing.orNotKnown(
                                Cells.number(row, "property_years"),
                                years -> NumberText.measured(years, 0, "property-years")),
                            "property_years")
                        .build()));
  }

  static void removals(TablePackage tables, List<Sentence> sentences) {
    Rows all = Rows.of(tables, "removals_avoided").where("grouping", "all").where("group", "all");
    Optional<String> latest =
        all.where("evidence", "").list().stream()
            .filter(row -> Cells.number(row, "avoided_computed").isPresent())
            .map(row -> row.text("year"))
            .max(String::compareTo);
    if (latest.isEmpty()) {
      return;
    }
    Rows year = all.where("year", latest.get());
    Rows computed = year.where("evidence", "");
    Row row = computed.first().orElseThrow();
    Sentence.Builder text =
        Sentence.of(
                Messages.of(
                    "view.OutcomeSentences.removals-avoided-in-computed",
                    Map.of("latest", latest.get())))
            .cell(
                computed,
                NumberText.decimal(Cells.number(row, "avoided_computed").orElseThrow(), 1),
                "avoided_computed")
            .say(Messages.of("common.at"))
            .cell(computed, Cells.count(row, "sites", "sites"), "sites");
    Cells.number(row, "sites_left_out")
        .ifPresent(
            left ->
                text.say(" (")
                    .cell(computed, NumberText.count((long) left), "sites_left_out")
                    .say(Messages.of("view.OutcomeSentences.left-out-because-removals-are-not")));
    claims(year, text.say(". "));
    sentences.add(text.build());
  }

  private static void claims(Rows year, Sentence.Builder text) {
    List<Row> claims =
        year.list().stream()
            .filter(row -> !row.text("evidence").isEmpty())
            .filter(row -> Cells.number(row, "avoided_claimed").isPresent())
            .toList();
    if (claims.isEmpty()) {
      text.say(Messages.of("view.OutcomeSentences.partners-claimed-none"));
      return;
    }
    text.say(Messages.of("view.OutcomeSentences.partners-claimed-by-evidence"));
    for (int i = 0; i < claims.size(); i++) {
      String grade = claims.get(i).text("evidence");
      text.say(i == 0 ? "" : ", ")
          .say(GroupText.words(grade) + " ")
          .cell(
              year.where("evidence", grade),
              NumberText.decimal(Cells.number(claims.get(i), "avoided_claimed").orElseThrow(), 0),
              "avoided_claimed");
    }
    text.say(Messages.of("view.OutcomeSentences.the-computed-and-the-claimed-figure"));
  }
}
