package pondtally.intake;

import java.util.Locale;

/** Kinds of files in a program folder, by the end of their name. */
enum FileKind {
  /** Text with separators between cells. */
  TEXT,
  /** Workbook of the Office Open XML format. */
  WORKBOOK,
  /** Anything else: reported and not read. */
  OTHER;

  static FileKind of(String path) {
    String name = path.toLowerCase(Locale.ROOT);
    if (name.endsWith(".csv") || name.endsWith(".tsv")) {
      return TEXT;
    }
    return name.endsWith(".xlsx") ? WORKBOOK : OTHER;
  }
}
