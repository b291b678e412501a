package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
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
    boolean isKnown = Cells.number(row, "acres_retained_verified").isPresent();
    Said kept =
        Said.of(
                isKnown
                    ? "view.OutcomeSentences.wetland-kept-at-the-data-cut"
                    : "view.OutcomeSentences.wetland-kept-is-not-known")
            .cell("verified", all, acres(row, "acres_retained_verified"), "acres_retained_verified")
            .cell("measured", all, Cells.count(row, "sites_measured"), "sites_measured")
            .cell("sites", all, Cells.count(row, "sites", "sites"), "sites")
            .number("others", unmeasured(row));
    if (isKnown) {
      kept.cell(
          "unverified", all, acres(row, "acres_retained_unverified"), "acres_retained_unverified");
    }
    sentences.add(kept.build());
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

  private static long unmeasured(Row row) {
    double others =
        Cells.number(row, "sites").orElse(0) - Cells.number(row, "sites_measured").orElse(0);
    return (long) Math.max(0, others);
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
    sentences.add(
        Said.of("view.OutcomeSentences.removals-avoided-in-computed")
            .words("year", latest.get())
            .cell(
                "computed",
                computed,
                NumberText.decimal(Cells.number(row, "avoided_computed").orElseThrow(), 1),
                "avoided_computed")
            .cell("sites", computed, Cells.count(row, "sites", "sites"), "sites")
            .part("left", left(computed, row))
            .part("claims", claims(year))
            .build());
  }

  private static Optional<Said> left(Rows computed, Row row) {
    OptionalDouble left = Cells.number(row, "sites_left_out");
    return left.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Said.of("view.OutcomeSentences.left-out-because-removals-are-not")
                .cell(
                    "count",
                    computed,
                    NumberText.count((long) left.getAsDouble()),
                    "sites_left_out"));
  }

  private static Said claims(Rows year) {
    List<Said> claims =
        year.list().stream()
            .filter(row -> !row.text("evidence").isEmpty())
            .filter(row -> Cells.number(row, "avoided_claimed").isPresent())
            .map(
                row ->
                    Said.of("view.NamedCount")
                        .words("name", GroupText.words(row.text("evidence")))
                        .cell(
                            "count",
                            year.where("evidence", row.text("evidence")),
                            NumberText.decimal(
                                Cells.number(row, "avoided_claimed").orElseThrow(), 0),
                            "avoided_claimed"))
            .toList();
    return claims.isEmpty()
        ? Said.of("view.OutcomeSentences.partners-claimed-none")
        : Said.of("view.OutcomeSentences.partners-claimed-by-evidence").parts("claims", claims);
  }
}
