package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
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
            ? "Beaver coexistence program: annual figures"
            : region + ": annual figures of the beaver coexistence program";
    return title + ScopeSentences.suffix(tables);
  }

  /** The sections in reading order; a subject without tables is left out. */
  public static List<Section> of(TablePackage tables) {
    List<Section> sections = new ArrayList<>();
    add(sections, "What these figures cover", scope(tables));
    add(sections, "Devices today", DeviceSentences.of(tables));
    add(sections, "How long devices last", SurvivalSentences.of(tables));
    add(sections, "What fails, and where", FailureSentences.of(tables));
    add(sections, "What it cost", CostSentences.of(tables));
    add(sections, "Each funder's part", ShareSentences.of(tables));
    add(sections, "Benefit against cost", BenefitSentences.of(tables));
    add(sections, "Wetland, properties and removals", OutcomeSentences.of(tables));
    add(sections, "Next season", SeasonSentences.of(tables));
    add(sections, Messages.english().text("published.heading"), PublishedSentences.of(tables));
    add(sections, "The records behind this", DataSentences.of(tables));
    return sections;
  }

  private static void add(List<Section> sections, String heading, List<Sentence> sentences) {
    if (!sentences.isEmpty()) {
      sections.add(new Section(heading, sentences));
    }
  }

  static List<Sentence> scope(TablePackage tables) {
    Sentence.Builder cover =
        Sentence.of("Records up to ")
            .fact("as_of", DateText.readable(tables.fact("as_of")))
            .say(". ");
    if (!tables.fact("period_from").isEmpty() && !tables.fact("period_to").isEmpty()) {
      cover
          .say("Reporting period: ")
          .fact("period_from", DateText.readable(tables.fact("period_from")))
          .say(" to ")
          .fact("period_to", DateText.readable(tables.fact("period_to")))
          .say(". ");
    }
    cover.say(
        tables.fact("failure").equals("failed-or-reduced")
            ? "A device counts as failed when a visit finds it failed or working at reduced flow. "
            : "A device counts as failed when a visit finds it failed. ");
    cover.say("\"Likely\" gives the 95% limits: what the records can rule out lies outside them.");
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
        Sentence.of("Dollars are dollars of ").fact("base_year", tables.fact("base_year"));
    dollars.say(
        tables.fact("base_year_provisional").equals("true")
            ? "; the price index does not reach the latest records yet, so those dollars are provisional."
            : ".");
    all.add(dollars.build());
  }
}
