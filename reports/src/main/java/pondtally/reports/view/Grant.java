package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.DateText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;

/**
 * What goes into a grant application, in the order in which applications ask for it. Names no
 * partner and no landowner; methods and cautions follow it in the document.
 */
public final class Grant {

  private Grant() {}

  /** The title of the document. */
  public static String title(TablePackage tables) {
    String region = tables.fact("region");
    return Messages.of(
        "view.Grant.figures-for-a-grant-application",
        Map.of(
            "part",
            region.isEmpty() ? Messages.of("view.Grant.unnamed") : region,
            "suffix",
            ScopeSentences.suffix(tables)));
  }

  /** Period and data cut in words. */
  public static String cut(TablePackage tables) {
    String period =
        tables.fact("period_from").isEmpty() || tables.fact("period_to").isEmpty()
            ? ""
            : Messages.of(
                "view.Grant.reporting-period-to",
                Map.of(
                    "periodFrom",
                    DateText.readable(tables.fact("period_from")),
                    "periodTo",
                    DateText.readable(tables.fact("period_to"))));
    return Messages.of(
        "view.Grant.beaver-coexistence-program", Map.of("period", period, "foot", foot(tables)));
  }

  /** What stands at the foot of each page, without the page number. */
  public static String foot(TablePackage tables) {
    String asOf = tables.fact("as_of");
    return asOf.isEmpty()
        ? Messages.of("view.Grant.data-cut", Map.of("notknown", Missing.NOT_KNOWN))
        : Messages.of("view.Grant.records-up-to", Map.of("asOf", DateText.readable(asOf)));
  }

  /**
   * The parts in reading order; a subject without tables is left out and named among the limits.
   */
  public static List<GrantSection> of(TablePackage tables) {
    List<GrantSection> sections = new ArrayList<>();
    sections.add(GrantNeed.of(tables));
    if (tables.table("devices").isPresent() || tables.table("completeness").isPresent()) {
      sections.add(GrantWork.of(tables));
    }
    sections.addAll(GrantOutcomes.of(tables));
    sections.addAll(GrantCost.of(tables));
    GrantShare.of(tables).ifPresent(sections::add);
    GrantFunding.of(tables).ifPresent(sections::add);
    sections.add(GrantEvidence.of(tables));
    GrantSeason.of(tables).ifPresent(sections::add);
    return sections;
  }
}
