package pondtally.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Figure;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** Wetland kept, removals avoided, properties protected. */
final class OutcomeTables {

  private OutcomeTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    return Stream.of(
        wetlandByYear(tables),
        wetlandByWatershed(tables),
        removals(tables),
        continued(tables),
        properties(tables),
        propertiesByWatershed(tables));
  }

  private static PageTable wetlandByYear(TablePackage tables) {
    Rows rows =
        Rows.of(tables, "wetland")
            .where("grouping", "all")
            .only(row -> !row.text("year").equals("all"));
    return Grid.of(tables, "wetland", "year")
        .note(Messages.of("common.Acres-stand-at-the-end-of"))
        .head(Messages.of("common.Fiscal-year"), "year", year -> year)
        .number(Shape.COUNT, "sites", "sites_measured")
        .number(Shape.ONE, "acres_retained_verified", "acres_retained_unverified")
        .number(Shape.ONE, "hectares_retained_verified", "acre_years", "acre_years_extrapolated")
        .build(Messages.of("common.Wetland-kept-by-fiscal-year"), rows);
  }

  private static PageTable wetlandByWatershed(TablePackage tables) {
    Rows rows = Rows.of(tables, "wetland").where("grouping", "watershed").where("year", "all");
    return Grid.of(tables, "wetland", "group")
        .note(Messages.of("page.OutcomeTables.a-pond-counts-once-however-many"))
        .head(
            Messages.of("common.Watershed"), "group", group -> GroupText.label("watershed", group))
        .number(Shape.COUNT, "sites", "sites_measured", "ponds")
        .number(Shape.ONE, "acres_before", "acres_retained_verified", "acres_retained_unverified")
        .number(Shape.ONE, "hectares_retained_verified", "acre_years", "acres_lost_to_lowering")
        .build(Messages.of("common.Wetland-kept-by-watershed-whole-record"), rows);
  }

  private static PageTable removals(TablePackage tables) {
    Rows all = Rows.of(tables, "removals_avoided").where("grouping", "all").where("group", "all");
    TreeSet<String> grades = new TreeSet<>();
    TreeMap<String, Map<String, Row>> years = new TreeMap<>();
    for (Row row : all.list()) {
      grades.add(row.text("evidence"));
      years
          .computeIfAbsent(row.text("year"), year -> new TreeMap<>())
          .put(row.text("evidence"), row);
    }
    grades.remove("");
    List<String> headings =
        new ArrayList<>(
            List.of(
                Messages.of("common.Year"),
                Messages.of("common.Sites"),
                Messages.of("page.OutcomeTables.sites-left-out"),
                Messages.of("page.OutcomeTables.avoided-computed")));
    grades.forEach(grade -> headings.add(claimed(grade)));
    headings.add(Messages.of("page.OutcomeTables.removals-that-still-happened"));
    return new PageTable(
        Messages.of("common.Removals-avoided-computed-and-claimed"),
        List.of(
            Messages.of("common.Computed-removals-a-year-before-times"),
            Messages.of("common.The-partners-own-claims-stand-beside")),
        headings,
        years.entrySet().stream()
            .map(year -> removals(all.where("year", year.getKey()), year.getValue(), grades))
            .toList());
  }

  private static PageTable continued(TablePackage tables) {
    return Grid.of(tables, "continued_removals", "site_id", "year")
        .note(Messages.of("common.Where-animals-are-still-removed-success"))
        .head(Messages.of("common.Site"), "site_id", text -> text)
        .head(Messages.of("common.Year"), "year", year -> year)
        .words(text -> GroupText.label("watershed", text), "watershed")
        .number(Shape.ONE, "removals_per_year_before", "removals")
        .number(Shape.PERCENT, "working_share")
        .build(
            Messages.of("common.Sites-with-devices-at-which-removal"),
            Rows.of(tables, "continued_removals"));
  }

  private static String claimed(String grade) {
    return grade.equals("none given")
        ? Messages.of("common.claimed-no-evidence-given")
        : Messages.of("page.OutcomeTables.claimed-by", Map.of("grade", GroupText.words(grade)));
  }

  private static List<Cell> removals(Rows year, Map<String, Row> rows, TreeSet<String> grades) {
    List<Cell> line = new ArrayList<>();
    line.add(Cell.words(year.key().get("year")));
    line.add(cell(year, rows, "", Shape.COUNT, "sites"));
    line.add(cell(year, rows, "", Shape.COUNT, "sites_left_out"));
    line.add(cell(year, rows, "", Shape.ONE, "avoided_computed"));
    grades.forEach(grade -> line.add(cell(year, rows, grade, Shape.ONE, "avoided_claimed")));
    line.add(cell(year, rows, "", Shape.ONE, "removals_reported"));
    return line;
  }

  private static Cell cell(
      Rows year, Map<String, Row> rows, String grade, Shape shape, String column) {
    Rows own = year.where("evidence", grade);
    Row row = rows.get(grade);
    if (row == null) {
      return Cell.none();
    }
    var value = Line.of(row).number(column);
    return value.isEmpty()
        ? Cell.missing(own.table(), own.key(), column, row.text(column))
        : Cell.number(
            new Figure(
                own.table(),
                own.key(),
                Figure.How.CELL,
                List.of(column),
                shape.print(value.getAsDouble())));
  }

  private static PageTable properties(TablePackage tables) {
    Rows rows =
        Rows.of(tables, "properties")
            .where("grouping", "all")
            .where("year", "all")
            .only(row -> !row.text("property_type").equals("all"));
    return counts(
            Grid.of(tables, "properties", "property_type")
                .note(Messages.of("page.OutcomeTables.a-property-counts-as-protected-where"))
                .head(Messages.of("common.Type"), "property_type", GroupText::words))
        .build(Messages.of("common.Properties-protected-by-type-whole-record"), rows);
  }

  private static PageTable propertiesByWatershed(TablePackage tables) {
    Rows rows =
        Rows.of(tables, "properties")
            .where("grouping", "watershed")
            .where("year", "all")
            .where("property_type", "all");
    return counts(
            Grid.of(tables, "properties", "group")
                .note(Messages.of("common.A-property-can-lie-in-two"))
                .head(
                    Messages.of("common.Watershed"),
                    "group",
                    group -> GroupText.label("watershed", group)))
        .build(
            Messages.of("page.OutcomeTables.properties-protected-by-watershed-whole-record"), rows);
  }

  private static Grid counts(Grid grid) {
    return grid.number(Shape.COUNT, "properties_recorded", "properties_protected")
        .number(Shape.ONE, "property_years");
  }
}
