package pondtally.reports.view;

import java.util.List;
import pondtally.reports.text.Messages;

/** The cautions that stand in every report. */
public final class Cautions {

  /** Heading above them. */
  public static final String HEADING = Messages.of("view.Cautions.cautions");

  private static final List<String> ALL =
      List.of(
          Messages.of("view.Cautions.breaching-a-dam-and-working-in"),
          Messages.of("view.Cautions.permits-are-needed-in-most-regions"),
          Messages.of("view.Cautions.nothing-here-sizes-a-pipe-rates"),
          Messages.of("view.Cautions.small-groups-say-little-read-the"),
          Messages.of("view.Cautions.device-comparisons-are-observational-crews-sites"),
          Messages.of("view.Cautions.verified-figures-rest-on-what-visitors"));

  private Cautions() {}

  /** One sentence or two each, in the order in which they are shown. */
  public static List<String> all() {
    return ALL;
  }
}
