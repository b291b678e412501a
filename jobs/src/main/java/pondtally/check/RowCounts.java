package pondtally.check;

import java.io.Serializable;

/**
 * How many rows of a sheet met each fate. The four fates always add up to the rows read.
 *
 * @param read rows that hold anything, headings not counted
 */
public record RowCounts(long read, long used, long changed, long setAside, long duplicate)
    implements Serializable {

  public RowCounts {
    if (Math.min(Math.min(used, changed), Math.min(setAside, duplicate)) < 0
        || read != used + changed + setAside + duplicate) {
      throw new IllegalStateException(
          "row account does not add up: read %s, used %s, changed %s, set aside %s, duplicate %s"
              .formatted(read, used, changed, setAside, duplicate));
    }
  }

  /** The counts of both together. */
  public RowCounts plus(RowCounts other) {
    return new RowCounts(
        read + other.read,
        used + other.used,
        changed + other.changed,
        setAside + other.setAside,
        duplicate + other.duplicate);
  }
}
