package pondtally.reports.form;

/** What the cells of a column hold. */
public enum FormKind {
  /** Any text; digits stay as they are typed. */
  TEXT,
  /** One of a closed list. */
  CODE,
  /** Yes or no. */
  YES_NO,
  /** A day. */
  DATE,
  /** A whole number. */
  WHOLE,
  /** A calendar year. */
  YEAR,
  /** A decimal number. */
  NUMBER
}
