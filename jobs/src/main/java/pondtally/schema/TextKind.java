package pondtally.schema;

/** What the text of a field means, as far as reading it is concerned. */
public enum TextKind {
  /** A name or a code: spaces around it do not count. */
  PLAIN,
  /** An id that other tables point to. */
  ID,
  /** A hydrologic unit code, or another code of a watershed. */
  HYDROLOGIC_UNIT,
  /** Free text, of which any content is right. */
  NOTE
}
