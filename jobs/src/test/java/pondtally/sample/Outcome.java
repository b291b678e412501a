package pondtally.sample;

import java.util.Locale;

/** What should become of a row, the later ones outweighing the earlier. */
enum Outcome {
  USED,
  NOTICE,
  CHANGED,
  DUPLICATE,
  SET_ASIDE;

  String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
