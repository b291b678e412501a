package pondtally.intake;

import java.io.Serializable;

/**
 * What {@code columns.yaml} states about a text file.
 *
 * @param encoding name of the character set; null: it is found out
 * @param delimiter what separates cells; null: it is found out
 */
record TextForm(String encoding, Character delimiter) implements Serializable {

  static final TextForm UNSTATED = new TextForm(null, null);

  /** This form, completed by {@code other} where it says nothing. */
  TextForm or(TextForm other) {
    return new TextForm(
        encoding == null ? other.encoding : encoding,
        delimiter == null ? other.delimiter : delimiter);
  }
}
