package pondtally.reports.edition;

/** A program so small that everything in a public edition would be about a few sites. */
public final class TooFewSites extends RuntimeException {

  TooFewSites(int sites, int below) {
    super(
        "A public edition needs %s sites or more, and this program has %s: every figure would be about a few sites. Make the report without --public, or lower `groups_below` in program.yaml."
            .formatted(below, sites));
  }
}
