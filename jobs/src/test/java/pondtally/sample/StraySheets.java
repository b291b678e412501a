package pondtally.sample;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Files and sheets that partners send along though no table of ours is in them. */
final class StraySheets {

  private StraySheets() {}

  static List<Sheet> sheets() {
    return List.of(
        sheet(
            Partner.ORRENBY,
            "fuel-card-form.csv",
            "",
            "Month;Card;Gallons",
            "January;A;41.5",
            "February;A;38.0",
            "March;B;52.25"),
        sheet(
            Partner.QUARRINDALE,
            "phone-tree.csv",
            "",
            "Call first;Then;Best time",
            "Saturday lead;Second lead;evenings",
            "Second lead;Tool keeper;weekends"),
        sheet(
            Partner.TESSARBY,
            "tessarby-register.xlsx",
            "Notes",
            "To whom it may concern",
            "Figures in hectares and millimeters unless said otherwise.",
            "The 2020 season began late."),
        sheet(
            Partner.BRACKWEN,
            "brackwen-records.xlsx",
            "Chart figures",
            "Season;Working at the end;Share",
            "2023;29;0.91",
            "2024;33;0.89"));
  }

  private static Sheet sheet(Partner partner, String file, String name, String... lines) {
    List<Column> columns = new ArrayList<>();
    for (String heading : lines[0].split(";", -1)) {
      columns.add(new Column("c" + columns.size(), heading, ""));
    }
    List<Row> rows = Arrays.stream(lines).skip(1).map(StraySheets::row).toList();
    return new Sheet(partner, file, name, Table.NONE, columns).add(rows);
  }

  private static Row row(String line) {
    Row row = new Row();
    String[] cells = line.split(";", -1);
    for (int i = 0; i < cells.length; i++) {
      row.with("c" + i, cells[i]);
    }
    return row;
  }
}
