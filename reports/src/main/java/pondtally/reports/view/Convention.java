package pondtally.reports.view;

import pondtally.reports.text.Messages;

/** What stands beside every ratio of benefit to cost, so that none can be read as another's. */
public final class Convention {

  /** What is divided by what. */
  public static final String RATIO =
      Messages.of("view.Convention.ratio-present-value-of-the-damage");

  /** What it is compared with. */
  public static final String BASELINE =
      Messages.of("view.Convention.compared-with-no-device-and-damage");

  /** To date and looking ahead are two things. */
  public static final String APART = Messages.of("view.Convention.to-date-what-was-spent-against");

  private Convention() {}
}
