package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.DateText;
import pondtally.reports.text.Messages;

/**
 * What a board member reads first: sections of sentences, each figure with its count and limits.
 */
public final class Summary {

  /** The name that a program without one of its own is given. */
  private static final String UNNAMED = "Beaver coexistence program";

  private Summary() {}

  /** The title of the reports, with the region where it is set. */
  public static String title(TablePackage tables) {
    String region = tables.fact("region");
    String title =
        region.isEmpty() || region.equals(UNNAMED)
            ? Messages.of("view.Summary.beaver-coexistence-program-annual-figures")
            : Messages.of(
                "view.Summary.annual-figures-of-the-beaver-coexistence", Map.of("region", region));
    return title + ScopeSentences.suffix(tables);
  }

  /** The sections in reading order; a subject without tables is left out. */
  public static List<Section> of(TablePackage tables) {
    List<Section> sections = new ArrayList<>();
    add(sections, Messages.of("common.What-these-figures-cover"), scope(tables));
    add(sections, Messages.of("common.Devices-today"), DeviceSentences.of(tables));
    add(sections, Messages.of("common.How-long-devices-last"), SurvivalSentences.of(tables));
    add(sections, Messages.of("common.What-fails-and-where"), FailureSentences.of(tables));
    add(sections, Messages.of("common.What-it-cost"), CostSentences.of(tables));
    add(sections, Messages.of("common.Each-funder-s-part"), ShareSentences.of(tables));
    add(sections, Messages.of("common.Benefit-against-cost"), BenefitSentences.of(tables));
    add(
        sections,
        Messages.of("common.Wetland-properties-and-removals"),
        OutcomeSentences.of(tables));
    add(sections, Messages.of("common.Next-season"), SeasonSentences.of(tables));
    add(sections, Messages.reports().text("published.heading"), PublishedSentences.of(tables));
    add(sections, Messages.of("common.The-records-behind-this"), DataSentences.of(tables));
    return sections;
  }

  private static void add(List<Section> sections, String heading, List<Sentence> sentences) {
    if (!sentences.isEmpty()) {
      sections.add(new Section(heading, sentences));
    }
  }

  static List<Sentence> scope(TablePackage tables) {
    boolean hasPeriod =
        !tables.fact("period_from").isEmpty() && !tables.fact("period_to").isEmpty();
    Said cover =
        Said.of("view.Summary.records-up-to")
            .fact("asOf", "as_of", DateText.readable(tables.fact("as_of")))
            .part("period", hasPeriod ? Optional.of(period(tables)) : Optional.empty())
            .words(
                "failure",
                tables.fact("failure").equals("failed-or-reduced")
                    ? Messages.of("view.Summary.failed-or-reduced")
                    : Messages.of("view.Summary.failed"));
    List<Sentence> all = new ArrayList<>();
    all.add(cover.build());
    all.addAll(ScopeSentences.of(tables));
    dollars(tables, all);
    return all;
  }

  private static Said period(TablePackage tables) {
    return Said.of("view.Summary.reporting-period")
        .fact("from", "period_from", DateText.readable(tables.fact("period_from")))
        .fact("to", "period_to", DateText.readable(tables.fact("period_to")));
  }

  private static void dollars(TablePackage tables, List<Sentence> all) {
    if (tables.fact("base_year").isEmpty()) {
      return;
    }
    boolean isProvisional = tables.fact("base_year_provisional").equals("true");
    all.add(
        Said.of(
                isProvisional
                    ? "view.Summary.dollars-are-dollars-of-provisional"
                    : "view.Summary.dollars-are-dollars-of")
            .fact("year", "base_year", tables.fact("base_year"))
            .build());
  }
}
