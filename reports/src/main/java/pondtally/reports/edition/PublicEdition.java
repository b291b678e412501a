package pondtally.reports.edition;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import pondtally.reports.table.Field;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Line;

/** Makes the tables of the public edition from the full ones. */
public final class PublicEdition {

  /** Name of the fact that says which edition tables belong to. */
  public static final String FACT = "edition";

  private static final String WITHHELD = Line.WITHHELD;

  /** Settings that name nobody. */
  private static final Set<String> PUBLIC_FACTS =
      Set.of(
          "region",
          "as_of",
          "period_from",
          "period_to",
          "period_year",
          "watershed_digits",
          "failure",
          "failure_dated",
          "base_year",
          "base_year_provisional",
          "price_index",
          "discount_rate",
          "horizon_years",
          "labor_rate_usd",
          "volunteer_rate_usd",
          "revisit_every_days",
          "groups_below",
          "seed",
          "resamples",
          "version");

  private final TablePackage tables;
  private final int below;
  private final WithheldGroups groups;
  private final PublicSites sites;

  private PublicEdition(TablePackage tables, EditionKey key) {
    this.tables = tables;
    this.below = Integer.parseInt(tables.fact("groups_below"));
    GroupMembers members = GroupMembers.of(tables);
    this.groups = WithheldGroups.of(tables, members, below);
    this.sites = new PublicSites(tables, groups, key, below);
  }

  /**
   * Writes the public tables into the existing folder {@code target}.
   *
   * @throws TooFewSites where the whole program has fewer sites than a group must have
   */
  public static void write(TablePackage tables, EditionKey key, Path target) throws IOException {
    PublicEdition edition = new PublicEdition(tables, key);
    if (edition.groups.sites() < edition.below) {
      throw new TooFewSites(edition.groups.sites(), edition.below);
    }
    PublicPackage.write(target, edition.tables(), edition.facts());
  }

  private Map<String, String> facts() {
    Map<String, String> facts = new TreeMap<>(tables.facts());
    facts.keySet().retainAll(PUBLIC_FACTS);
    facts.put(FACT, "public");
    facts.put("groups_withheld", Integer.toString(groups.all().size()));
    return facts;
  }

  private List<PublicTable> tables() {
    List<PublicTable> all = new ArrayList<>();
    for (Table table : tables.tables()) {
      String name = table.name();
      if (name.equals("row_account")) {
        all.add(account(table));
      } else if (name.equals("sites")) {
        all.add(sites.sites());
      } else if (name.equals("devices")) {
        all.add(sites.devices());
      } else if (PublicColumns.GROUPED.contains(name)) {
        all.add(grouped(table));
      } else if (PublicColumns.PAIRS.contains(name)) {
        all.add(pairs(table));
      } else if (name.equals("hazard_ratios")) {
        all.add(hazards(table));
      } else if (PublicColumns.WHOLE.contains(name)) {
        all.add(copy(table, table.rows()));
      }
    }
    return all;
  }

  /** Rows by input table alone: partners, files and sheets are private. */
  private static PublicTable account(Table table) {
    List<Field> fields = table.fields().stream().filter(field -> !field.isPrivate()).toList();
    TreeMap<String, long[]> sums = new TreeMap<>();
    for (Row row : table.rows()) {
      long[] sum = sums.computeIfAbsent(row.text("table"), t -> new long[fields.size()]);
      for (int i = 1; i < fields.size(); i++) {
        sum[i] += row.count(fields.get(i).name());
      }
    }
    List<List<String>> rows = new ArrayList<>();
    sums.forEach(
        (name, sum) ->
            rows.add(
                IntStream.range(0, sum.length)
                    .mapToObj(i -> i == 0 ? name : Long.toString(sum[i]))
                    .toList()));
    return new PublicTable(table.name(), table.title(), fields, List.of("table"), rows);
  }

  private PublicTable grouped(Table table) {
    Set<Row> small = PublishedRows.small(table, groups, below);
    List<List<String>> rows = new ArrayList<>();
    for (Row row : table.rows()) {
      if (PublishedRows.isPublished(table, row)) {
        boolean held = groups.holds(row.text("grouping"), row.text("group"));
        boolean kept = PublicColumns.KEPT_LINES.contains(table.name());
        if (!held && !small.contains(row)) {
          rows.add(told(table, row));
        } else if (kept) {
          rows.add(withheld(table, row));
        }
      }
    }
    return of(table, rows);
  }

  private static List<String> told(Table table, Row row) {
    List<String> ofAll = PublicColumns.OF_ALL_ONLY.getOrDefault(table.name(), List.of());
    boolean isAll = row.text("grouping").equals("all");
    return publicFields(table).stream()
        .map(Field::name)
        .map(name -> !isAll && ofAll.contains(name) ? WITHHELD : row.text(name))
        .toList();
  }

  /** The row with its key and nothing else. */
  private List<String> withheld(Table table, Row row) {
    List<String> also = PublicColumns.ALSO_KEY.getOrDefault(table.name(), List.of());
    List<String> cells = new ArrayList<>();
    for (Field field : publicFields(table)) {
      String name = field.name();
      boolean isKey = name.equals("grouping") || name.equals("group") || also.contains(name);
      if (isKey || name.equals("base_year")) {
        cells.add(row.text(name));
      } else {
        cells.add(name.equals("withheld_reason") ? reason() : WITHHELD);
      }
    }
    return cells;
  }

  /**
   * The same for all: which of two withheld groups is the small one would be a limit of its own.
   */
  private String reason() {
    return "under " + below + " sites, one site's cost, or protects these";
  }

  private PublicTable pairs(Table table) {
    return copy(
        table,
        table.rows().stream()
            .filter(
                row ->
                    PublicColumns.GROUPINGS.contains(row.text("grouping"))
                        && !groups.holds(row.text("grouping"), row.text("group_a"))
                        && !groups.holds(row.text("grouping"), row.text("group_b")))
            .toList());
  }

  private PublicTable hazards(Table table) {
    return copy(
        table,
        table.rows().stream()
            .filter(
                row ->
                    !row.text("term").equals("crew")
                        && !row.text("model").contains("crew")
                        && !groups.holdsAny(row.text("level"))
                        && !groups.holdsAny(row.text("reference")))
            .toList());
  }

  private static PublicTable copy(Table table, List<Row> rows) {
    return of(table, rows.stream().map(row -> cells(table, row)).toList());
  }

  private static PublicTable of(Table table, List<List<String>> rows) {
    return new PublicTable(table.name(), table.title(), publicFields(table), table.key(), rows);
  }

  private static List<Field> publicFields(Table table) {
    return table.fields().stream().filter(field -> !field.isPrivate()).toList();
  }

  private static List<String> cells(Table table, Row row) {
    return publicFields(table).stream().map(field -> row.text(field.name())).toList();
  }
}
