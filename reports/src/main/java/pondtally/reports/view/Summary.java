package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
    Sentence.Builder cover =
        Sentence.of(Messages.of("common.Records-up-to"))
            .fact("as_of", DateText.readable(tables.fact("as_of")))
            .say(". ");
    if (!tables.fact("period_from").isEmpty() && !tables.fact("period_to").isEmpty()) {
      cover
          .say(Messages.of("view.Summary.reporting-period"))
          .fact("period_from", DateText.readable(tables.fact("period_from")))
          .say(Messages.of("common.to"))
          .fact("period_to", DateText.readable(tables.fact("period_to")))
          .say(". ");
    }
    cover.say(
        tables.fact("failure").equals("failed-or-reduced")
            ? Messages.of("view.Summary.a-device-counts-as-failed-when")
            : Messages.of("view.Summary.a-device-counts-as-failed-when-2"));
    cover.say(Messages.of("view.Summary.likely-gives-the-95-limits-what"));
    List<Sentence> all = new ArrayList<>();
    all.add(cover.build());
    all.addAll(ScopeSentences.of(tables));
    dollars(tables, all);
    return all;
  }

  private static void dollars(TablePackage tables, List<Sentence> all) {
    if (tables.fact("base_year").isEmpty()) {
      return;
    }
    Sentence.Builder dollars =
        Sentence.of(Messages.of("view.Summary.dollars-are-dollars-of"))
            .fact("base_year", tables.fact("base_year"));
    dollars.say(
        tables.fact("base_year_provisional").equals("true")
            ? Messages.of("view.Summary.the-price-index-does-not-reach")
            : ".");
    all.add(dollars.build());
  }
}
