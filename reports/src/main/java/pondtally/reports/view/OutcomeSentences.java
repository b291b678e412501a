package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    Sentence.Builder kept =
        Sentence.of("Wetland kept at the data cut: ")
            .cell(all, acres(row, "acres_retained_verified"), "acres_retained_verified");
    if (Cells.number(row, "acres_retained_verified").isPresent()) {
      kept.say(" verified, and ")
          .cell(all, acres(row, "acres_retained_unverified"), "acres_retained_unverified")
          .say(" more at sites that worked when last seen and are overdue for a visit");
    }
    sentences.add(
        kept.say(". Measured at ")
            .cell(all, Cells.count(row, "sites_measured"), "sites_measured")
            .say(" of ")
            .cell(all, Cells.count(row, "sites", "sites"), "sites")
            .say(unmeasured(row))
            .build());
    if (Cells.number(row, "acre_years").isPresent()) {
      sentences.add(
          Sentence.of("Over the whole record that makes ")
              .cell(
                  all,
                  NumberText.acreYears(Cells.number(row, "acre_years").getAsDouble()),
                  "acre_years")
              .say(" of verified working time, of which ")
              .cell(
                  all,
                  Missing.orNotKnown(
                      Cells.number(row, "acre_years_extrapolated"), NumberText::acreYears),
                  "acre_years_extrapolated")
              .say(" lie before the first or after the last measurement.")
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
        ? "; the other one counts as unmeasured, not as zero."
        : "; the others count as unmeasured, not as zero.";
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
                    Sentence.of("Protected, by devices verified working: ")
                        .cell(all, Cells.count(row, "properties_protected"), "properties_protected")
                        .say(" of ")
                        .cell(
                            all,
                            Cells.count(row, "properties_recorded", "properties"),
                            "properties_recorded")
                        .say(" on record, for ")
                        .cell(
                            all,
                            Missing.orNotKnown(
                                Cells.number(row, "property_years"),
                                years -> NumberText.measured(years, 0, "property-years")),
                            "property_years")
                        .say(" in all.")
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
        Sentence.of("Removals avoided in " + latest.get() + ", computed: ")
            .cell(
                computed,
                NumberText.decimal(Cells.number(row, "avoided_computed").orElseThrow(), 1),
                "avoided_computed")
            .say(" at ")
            .cell(computed, Cells.count(row, "sites", "sites"), "sites");
    Cells.number(row, "sites_left_out")
        .ifPresent(
            left ->
                text.say(" (")
                    .cell(computed, NumberText.count((long) left), "sites_left_out")
                    .say(" left out because removals are not reported)"));
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
      text.say("Partners claimed none.");
      return;
    }
    text.say("Partners claimed, by evidence: ");
    for (int i = 0; i < claims.size(); i++) {
      String grade = claims.get(i).text("evidence");
      text.say(i == 0 ? "" : ", ")
          .say(GroupText.words(grade) + " ")
          .cell(
              year.where("evidence", grade),
              NumberText.decimal(Cells.number(claims.get(i), "avoided_claimed").orElseThrow(), 0),
              "avoided_claimed");
    }
    text.say(". The computed and the claimed figure are never added.");
  }
}
