package pondtally.reports.view;

import pondtally.reports.text.Messages;

/** What stands wherever funding is shown. */
public final class FundingRule {

  /** Cash stands with who paid it, value with the award it is claimed against. */
  public static final String EACH_LINE_ONCE =
      Messages.of("view.FundingRule.each-cost-line-counts-once-cash");

  /** The federal rule on match. */
  public static final String VOLUNTEERS =
      Messages.of("view.FundingRule.a-volunteer-hour-s-published-rate");

  private FundingRule() {}
}
