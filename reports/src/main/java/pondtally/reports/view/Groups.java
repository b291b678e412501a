package pondtally.reports.view;

import java.util.Comparator;
import java.util.Map;
import java.util.OptionalDouble;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;

/** Groups of devices: what they are called in a sentence, which are small, how they are ordered. */
public final class Groups {

  private static final int DEFAULT_SMALL = 5;

  private Groups() {}

  /** A group as a sentence names its devices, for example {@code dual-wall 12 in pipes}. */
  public static String devices(String grouping, String group) {
    String label = GroupText.label(grouping, group);
    return switch (grouping) {
      case "all" -> Messages.of("view.Groups.devices");
      case "pipe" ->
          switch (group) {
            case "no pipe" -> Messages.of("view.Groups.devices-without-a-pipe");
            case "unknown" -> Messages.of("view.Groups.devices-with", Map.of("label", label));
            default -> Messages.of("view.Groups.pipes", Map.of("label", label));
          };
      case "kind" -> label + "s";
      case "cohort" -> Messages.of("view.Groups.devices", Map.of("label", label));
      case "watershed" -> Messages.of("view.Groups.devices-in-watershed", Map.of("label", label));
      default -> "devices, " + GroupText.grouping(grouping) + " " + label;
    };
  }

  /** How many devices a group needs before it is ranked. */
  public static double smallBelow(TablePackage tables) {
    String fact = tables.fact("groups_below");
    return fact.isEmpty() ? DEFAULT_SMALL : Double.parseDouble(fact);
  }

  /** Whether a row stands for too few devices to be ranked; not known counts as too few. */
  public static boolean isSmall(Line row, TablePackage tables) {
    return row.number("devices").orElse(0) < smallBelow(tables);
  }

  /** The largest groups first, then by name; groups without a code last. */
  public static Comparator<Row> bySize() {
    return Comparator.comparing((Row row) -> row.text("group").equals("coarser"))
        .thenComparing(row -> -size(row))
        .thenComparing(row -> row.text("group"));
  }

  private static double size(Row row) {
    OptionalDouble devices = Line.of(row).number("devices");
    return devices.orElse(-1);
  }
}
