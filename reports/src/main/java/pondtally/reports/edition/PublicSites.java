package pondtally.reports.edition;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import pondtally.reports.table.Field;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/**
 * Sites and devices of the public edition: replaced names, no date, no money, no damage, and a
 * place only where several sites share it.
 */
final class PublicSites {

  private static final String WITHHELD = Line.WITHHELD;
  private static final String[] STEPS = {"0.1", "0.5", "1"};

  private final TablePackage tables;
  private final WithheldGroups groups;
  private final EditionKey key;
  private final int below;
  private final Map<String, String> names = new HashMap<>();

  PublicSites(TablePackage tables, WithheldGroups groups, EditionKey key, int below) {
    this.tables = tables;
    this.groups = groups;
    this.key = key;
    this.below = below;
    for (Row row : Rows.of(tables, "sites").list()) {
      names.put(
          row.text("site_id"), key.replacement("site", row.text("partner"), row.text("site_id")));
    }
  }

  PublicTable sites() {
    Map<String, String[]> places = places();
    List<List<String>> rows = new ArrayList<>();
    for (Row row : Rows.of(tables, "sites").list()) {
      String name = names.get(row.text("site_id"));
      String[] place = places.getOrDefault(name, new String[] {"", "", ""});
      rows.add(
          List.of(
              name,
              watershed(row),
              label("setting", row.text("setting")),
              place[0],
              place[1],
              place[2],
              row.text("devices"),
              row.text("devices_functional"),
              row.text("state")));
    }
    rows.sort(Comparator.comparing(row -> row.get(0)));
    return new PublicTable(
        "sites",
        "Sites with their state, under replaced names",
        siteFields(),
        List.of("site_id"),
        rows);
  }

  PublicTable devices() {
    List<List<String>> rows = new ArrayList<>();
    for (Row row : Rows.of(tables, "devices").list()) {
      rows.add(
          List.of(
              key.replacement("device", row.text("partner"), row.text("device_id")),
              site(row),
              watershed(row),
              label("kind", row.text("kind")),
              label("pipe", row.text("pipe")),
              row.text("state")));
    }
    rows.sort(Comparator.comparing(row -> row.get(0)));
    return new PublicTable(
        "devices",
        "Every device and its state, under replaced names",
        deviceFields(),
        List.of("device_id"),
        rows);
  }

  private String site(Row device) {
    return names.computeIfAbsent(
        device.text("site_id"), id -> key.replacement("site", device.text("partner"), id));
  }

  private String watershed(Row row) {
    return label("watershed", GroupMembers.watershed(tables, row.text("watershed")));
  }

  private String label(String grouping, String group) {
    return groups.holds(grouping, GroupMembers.orUnknown(group)) ? WITHHELD : group;
  }

  /**
   * Middle of a square of degrees that holds enough sites of the same watershed, with the side of
   * the square.
   */
  private Map<String, String[]> places() {
    Map<String, String[]> places = new HashMap<>();
    List<Row> open =
        new ArrayList<>(
            Rows.of(tables, "sites").list().stream()
                .filter(row -> !watershed(row).equals(WITHHELD) && isPlaced(row))
                .toList());
    for (String step : STEPS) {
      Map<String, List<Row>> squares =
          open.stream().collect(Collectors.groupingBy(row -> square(row, step)));
      for (List<Row> square : squares.values()) {
        if (square.size() >= below) {
          square.forEach(row -> places.put(names.get(row.text("site_id")), place(row, step)));
          open.removeAll(square);
        }
      }
    }
    return places;
  }

  private static boolean isPlaced(Row row) {
    OptionalDouble latitude = Line.of(row).number("latitude");
    return latitude.isPresent() && Line.of(row).number("longitude").isPresent();
  }

  /** Square and watershed: where they cross may be a far smaller place than either. */
  private String square(Row row, String step) {
    return round(row.text("latitude"), step)
        + " "
        + round(row.text("longitude"), step)
        + " "
        + watershed(row);
  }

  private static String[] place(Row row, String step) {
    return new String[] {
      round(row.text("latitude"), step), round(row.text("longitude"), step), step
    };
  }

  /** Middle of the square, a multiple of its side. */
  private static String round(String degrees, String step) {
    BigDecimal side = new BigDecimal(step);
    BigDecimal times = new BigDecimal(degrees).divide(side, 0, RoundingMode.HALF_EVEN);
    BigDecimal rounded = times.multiply(side).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  private static List<Field> siteFields() {
    return List.of(
        text("site_id", "Replacement for the site's name, made with the coordinator's key."),
        text("watershed", "Watershed group; withheld where the group has few sites."),
        text("setting", "Setting; withheld where the group has few sites."),
        number(
            "latitude",
            "degrees",
            "Middle of a square that holds several sites of the watershed, degrees north; never finer than 0.1 degree."),
        number(
            "longitude",
            "degrees",
            "Middle of that square, degrees east; never finer than 0.1 degree."),
        number(
            "place_within_degrees",
            "degrees",
            "Side of the square that the place stands for: 0.1, 0.5 or 1 degree. Empty: too few sites near it, or no place on record."),
        new Field("devices", "integer", "devices", "Devices ever installed at the site.", false),
        new Field(
            "devices_functional",
            "integer",
            "devices",
            "Devices that function at the end of the period.",
            false),
        text("state", "State of the site at the end of the period."));
  }

  private static List<Field> deviceFields() {
    return List.of(
        text("device_id", "Replacement for the device's name, made with the coordinator's key."),
        text("site_id", "Replacement for the site's name."),
        text("watershed", "Watershed group; withheld where the group has few sites."),
        text("kind", "Kind of device; withheld where the group has few sites."),
        text("pipe", "Pipe type; withheld where the group has few sites."),
        text("state", "State at the data cut."));
  }

  private static Field text(String name, String description) {
    return new Field(name, "string", "", description, false);
  }

  private static Field number(String name, String unit, String description) {
    return new Field(name, "number", unit, description, false);
  }
}
