package pondtally.reports.view;

/** What stands wherever funding is shown. */
public final class FundingRule {

  /** Cash stands with who paid it, value with the award it is claimed against. */
  public static final String EACH_LINE_ONCE =
      "Each cost line counts once: cash with the funder who paid it, in-kind and volunteer value with the award it is claimed against.";

  /** The federal rule on match. */
  public static final String VOLUNTEERS =
      "A volunteer hour's published rate is not by itself allowable match under a federal award (2 CFR 200.306: the rate must be that of similar work in the recipient's own or the local labor market). Ask the awarding agency before claiming it.";

  private FundingRule() {}
}
