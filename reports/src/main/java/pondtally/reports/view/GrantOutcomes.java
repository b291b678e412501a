package pondtally.reports.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** Outcomes with their counts and limits: properties, wetland, removals and the devices' lives. */
final class GrantOutcomes {

  private static final int MOST_WATERSHEDS = 15;

  private GrantOutcomes() {}

  static List<GrantSection> of(TablePackage tables) {
    List<GrantSection> sections = new ArrayList<>();
    List<GrantTable> first = new ArrayList<>();
    GrantGlance.addTo(first, tables);
    years(tables, first);
    watersheds(tables, first);
    sections.add(
        new GrantSection(
            1, Messages.of("view.GrantOutcomes.outcomes"), List.of(), first, Map.of()));
    sections.add(properties(tables));
    List<Sentence> wetland = new ArrayList<>();
    OutcomeSentences.wetland(tables, wetland);
    sections.add(
        new GrantSection(
            2,
            Messages.of("view.GrantOutcomes.wetland-kept"),
            wetland,
            List.of(),
            Map.of(
                "acre-years",
                Messages.of("view.GrantOutcomes.wetland-acre-years-by-watershed-and"))));
    List<Sentence> removals = new ArrayList<>();
    OutcomeSentences.removals(tables, removals);
    sections.add(
        new GrantSection(
            2,
            Messages.of("common.Removals-avoided"),
            removals,
            List.of(),
            Map.of(
                "removals-avoided",
                Messages.of("view.GrantOutcomes.removals-avoided-computed-and-claimed-by"))));
    sections.add(GrantLives.of(tables));
    sections.removeIf(GrantOutcomes::isEmpty);
    return sections;
  }

  private static boolean isEmpty(GrantSection section) {
    return section.sentences().isEmpty() && section.tables().isEmpty();
  }

  /** Rows of the whole program. */
  static Rows whole(TablePackage tables, String table) {
    return Rows.of(tables, table).where("grouping", "all").where("group", "all");
  }

  /** The types of property, the most frequent first. */
  static List<Row> propertyTypes(Rows whole) {
    return whole.list().stream()
        .filter(row -> !row.text("property_type").equals("all"))
        .sorted(
            Comparator.comparingDouble(
                    (Row row) -> -Cells.number(row, "properties_recorded").orElse(0))
                .thenComparing(row -> row.text("property_type")))
        .toList();
  }

  private static void years(TablePackage tables, List<GrantTable> shown) {
    TreeSet<String> years = new TreeSet<>();
    for (String name : List.of("properties", "wetland", "removals_avoided")) {
      whole(tables, name).list().forEach(row -> years.add(row.text("year")));
    }
    years.remove("all");
    GrantTable.Builder table =
        GrantTable.of(Messages.of("view.GrantOutcomes.outcomes-by-year"))
            .words(Messages.of("common.Year"))
            .numbers(
                Messages.of("view.GrantOutcomes.properties-protected"),
                Messages.of("view.GrantOutcomes.property-years"),
                Messages.of("view.GrantOutcomes.acre-years-of-wetland"),
                Messages.of("view.GrantOutcomes.removals-avoided-computed"));
    for (String name : years) {
      Rows property = whole(tables, "properties").where("year", name).where("property_type", "all");
      Rows removals = whole(tables, "removals_avoided").where("year", name).where("evidence", "");
      table.row(
          GrantCells.words(name),
          GrantCells.count(property, "properties_protected"),
          GrantCells.cell(property, "property_years", NumberText::rate),
          GrantCells.cell(
              whole(tables, "wetland").where("year", name), "acre_years", NumberText::rate),
          GrantCells.cell(removals, "avoided_computed", v -> NumberText.decimal(v, 1)));
    }
    table.addTo(
        shown,
        Messages.of("view.GrantOutcomes.one-row-for-each-year-properties"),
        Messages.of("view.GrantOutcomes.verified-working-time-only-a-property"));
  }

  private static void watersheds(TablePackage tables, List<GrantTable> shown) {
    Rows all = Rows.of(tables, "wetland").where("grouping", "watershed").where("year", "all");
    GrantTable.Builder table =
        GrantTable.of(Messages.of("view.GrantOutcomes.outcomes-by-watershed"))
            .words(Messages.of("common.Watershed"))
            .numbers(
                Messages.of("common.Sites"),
                Messages.of("view.GrantOutcomes.properties-protected"),
                Messages.of("view.GrantOutcomes.on-record"),
                Messages.of("view.GrantOutcomes.acres-kept-verified"),
                Messages.of("common.Acre-years"));
    List<Row> rows =
        all.list().stream()
            .sorted(
                Comparator.comparingDouble((Row row) -> -Cells.number(row, "sites").orElse(0))
                    .thenComparing(row -> row.text("group")))
            .toList();
    for (Row row : rows.subList(0, Math.min(MOST_WATERSHEDS, rows.size()))) {
      watershed(tables, all.where("group", row.text("group")), row.text("group"), table);
    }
    int left = rows.size() - MOST_WATERSHEDS;
    table.addTo(
        shown,
        Messages.of("view.GrantOutcomes.one-row-for-each-watershed-sites"),
        Messages.of(
            "view.GrantOutcomes.the-watersheds-with-the-most-sites",
            Map.of(
                "part",
                left > 0
                    ? Messages.of(
                        "view.GrantOutcomes.the-with-the-most-sites-the",
                        Map.of(
                            "mostwatersheds",
                            String.valueOf(MOST_WATERSHEDS),
                            "left",
                            String.valueOf(left)))
                    : "")));
  }

  private static void watershed(
      TablePackage tables, Rows wetland, String code, GrantTable.Builder table) {
    Rows property =
        Rows.of(tables, "properties")
            .where("grouping", "watershed")
            .where("group", code)
            .where("year", "all")
            .where("property_type", "all");
    table.row(
        GrantCells.words(GroupText.label("watershed", code)),
        GrantCells.count(wetland, "sites"),
        GrantCells.count(property, "properties_protected"),
        GrantCells.count(property, "properties_recorded"),
        GrantCells.cell(wetland, "acres_retained_verified", NumberText::rate),
        GrantCells.cell(wetland, "acre_years", NumberText::rate));
  }

  private static GrantSection properties(TablePackage tables) {
    List<Sentence> sentences = new ArrayList<>();
    OutcomeSentences.properties(tables, sentences);
    Rows whole = whole(tables, "properties").where("year", "all");
    GrantTable.Builder table =
        GrantTable.of(Messages.of("view.GrantOutcomes.properties-by-type"))
            .words(Messages.of("common.Type"))
            .numbers(
                Messages.of("view.GrantOutcomes.on-record"),
                Messages.of("view.GrantOutcomes.protected"),
                Messages.of("view.GrantOutcomes.property-years"));
    for (Row row : propertyTypes(whole)) {
      propertyRow(table, whole, row.text("property_type"));
    }
    if (!table.isEmpty()) {
      propertyRow(table, whole, "all");
    }
    List<GrantTable> shown = new ArrayList<>();
    table.addTo(
        shown,
        Messages.of("view.GrantOutcomes.one-row-for-each-type-of"),
        Messages.of("view.GrantOutcomes.protected-a-device-at-the-site"));
    return new GrantSection(
        2, Messages.of("view.GrantOutcomes.properties-protected"), sentences, shown, Map.of());
  }

  private static void propertyRow(GrantTable.Builder table, Rows whole, String type) {
    Rows row = whole.where("property_type", type);
    table.row(
        GrantCells.words(
            type.equals("all")
                ? Messages.of("view.GrantOutcomes.all-types")
                : GroupText.words(type)),
        GrantCells.count(row, "properties_recorded"),
        GrantCells.count(row, "properties_protected"),
        GrantCells.cell(row, "property_years", NumberText::rate));
  }
}
