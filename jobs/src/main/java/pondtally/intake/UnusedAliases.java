package pondtally.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pondtally.check.Finding;
import pondtally.check.KnownIds;
import pondtally.check.NearestIds;
import pondtally.check.Severity;
import pondtally.check.SheetReport;
import pondtally.record.Origin;

/** Rows of {@code aliases.csv} whose id stands in no record: a slip, or a matter settled since. */
public final class UnusedAliases {

  private UnusedAliases() {}

  /**
   * One notice a row.
   *
   * @param file index under which {@code aliases.csv} is known among the files
   * @param reports of every sheet, which tell what was merged
   * @param known ids to look for the nearest one
   */
  public static List<Finding> among(
      List<Alias> aliases, int file, List<SheetReport> reports, KnownIds known) {
    Set<String> merged = merged(reports);
    Map<String, List<Alias>> unused = new HashMap<>();
    for (Alias alias : aliases) {
      if (!merged.contains(key(alias.field(), alias.id()))) {
        unused.computeIfAbsent(alias.field(), field -> new ArrayList<>()).add(alias);
      }
    }
    List<Finding> findings = new ArrayList<>();
    unused.forEach((field, rows) -> findings.addAll(findings(rows, file, ids(field, known))));
    return findings;
  }

  private static Set<String> merged(List<SheetReport> reports) {
    Set<String> merged = new HashSet<>();
    for (SheetReport report : reports) {
      report.findings().stream()
          .filter(finding -> finding.rule().equals(IntakeRule.ID_MERGED.code()))
          .forEach(finding -> merged.add(key(finding.field(), finding.value())));
    }
    return merged;
  }

  private static String key(String field, String id) {
    return field + "=" + id;
  }

  private static Collection<String> ids(String field, KnownIds known) {
    return switch (field) {
      case "site_id" -> known.sites();
      case "device_id" -> known.devices();
      case "pond_id" -> known.ponds();
      default -> List.of();
    };
  }

  private static List<Finding> findings(List<Alias> rows, int file, Collection<String> known) {
    Map<String, String> near =
        NearestIds.of(known).suggestions(rows.stream().map(Alias::id).toList());
    return rows.stream().map(row -> finding(row, file, near.getOrDefault(row.id(), ""))).toList();
  }

  private static Finding finding(Alias alias, int file, String nearest) {
    String noun = alias.field().replace("_id", "");
    return new Finding(
        new Origin(file, 0, alias.row(), false),
        "aliases",
        "id",
        null,
        alias.id(),
        Severity.NOTICE,
        IntakeRule.ALIAS_UNUSED.code(),
        "No record has the %s id %s, so this row of aliases.csv merges nothing. Correct the id as the partner writes it, or delete the row."
            .formatted(noun, Shown.value(alias.id())),
        nearest);
  }
}
