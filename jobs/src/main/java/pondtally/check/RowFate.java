package pondtally.check;

/** Where a row ends: in exactly one of these. */
public enum RowFate {
  /** Counted as it stood. */
  USED,
  /** Counted after a value was converted, mapped or dropped. */
  CHANGED,
  /** Not counted, for the reasons given. */
  SET_ASIDE,
  /** Not counted, because another row already says the same. */
  DUPLICATE
}
