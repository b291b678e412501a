package pondtally.reports.view;

/** What stands beside every ratio of benefit to cost, so that none can be read as another's. */
public final class Convention {

  /** What is divided by what. */
  public static final String RATIO =
      "Ratio: present value of the damage avoided, divided by the present value of all device cost (building, visits, repairs, replacements). No residual value; no value of wetland.";

  /** What it is compared with. */
  public static final String BASELINE =
      "Compared with: no device, and damage that goes on each year as recorded before the first device.";

  /** To date and looking ahead are two things. */
  public static final String APART =
      "To date: what was spent against damage that verified working time avoided, not discounted. Projected: one new device, looked ahead. The two are never mixed.";

  private Convention() {}
}
