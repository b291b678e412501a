package pondtally.reports.view;

import pondtally.reports.table.TablePackage;

/** Which survival estimate the reports lead with. */
public final class SurvivalMethod {

  private SurvivalMethod() {}

  /**
   * {@code interval} where failures are dated by the interval between visits and that estimate was
   * made, else {@code product-limit}.
   */
  public static String of(TablePackage tables) {
    boolean wanted = tables.fact("failure_dated").equals("interval");
    boolean made =
        Rows.of(tables, "survival_summary").where("method", "interval").first().isPresent();
    return wanted && made ? "interval" : "product-limit";
  }
}
