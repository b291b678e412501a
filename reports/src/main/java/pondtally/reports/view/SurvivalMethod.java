package pondtally.reports.view;

/** Which survival estimate the reports lead with. */
public final class SurvivalMethod {

  private SurvivalMethod() {}

  /**
   * The product-limit estimate: it is made for every group, so that all of them can be compared by
   * one method. The interval estimate, made for fewer groups, stands in its own tables.
   */
  public static String of() {
    return "product-limit";
  }
}
