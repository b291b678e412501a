package pondtally.sample;

import java.util.Locale;

/** The tables of input records. */
enum Table {
  SITES,
  INSTALLS,
  MATERIALS,
  REVISITS,
  REMOVALS,
  PROPERTIES,
  AREAS,
  BUDGETS,
  EXPENSES,
  REQUESTS,
  /** A file or sheet that holds none of them. */
  NONE;

  String code() {
    return this == NONE ? "" : name().toLowerCase(Locale.ROOT);
  }
}
